import type { InUse, SetupDocument } from '@hitchwright/core/records';
import type { Queries } from '../database/database.ts';
import { documentOf } from '../records/document.ts';
import type { Reading } from '../records/kinds.ts';
import { refusal } from '../records/text.ts';
import { Refused } from '../trouble.ts';
import { layered, shelfOf, type Layered, type Shelf } from './layers.ts';
import { fittingParts, meantShaft, partDocument, partIds } from './parts.ts';
import type { PartRefs } from './refs.ts';
import { usesOf, type Use } from './uses.ts';

/** Where a value of a setup comes from. */
export interface Source {
  /** Field path in the setup, such as `implement.mastHeight`. */
  readonly path: string;
  readonly reading: Reading;
  readonly because: InUse['because'];
  readonly conflicts: InUse['conflicts'];
}

/** A setup made of the values in use, and where each comes from. */
export interface YardSetup {
  readonly setup: SetupDocument;
  readonly sources: readonly Source[];
  readonly uses: readonly Use[];
  /** Records that it rests on and that were removed since. */
  readonly removed: readonly string[];
  /** Parts that fit and for which there was no room. */
  readonly partsLeftOut: number;
}

const roles = ['tractor', 'coupler', 'implement', 'shaft'] as const;
type Role = (typeof roles)[number];

/** Makes the setup of a question, or that part of it that is chosen. Throws NotFound for what is not there, Refused for what is no tractor, coupler, implement or shaft. */
export async function setupFor(queries: Queries, refs: PartRefs): Promise<YardSetup> {
  const shaft = refs.shaft === undefined ? await shaftMeantFor(queries, refs.implement) : refs.shaft;
  const ids = { tractor: refs.tractor, coupler: refs.coupler, implement: refs.implement, shaft: shaft ?? undefined };
  const parts = await partIds(queries, refs.parts, refs.tractor ?? refs.implement);
  const shelf = await shelfOf(
    queries,
    [...Object.values(ids), refs.state, ...parts].filter((id) => id !== undefined),
  );
  return composed(shelf, refs, ids, parts);
}

function composed(
  shelf: Shelf,
  refs: PartRefs,
  ids: Readonly<Record<Role, string | undefined>>,
  partsWanted: readonly string[],
): YardSetup {
  const stood = roles.flatMap((role): [Role, Layered][] => {
    const id = ids[role];
    return id === undefined ? [] : [[role, inRole(shelf, role, id, role === 'tractor' ? refs.state : undefined)]];
  });
  const implement = stood.find(([role]) => role === 'implement')?.[1];
  const parts = fittingParts(shelf, partsWanted, refs.parts === 'fitting' ? implement : undefined);
  const all = [...stood.map(([, one]) => one), ...parts.kept];
  const documents = stood.map(([role, one]) => [role, documentIn(one)]);
  return {
    setup: {
      hitchwright: 1,
      ...(refs.units === undefined ? {} : { units: refs.units }),
      ...(Object.fromEntries(documents) as Record<string, unknown>),
      ...(refs.rules === undefined ? {} : { rules: refs.rules }),
      ...(refs.parts === undefined ? {} : { parts: parts.kept.map((part) => partDocument(part, implement)) }),
    },
    sources: stood.flatMap(([role, one]) => sourcesOf(role, one)),
    uses: usesOf(all),
    removed: [...new Set(all.flatMap(({ layers }) => layers))].flatMap(({ record }) =>
      record.removedAt === null ? [] : record.id,
    ),
    partsLeftOut: parts.leftOut,
  };
}

function inRole(shelf: Shelf, role: Role, id: string, state: string | undefined): Layered {
  const found = layered(shelf, id, state);
  if (found?.kind === role) return found;
  const got = shelf.get(id)?.record.kind ?? 'nothing';
  throw new Refused([
    refusal('not-a-choice', role, `a record that is a ${role}`, `a ${found?.kind ?? got}`, 'Choose another.'),
  ]);
}

function documentIn({ kind, name, fields, values }: Layered): SetupDocument {
  return documentOf(kind, name, fields, new Map(values.map(({ field, leaf }) => [field, leaf])));
}

function sourcesOf(role: Role, { values }: Layered): Source[] {
  return values.map(({ field, reading, because, conflicts }) => ({
    path: `${role}.${field}`,
    reading,
    because,
    conflicts,
  }));
}

async function shaftMeantFor(queries: Queries, implement: string | undefined): Promise<string | null> {
  return implement === undefined ? null : meantShaft(queries, implement, await namesOf(queries, implement));
}

/** Names that a part may know an implement by: its own and its model’s. */
async function namesOf(queries: Queries, id: string): Promise<string[]> {
  const shelf = await shelfOf(queries, [id]);
  return [...shelf.values()].map(({ record }) => record.name);
}
