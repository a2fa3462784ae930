import { withEdits, type Edit } from '@hitchwright/core/records';
import type { Fields } from './kinds.ts';

/** Plain fields by their paths: objects are opened, lists stay whole. */
export function flattened(fields: Fields): Map<string, unknown> {
  return new Map(Object.entries(fields).flatMap(([key, value]) => below(key, value)));
}

function below(path: string, value: unknown): [string, unknown][] {
  if (!isPlainObject(value)) return [[path, value]];
  return Object.entries(value).flatMap(([key, one]) => below(`${path}.${key}`, one));
}

/** The fields with changes made at their paths; null or undefined takes one away, and no empty object stays behind. */
export function edited(fields: Fields, edits: readonly Edit[]): Fields {
  const changes = edits.map(({ path, value }) => ({ path, value: value ?? undefined }));
  return tidied(withEdits(fields, changes));
}

/** Fields without empty objects and without what stands for nothing. */
export function tidied(fields: Fields): Fields {
  const entries = Object.entries(fields).map(([key, value]) => [key, isPlainObject(value) ? tidied(value) : value]);
  return Object.fromEntries(entries.filter(([, value]) => value != null && !isEmpty(value))) as Fields;
}

/** JSON with its keys in order, so that equal things are equal texts. */
export function ordered(value: unknown): string {
  return JSON.stringify(value, (_, node: unknown) =>
    isPlainObject(node) ? Object.fromEntries(Object.entries(node).sort(([a], [b]) => (a < b ? -1 : 1))) : node,
  );
}

/** Whether it is an object of JSON, not a list. */
export function isPlainObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether JSON is not too large to be kept, and not nested deeper than anything here is [characters]. */
export function fitsIn(value: unknown, most: number): boolean {
  return isShallow(value, deepest) && (JSON.stringify(value) ?? '').length <= most;
}

const deepest = 20;

function isShallow(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return levels > 0 && Object.values(value).every((one) => isShallow(one, levels - 1));
}

function isEmpty(value: unknown): boolean {
  return isPlainObject(value) && Object.keys(value).length === 0;
}
