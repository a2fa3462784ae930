import * as z from 'zod/mini';
import { text } from './commonSchema.ts';

/** A path of a setup document: a machine, and names below it. */
const path = z
  .string()
  .check(z.maxLength(120), z.regex(/^(implement|tractor|coupler|shaft)(\.[a-z][a-zA-Z0-9]*){1,3}$/));
const id = z.string().check(z.regex(/^[a-z0-9]{4,32}$/));
const moment = z.string().check(z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,3})?)?Z$/));
const mostFields = 80;

/** What a measuring request says. */
export const requestSchema = z.strictObject({
  hitchwrightRequest: z.literal(1),
  id,
  asks: z.optional(text),
  of: z.optional(text),
  when: moment,
  fields: z.array(path).check(z.minLength(1), z.maxLength(mostFields)),
  setup: z.record(z.string(), z.unknown()),
});

/** A photo as it was shrunk on the phone. */
const photo = z.strictObject({
  path,
  jpeg: z.string().check(z.maxLength(1_500_000), z.regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/)),
});

/** What comes back for one. */
export const replySchema = z.strictObject({
  hitchwrightReply: z.literal(1),
  request: id,
  who: z.optional(text),
  when: moment,
  readings: z.array(z.strictObject({ path, value: z.unknown() })).check(z.maxLength(mostFields)),
  left: z.array(path).check(z.maxLength(mostFields)),
  photos: z.optional(z.array(photo).check(z.maxLength(mostFields))),
});
