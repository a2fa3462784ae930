import type { SetupDocument } from '@hitchwright/core/records';

/** Parts that there is room for, in the order of the shelf. */
interface Shelf {
  readonly kept: readonly SetupDocument[];
  readonly leftOut: number;
}

/** How many parts a setup takes, and the whole yard. */
interface Room {
  readonly most: number;
  readonly inAll: number;
}

/**
 * The parts of a yard of which no implement gets more than a setup takes: those that are meant for it by name come first, those that are meant for no
 * one in particular fill the room, in all no more than a yard takes. What is meant only for others is of no use here and not counted.
 */
export function withRoom(
  parts: readonly SetupDocument[],
  implementNames: readonly string[],
  { most, inAll }: Room,
): Shelf {
  const room = new Map(implementNames.map((name) => [name, most]));
  const kept = new Set<SetupDocument>();
  const useful = parts.filter((part) => meantFor(part, room).length > 0 || !Array.isArray(part['fits']));
  for (const part of useful) {
    const names = meantFor(part, room);
    if (kept.size >= inAll) break;
    if (names.length === 0 || names.some((name) => (room.get(name) ?? 0) < 1)) continue;
    for (const name of names) room.set(name, (room.get(name) ?? 0) - 1);
    kept.add(part);
  }
  const forAll = Math.min(most, inAll - kept.size, ...room.values());
  for (const part of useful.filter(({ fits }) => !Array.isArray(fits)).slice(0, forAll)) kept.add(part);
  return { kept: useful.filter((part) => kept.has(part)), leftOut: useful.length - kept.size };
}

function meantFor({ fits }: SetupDocument, names: ReadonlyMap<string, number>): string[] {
  if (!Array.isArray(fits)) return [];
  return [...new Set(fits)].filter((name): name is string => typeof name === 'string' && names.has(name));
}
