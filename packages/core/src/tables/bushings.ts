import type { Category } from './category.ts';
import { forums, memory, practice } from './citations.ts';
import type { Figure } from './figure.ts';

/** A sleeve that makes a smaller pin fill a larger seat or ball. All sizes [mm]. */
export interface Bushing {
  readonly place: 'lower' | 'upper';
  /** category of the pin it goes over */
  readonly pinCategory: Category;
  /** category of the pin that it stands in for: its outside is that pin's size */
  readonly seatCategory: Category;
  readonly inside: Figure;
  readonly outside: Figure;
  /** lengths sold; empty where none is known */
  readonly lengths: readonly Figure[];
  readonly note: string;
}

const medium = memory('medium');
const frameNote = 'for the seats of an American U-frame';
const ballNote = 'for a tractor ball or coupler seat one category up';

/** Ordinary bushings, lower ones first. Always up in size: no bushing makes a pin smaller. @source owner-forums, common-practice, memory */
export const bushings: readonly Bushing[] = [
  {
    place: 'lower',
    pinCategory: '1',
    seatCategory: '2',
    inside: practice(22.225, '7/8', 'in'),
    outside: practice(28.575, '1-1/8', 'in'),
    lengths: [forums(34.925, '1-3/8', 'in'), forums(44.45, '1-3/4', 'in')],
    note: ballNote,
  },
  {
    place: 'lower',
    pinCategory: '1',
    seatCategory: '3',
    inside: medium(22.2, '22.2', 'mm'),
    outside: medium(36.5125, '1-7/16', 'in'),
    lengths: [],
    note: frameNote,
  },
  {
    place: 'lower',
    pinCategory: '2',
    seatCategory: '3',
    inside: medium(28.6, '28.6', 'mm'),
    outside: medium(36.5125, '1-7/16', 'in'),
    lengths: [],
    note: frameNote,
  },
  {
    place: 'upper',
    pinCategory: '1',
    seatCategory: '2',
    inside: practice(19.05, '3/4', 'in'),
    outside: practice(25.4, '1', 'in'),
    lengths: [],
    note: ballNote,
  },
  {
    place: 'upper',
    pinCategory: '1',
    seatCategory: '3',
    inside: medium(19, '19', 'mm'),
    outside: medium(31.75, '1-1/4', 'in'),
    lengths: [],
    note: frameNote,
  },
  {
    place: 'upper',
    pinCategory: '2',
    seatCategory: '3',
    inside: medium(25.4, '25.4', 'mm'),
    outside: medium(31.75, '1-1/4', 'in'),
    lengths: [],
    note: frameNote,
  },
];

/**
 * The ordinary bushings that go over a pin of the given category, smallest outside first.
 *
 * @param place lower or upper pin [name]
 * @param pinCategory category of the pin [name]
 * @returns bushings that go over such a pin [list, mm]
 * @example bushingsFor('lower', '1').map((bushing) => bushing.seatCategory); // ['2', '3']
 * @source owner-forums, common-practice, memory
 */
export function bushingsFor(place: Bushing['place'], pinCategory: Category): readonly Bushing[] {
  return bushings.filter((bushing) => bushing.place === place && bushing.pinCategory === pinCategory);
}
