/** Text that setup documents share; links of version 1 are deflated against it, so it must never change. */
export const dictionary1 = '{"hitchwright":1,"units":"us","tractor":{"name":"';
