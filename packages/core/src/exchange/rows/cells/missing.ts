/** What people write where they know nothing: no error, just no figure. */
const missing =
  /^(?:[-–—.?*_/\\ ]+|n\.?\s*\/?\s*a\.?|#n\/a|tb[adc]\.?|unknown|unk\.?|not known|not measured|not given|not stated|unsure|don['’]?t know|\?+|null|to measure|to be measured|see manual|ask)\s*[?.]*$/i;

/** What a spreadsheet shows where its own sum went wrong. */
const broken = /^#(?:ref!|div\/0!|value!|name\?|num!|null!|spill!|calc!|getting_data)$/i;

/** Whether a cell says that nothing is known. */
export function isMissing(text: string): boolean {
  return text === '' || (text.length <= 40 && missing.test(text));
}

/** Whether a cell shows a spreadsheet's own error. */
export function isBroken(text: string): boolean {
  return broken.test(text);
}
