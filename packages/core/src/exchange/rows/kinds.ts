/** What a row can be: the records that are kept, but for those that belong to another record. */
export const rowKinds = ['tractor', 'coupler', 'implement', 'shaft', 'weight', 'part', 'customer'] as const;

/** One of `rowKinds`. */
export type RowKind = (typeof rowKinds)[number];

/** What people call each kind, in either country; the first is written into a sheet. */
export const kindWords: Readonly<Record<RowKind, readonly string[]>> = {
  tractor: ['tractor', 'tractors'],
  coupler: ['coupler', 'couplers', 'quick coupler', 'quick couplers', 'quick hitch', 'quick hitches', 'hitch frame'],
  implement: ['implement', 'implements', 'attachment', 'attachments', 'implement or attachment', 'tool', 'tools'],
  shaft: ['drive shaft', 'drive shafts', 'shaft', 'shafts', 'pto shaft', 'pto shafts', 'driveline', 'drivelines'],
  weight: ['weight', 'weights', 'ballast', 'ballast weight', 'ballast weights'],
  part: ['part', 'parts', 'spare', 'spares', 'accessory', 'accessories', 'spare parts'],
  customer: ['customer', 'customers', 'client', 'clients', 'buyer', 'buyers', 'owner', 'contact', 'contacts'],
};

/** What a kind is called in a sentence. */
export function nameOfKind(kind: RowKind): string {
  return kindWords[kind][0] as string;
}

/** The kind, with its article, as in `an implement`. */
export function aKind(kind: RowKind): string {
  const name = nameOfKind(kind);
  return `${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`;
}
