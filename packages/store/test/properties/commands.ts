import fc from 'fast-check';
import { readingGrades } from '@hitchwright/core/records';
import { Conflict, NotFound, Refused, type By, type Store } from '../../src/index.ts';

/** One thing that somebody does to one of a few records. */
export type Command =
  | { readonly does: 'create'; readonly name: string; readonly note: string }
  | {
      readonly does: 'change';
      readonly record: number;
      readonly name?: string;
      readonly fields: Readonly<Record<string, unknown>>;
    }
  | {
      readonly does: 'add';
      readonly record: number;
      readonly field: string;
      readonly leaf: number;
      readonly grade: number;
      readonly pin: boolean;
    }
  | { readonly does: 'withdraw' | 'pin' | 'unpin'; readonly record: number; readonly reading: number }
  | { readonly does: 'remove' | 'restore'; readonly record: number }
  | { readonly does: 'import'; readonly names: readonly string[]; readonly leaf: number }
  | { readonly does: 'undo'; readonly group: number };

const at = fc.nat(2);
const name = fc.constantFrom('a', 'b', 'c', 'd');
const fields = fc.dictionary(
  fc.constantFrom('note', 'mounting', 'price', 'price.amount', 'driven', 'secondRow.pinsPoint'),
  fc.constantFrom<unknown>(
    null,
    'x',
    'y',
    'threePoint',
    'subframe',
    { amount: 3, currency: 'USD' },
    5,
    true,
    'in',
    'out',
  ),
  { maxKeys: 3 },
);

/** Anything that people may do, in any order; much of it is refused. */
export const commands: fc.Arbitrary<Command[]> = fc
  .array(
    fc.oneof(
      { weight: 2, arbitrary: fc.record({ does: fc.constant('create' as const), name, note: name }) },
      {
        weight: 4,
        arbitrary: fc.record(
          { does: fc.constant('change' as const), record: at, name, fields },
          { requiredKeys: ['does', 'record', 'fields'] },
        ),
      },
      {
        weight: 4,
        arbitrary: fc.record({
          does: fc.constant('add' as const),
          record: at,
          field: fc.constantFrom('mastHeight', 'secondRow.standOut'),
          leaf: fc.integer({ min: 200, max: 290 }),
          grade: fc.nat(4),
          pin: fc.boolean(),
        }),
      },
      {
        weight: 3,
        arbitrary: fc.record({ does: fc.constantFrom('withdraw', 'pin', 'unpin'), record: at, reading: fc.nat(3) }),
      },
      { weight: 2, arbitrary: fc.record({ does: fc.constantFrom('remove', 'restore'), record: at }) },
      {
        weight: 1,
        arbitrary: fc.record({
          does: fc.constant('import' as const),
          names: fc.uniqueArray(name, { maxLength: 3 }),
          leaf: fc.integer({ min: 200, max: 290 }),
        }),
      },
      { weight: 3, arbitrary: fc.record({ does: fc.constant('undo' as const), group: fc.nat(5) }) },
    ),
    { minLength: 3, maxLength: 14 },
  )
  .map((list): Command[] => [{ does: 'create', name: 'a', note: 'first' }, ...list]);

/** Who does it all. */
export const by: By = { who: 'Ida' };

/** What the commands were done to so far. */
export interface Done {
  readonly records: string[];
  readonly groups: string[];
}

/** Does one command; whether it changed anything. What the store refuses in so many words is no matter. */
export async function run(store: Store, done: Done, command: Command): Promise<boolean> {
  const before = await lastGroup(store);
  try {
    await attempt(store, done, command);
  } catch (problem) {
    if (problem instanceof Conflict || problem instanceof NotFound || problem instanceof Refused) return false;
    throw problem;
  }
  const group = await lastGroup(store);
  if (group === before || group === null) return false;
  done.groups.push(group);
  return true;
}

/** The group of changes that was made last. */
export async function lastGroup(store: Store): Promise<string | null> {
  return (await store.history.groups({ limit: 1 })).items[0]?.id ?? null;
}

async function attempt(store: Store, done: Done, command: Command): Promise<void> {
  if (command.does === 'create') {
    const { id } = await store.records.create(by, {
      kind: 'implement',
      name: command.name,
      fields: { note: command.note },
    });
    done.records.push(id);
  } else if (command.does === 'import') {
    const rows = command.names.map((one) => ({
      kind: 'implement' as const,
      name: one,
      readings: [{ field: 'mastHeight', leaf: command.leaf, grade: 'listed' as const }],
    }));
    await store.imports.write(by, { source: 'list', rows });
    for (const { id } of (await store.records.list({ limit: 1000 })).items)
      if (!done.records.includes(id)) done.records.push(id);
  } else if (command.does === 'undo') {
    await store.history.undo(by, done.groups.at(-1 - command.group) ?? '');
  } else await toOne(store, done.records[command.record % done.records.length] ?? '', command);
}

async function toOne(
  store: Store,
  id: string,
  command: Exclude<Command, { does: 'create' | 'import' | 'undo' }>,
): Promise<void> {
  const { revision, readings } = await store.records.get(id, { removed: true });
  if (command.does === 'change') {
    const { name: named, fields: changed } = command;
    await store.records.change(by, id, revision, { ...(named === undefined ? {} : { name: named }), fields: changed });
  } else if (command.does === 'add') {
    const { field, leaf, grade, pin } = command;
    await store.readings.add(by, id, [{ field, leaf, grade: readingGrades[grade] ?? 'class', pin }]);
  } else if ('reading' in command) {
    const reading = readings[command.reading % readings.length];
    await store.readings[command.does](by, id, revision, reading?.id ?? '');
  } else await store.records[command.does](by, id, revision);
}
