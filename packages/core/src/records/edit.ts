import type { SetupDocument } from './setup.ts';

/** One change to a setup document: the field at a path gets a value; `undefined` takes it away. */
export interface Edit {
  readonly path: string;
  readonly value: unknown;
}

/**
 * The document with the changes made; the original is left as it was.
 *
 * @param document a setup document [JSON]
 * @param edits changes, made in this order [list]
 * @returns a new document [JSON]
 */
export function withEdits(document: SetupDocument, edits: readonly Edit[]): SetupDocument {
  return edits.reduce<SetupDocument>((edited, { path, value }) => placed(edited, path.split('.'), value), document);
}

/**
 * What stands at a path of a document.
 *
 * @param document a setup document [JSON]
 * @param path field path, with dots [text]
 * @returns what stands there, or undefined [any]
 */
export function atPath(document: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((node, key) => (isRecord(node) && Object.hasOwn(node, key) ? node[key] : undefined), document);
}

function placed(node: unknown, [key, ...rest]: readonly string[], value: unknown): SetupDocument {
  const record = isRecord(node) ? node : {};
  if (key === undefined) return record;
  const next = rest.length === 0 ? value : placed(record[key], rest, value);
  const others = Object.fromEntries(Object.entries(record).filter(([name]) => name !== key));
  return next === undefined ? others : { ...record, [key]: next };
}

function isRecord(node: unknown): node is Record<string, unknown> {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}
