const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;
const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** A day without a time; the year may not be shown. */
interface Day {
  readonly day: number;
  readonly month: number;
  readonly year?: number;
}

/** Days from 1899-12-30 that spreadsheets count dates by, within a century and a half. */
const firstSerial = 1;
const lastSerial = 73_050;

/** The date that a text shows, where it shows one that a spreadsheet makes out of a fraction: `8-Mar`, `Mar-32`, `2026-03-08`, `3/8/2026`. */
export function dateShown(text: string): Day | null {
  return withMonthName(text) ?? inDigits(text);
}

function withMonthName(text: string): Day | null {
  const [, a = '', name = '', b = ''] = /^(\d{1,2})?[-. /]*([a-z]{3})[a-z]*[-. ,/]*(\d{1,4})?$/i.exec(text) ?? [];
  const month = months.indexOf(name.toLowerCase() as (typeof months)[number]) + 1;
  if (month === 0 || (a === '' && b === '')) return null;
  if (a === '') return { day: 1, month, year: fullYear(Number(b)) };
  return b === '' ? { day: Number(a), month } : { day: Number(a), month, year: fullYear(Number(b)) };
}

function fullYear(year: number): number {
  if (year >= 100) return year;
  return year < 30 ? 2000 + year : 1900 + year;
}

function inDigits(text: string): Day | null {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ].*)?$/.exec(text) ?? [];
  if (year !== undefined) return plausible({ day: Number(day), month: Number(month), year: Number(year) });
  const [, first, second, third] = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4}|\d{2})$/.exec(text) ?? [];
  if (first === undefined) return null;
  const [a, b, y] = [Number(first), Number(second), fullYear(Number(third))];
  return plausible({ day: b, month: a, year: y }) ?? plausible({ day: a, month: b, year: y });
}

function plausible(day: Day): Day | null {
  return day.month >= 1 && day.month <= 12 && day.day >= 1 && day.day <= 31 ? day : null;
}

/** The day that a whole number stands for in a spreadsheet, or null where it is none of the last century and a half. */
export function dayOfSerial(serial: number): Day | null {
  if (!Number.isInteger(serial) || serial < firstSerial || serial > lastSerial) return null;
  const z = serial + 693_899;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return { day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1, month, year };
}

/** What to do about a date that stands where a figure belongs, with the fractions that it may have been. */
export function dateHint(day: Day): string {
  const shown = `${day.day} ${monthNames[day.month - 1] ?? ''}${day.year === undefined ? '' : ` ${day.year}`}`;
  const fractions = fractionsOf(day);
  const was = fractions.length === 0 ? 'was a figure' : `was ${fractions.join(' or ')}`;
  return `A spreadsheet makes dates of fractions: this is ${shown}; ${was} meant? Set the column to text and type it again.`;
}

const denominators = [2, 4, 8, 16, 32, 64];

function fractionsOf({ day, month, year }: Day): string[] {
  const parts: (readonly [number, number])[] = [
    [month, day],
    [day, month],
  ];
  if (day === 1 && year !== undefined) parts.push([month, year % 100]);
  const fractions = parts.filter(([top, bottom]) => top < bottom && denominators.includes(bottom));
  return [...new Set(fractions.map(([top, bottom]) => `${top}/${bottom}`))];
}
