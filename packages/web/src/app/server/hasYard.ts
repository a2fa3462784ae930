/** Whether the page came from the server that keeps the yard’s records: it says so in the page. */
export const hasYard = document.querySelector('meta[name="hitchwright-records"]') !== null;
