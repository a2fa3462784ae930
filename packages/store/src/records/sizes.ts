import { fieldRules, partSizesOf, type FieldRule } from '@hitchwright/core/records';
import type { Fields, RecordKind } from './kinds.ts';

const weightKinds = ['frontWeights', 'wheelWeights'];

/** Kind of the record that a part of a setup is kept as. */
export function recordKindOfPart(kind: unknown): 'shaft' | 'weight' | 'part' {
  if (kind === 'driveShaft') return 'shaft';
  return typeof kind === 'string' && weightKinds.includes(kind) ? 'weight' : 'part';
}

/** What a field that takes readings accepts; none where the path is a plain field. */
export function ruleAt(kind: RecordKind, fields: Fields, path: string): FieldRule | undefined {
  if (kind !== 'part' && kind !== 'weight') return fieldRules.get(`${kind}.${path}`);
  const sizes = partSizesOf(fields['kind']);
  return Object.hasOwn(sizes, path) ? sizes[path] : undefined;
}
