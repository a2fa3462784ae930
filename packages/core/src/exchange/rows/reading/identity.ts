import type { RowKind } from '../kinds.ts';

/** What a record is known by: its kind, a number where there is one, its name, and what tells two of one name apart. */
export interface Identity {
  readonly kind: RowKind;
  readonly id: string | null;
  readonly name: string;
  /** Its category, or the kind of part or coupler that it is; null where it isn’t said. */
  readonly variant: string | null;
}

/** Whether a record is one that is there already. */
export type Match =
  | { readonly kind: 'new' }
  | { readonly kind: 'same'; readonly ref: string }
  /** Several may be meant. */
  | { readonly kind: 'unclear'; readonly refs: readonly string[] };

/** Records to be found again by what they are known by. */
export interface RecordIndex {
  /** Adds a record under a reference of the caller’s. */
  readonly add: (identity: Identity, ref: string) => void;
  /** Finds the record that is meant. */
  readonly find: (identity: Identity) => Match;
}

/**
 * What a record is known by. A record that is kept has no number of its own any more, but its key may hold one.
 *
 * @param record its kind, name and plain fields, with its number or the key that it is kept under [record]
 * @returns its identity [record]
 */
export function identityOf(record: {
  readonly kind: RowKind;
  readonly id?: string | null;
  readonly key?: string | null;
  readonly name: string;
  readonly fields: Readonly<Record<string, unknown>>;
}): Identity {
  const { kind, name, fields } = record;
  const id = record.id ?? /^[a-z]+:id:(.+)$/.exec(record.key ?? '')?.[1] ?? null;
  const variant = fields['kind'] ?? fields['category'];
  return { kind, id, name, variant: typeof variant === 'string' ? variant : null };
}

/** A name without what people write this way today and that way tomorrow: case, accents, signs and blanks. */
export function foldedName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return plain === '' ? name.trim().toLowerCase() : plain;
}

/**
 * One text for a record by which it is found again: the same for the same row read twice. What tells two of one name apart is left out unless it
 * has to tell, so that a category that is filled in later makes no other record.
 *
 * @param identity what it is known by [record]
 * @param hasNamesake whether another record of its kind has its name [boolean]
 * @returns its key [text]
 */
export function keyOf({ kind, id, name, variant }: Identity, hasNamesake = false): string {
  if (id !== null) return `${kind}:id:${foldedName(id)}`;
  return `${kind}:name:${foldedName(name)}${variant === null || !hasNamesake ? '' : `:${variant}`}`;
}

/**
 * An index of records, so that a sheet that is read again changes them instead of doubling them. A number decides where both have one; else the
 * name does, with the category or kind where both say it. Where several may be meant it says so.
 *
 * @returns an empty index [record]
 */
export function recordIndex(): RecordIndex {
  const byId = new Map<string, string>();
  const byName = new Map<string, { readonly identity: Identity; readonly ref: string }[]>();
  const idKey = ({ kind, id }: Identity): string => `${kind} ${foldedName(id ?? '')}`;
  const nameKey = ({ kind, name }: Identity): string => `${kind} ${foldedName(name)}`;
  return {
    add(identity, ref) {
      if (identity.id !== null && !byId.has(idKey(identity))) byId.set(idKey(identity), ref);
      const named = byName.get(nameKey(identity));
      if (named === undefined) byName.set(nameKey(identity), [{ identity, ref }]);
      else if (!named.some((each) => each.ref === ref && each.identity.variant === identity.variant))
        named.push({ identity, ref });
    },
    find(identity) {
      const known = identity.id === null ? undefined : byId.get(idKey(identity));
      if (known !== undefined) return { kind: 'same', ref: known };
      const named = byName.get(nameKey(identity)) ?? [];
      const others = new Set(
        named.filter(({ identity: other }) => !isCompatible(identity, other)).map(({ ref }) => ref),
      );
      const namesakes = named.filter(({ ref }) => !others.has(ref));
      return (
        settled(namesakes.filter(({ identity: other }) => other.variant === identity.variant)) ??
        settled(namesakes) ?? { kind: 'new' }
      );
    },
  };
}

function isCompatible(a: Identity, b: Identity): boolean {
  if (a.id !== null && b.id !== null) return false;
  return a.variant === null || b.variant === null || a.variant === b.variant;
}

function settled(found: readonly { readonly ref: string }[]): Match | null {
  const refs = [...new Set(found.map(({ ref }) => ref))];
  const [only] = refs;
  if (only === undefined) return null;
  return refs.length === 1 ? { kind: 'same', ref: only } : { kind: 'unclear', refs };
}
