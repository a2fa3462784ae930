import { frameWidth } from '../../pdf/paper.ts';
import { settings, span, words, type Block, type Words } from '../block.ts';
import type { Reference } from '../content/reference.ts';
import type { SheetOptions } from '../options.ts';
import { rule, rules, type Press } from '../press.ts';
import { wayBack } from './wayBack.ts';

/** Padding beside words, and what is kept for a name written by hand [mm]. */
const [pad, hand] = [3.5, 9] as const;

/** Width of the compartment of the code or the reference [mm]. */
const backWidth = 84;

/** The code or the reference that leads back to the setup, and the lines to sign. */
export function closing(press: Press, reference: Reference, options: SheetOptions): Block {
  const back = wayBack(press, reference, backWidth - pad - 1.5);
  const signs = signBlock(press, options, frameWidth - backWidth);
  const height = Math.max(back.height + 1.6, signs.height);
  return {
    height,
    paint: ([x, y]) => {
      back.paint([x + pad, y + 0.8]);
      rule(press, [x + backWidth, y], [x + backWidth, y + height], rules.thin);
      signs.paint([x + backWidth, y]);
    },
  };
}

function signBlock(press: Press, { customer, issuer }: SheetOptions, width: number): Block {
  const { ink, tags } = press;
  const { small } = settings;
  const labels = [`Read and received${named(customer)}, date`, `Handed over${named(issuer)}, date`];
  const sets = labels.map((text): Words => words(ink.faces, [span(text, small)], small, width - 2 * pad));
  const paint: Block['paint'] = ([x, y]) => {
    let top = y;
    for (const set of sets) {
      const line = top + hand;
      rule(press, [x + pad, line], [x + width - pad, line], rules.thin);
      tags.leaf('P', () => set.write(ink, [x + pad, line + 0.4]));
      top = line + set.height;
    }
  };
  return { height: sets.reduce((sum, { height }) => sum + hand + height, 1.4), paint };
}

function named(who: string | undefined): string {
  return who === undefined ? '' : `: ${who}`;
}
