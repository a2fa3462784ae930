import { atPath, fieldRules, setByNature, type SetupDocument } from '../../records/index.ts';

/**
 * What is read one by one for a field: the field itself, the two ends that it can be set to, or each of its holes.
 *
 * @param document the setup as far as it is known [JSON]
 * @param field field path, with dots [text]
 * @returns paths, the field’s own or those of its ends and holes [texts]
 */
export function partsOf(document: SetupDocument, field: string): string[] {
  if (!fieldRules.has(field)) return [field];
  const settings = atPath(document, `${field}.adjustable`) as { at?: unknown; between?: unknown } | null | undefined;
  if (Array.isArray(settings?.at)) return settings.at.map((_, i) => `${field}.adjustable.at.${i}`);
  if (setByNature.includes(field) || Array.isArray(settings?.between))
    return [0, 1].map((end) => `${field}.adjustable.between.${end}`);
  return [field];
}

/**
 * The field that a path, or one end of what can be set, belongs to.
 *
 * @param path field path, or one end or hole of it [text]
 * @returns the field’s path [text]
 */
export function fieldOfPart(path: string): string {
  return path.split('.adjustable.')[0] ?? path;
}
