import { liftStrip, rearView, shaftDrawing, sideView, topView, type Scene } from '@hitchwright/core/drawings';
import { withEdits } from '@hitchwright/core/records';
import { example, judged, renamed } from './setups.ts';

const how = { system: 'us', format: 'print' } as const;

/** Drawings of true lengths by their name, as they are printed. */
export function trueDrawings(): Readonly<Record<string, Scene>> {
  const blade = judged(example('box-blade-on-coupler'));
  const tiller = judged(example('tiller-driven-on-coupler'));
  const narrow = judged(withEdits(example('rear-blade'), [{ path: 'implement.name', value: 'Grab <b>“7”</b> №7' }]));
  const named = judged(renamed(example('tiller-driven-direct'), { implement: '犁 %%d \\P ^I', tractor: 'Łąka' }));
  const scenes: Readonly<Record<string, Scene | null>> = {
    'rear with an enlarged hook': rearView(blade.setup, blade.answer, how),
    'rear with an enlarged pin': rearView(narrow.setup, narrow.answer, how),
    side: sideView(tiller.setup, tiller.answer, how),
    'three heights': liftStrip(blade.setup, blade.answer, how),
    top: topView(tiller.setup, tiller.answer, how),
    shaft: shaftDrawing(named.setup, named.answer, { ...how, cut: 30 }),
  };
  const drawn = Object.entries(scenes).filter((entry): entry is [string, Scene] => entry[1] !== null);
  if (drawn.length < Object.keys(scenes).length) throw new Error('a drawing is missing');
  return Object.fromEntries(drawn);
}
