import * as z from 'zod/mini';
import { text } from './commonSchema.ts';
import { excerpt, type InputError } from './inputError.ts';

/** Text of one shape, no longer than so many characters: its error says what belongs here. */
function shaped(shape: RegExp, longest: number, expected: string, hint: string) {
  return z.string().check((checked) => {
    if (checked.value.length <= longest && shape.test(checked.value)) return;
    const error: InputError = { code: 'wrong-type', path: '', expected, got: excerpt(checked.value), hint };
    checked.issues.push({ code: 'custom', input: checked.value, params: { error } });
  });
}

/** A path of a setup document: a machine, and names below it. */
const path = shaped(
  /^(?:implement|tractor|coupler|shaft)(?:\.[a-z][a-zA-Z0-9]*){1,2}$/,
  120,
  'a field of a setup, such as implement.mastHeight',
  'Was it made by another version?',
);
const id = shaped(/^[a-z0-9]{4,32}$/, 32, '4 to 32 small letters and digits', 'Copy the whole request or reply.');
const moment = shaped(
  /^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,3})?)?Z$/,
  24,
  'a moment such as 2026-11-25T08:30Z',
  'Write it in UTC, year first.',
);
const mostFields = 80;

/** What a measuring request says; its setup is read by itself. */
export const requestSchema = z.strictObject({
  hitchwrightRequest: z.literal(1),
  id,
  asks: z.optional(text),
  of: z.optional(text),
  when: moment,
  fields: z.array(path).check(z.minLength(1), z.maxLength(mostFields)),
  setup: z.unknown(),
});

/** A photo as it was shrunk on the phone. */
const photo = z.strictObject({
  path,
  jpeg: shaped(
    /^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/,
    1_500_000,
    'a photo as JPEG, at most 1.5 million characters',
    'Send it as a file instead.',
  ),
});

/** What comes back for one; each value is read by itself. */
export const replySchema = z.strictObject({
  hitchwrightReply: z.literal(1),
  request: id,
  who: z.optional(text),
  when: moment,
  readings: z.array(z.strictObject({ path, value: z.unknown() })).check(z.maxLength(mostFields)),
  left: z.array(path).check(z.maxLength(mostFields)),
  photos: z.optional(z.array(photo).check(z.maxLength(mostFields))),
});
