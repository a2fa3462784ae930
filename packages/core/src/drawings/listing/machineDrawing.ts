import type { Setup } from '../../records/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { figureSentence } from '../figureText.ts';
import { laidOutViews } from '../pinPlan/twoViews.ts';
import type { Format } from '../sheet.ts';
import type { Scene } from '../scene.ts';
import { scaleSaid } from '../side/words.ts';
import { named } from '../view/words.ts';
import { hooksPicture } from './hooks.ts';
import { pinsPicture } from './pins.ts';
import type { MachinePicture } from './picture.ts';

/** How one machine is drawn by itself. */
export interface MachineOptions {
  readonly machine: 'implement' | 'coupler';
  readonly system: UnitSystem;
  /** `desk` (820 px) unless given. */
  readonly format?: Format;
}

/**
 * Draws the pins of an implement, or the hooks of a coupler, by themselves with their dimensions, to scale, from behind and from
 * the left. Only what was given is drawn and dimensioned.
 *
 * @param setup a setup that was read [record]
 * @param options machine, units and format [names]
 * @returns the drawing; null where what it is drawn from was not given, or for a kind of coupler without hooks [mm]
 */
export function machineDrawing(setup: Setup, options: MachineOptions): Scene | null {
  const { machine, system, format = 'desk' } = options;
  const picture = machine === 'implement' ? pinsPicture(setup) : hooksPicture(setup);
  if (picture === null) return null;
  const name = named(setup[machine]?.name, `the ${machine}`);
  const heading = machine === 'implement' ? 'Pins' : 'Hooks';
  const { pen, bounds, items, bar } = laidOutViews(picture.views, {
    system,
    format,
    title: heading,
    note: noteOf(picture),
  });
  const title = `${heading} of ${name}`;
  const says = picture.figures.map(({ words, figure }) => `${words}: ${figureSentence(figure, system)}.`);
  return {
    title,
    subtitle: '',
    bounds,
    scale: pen.perPaper,
    items,
    description: [`${title}.`, 'Seen from behind and from the left.', ...says, ...scaleSaid(pen, bar)].join(' '),
  };
}

function noteOf({ note }: MachinePicture): string {
  return `${note} Frame for place only.`;
}
