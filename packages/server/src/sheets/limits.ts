/** What a sheet file may be at most: more than any yard has, and no more than a server should open. */
export const limits = {
  /** [bytes] */
  file: 20_000_000,
  rows: 50_000,
  columns: 300,
  /** [characters] */
  cell: 10_000,
  /** Filled cells of a file together. */
  cells: 3_000_000,
  sheets: 50,
  /** Entries of a packed file. */
  entries: 1000,
  /** What is unpacked of a packed file, together [bytes]. */
  unpacked: 100_000_000,
  /** How many times larger than packed an entry may be, from the size on where that tells [bytes]. */
  ratio: 250,
  ratioFrom: 1_000_000,
  /** Texts and number formats that sheets share. */
  sharedTexts: 1_000_000,
  formats: 70_000,
} as const;
