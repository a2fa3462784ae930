import { edge, not, type TapeRow } from '../row.ts';
import { couplerSide, points as coupler } from '../sketches/couplerSide.ts';
import { implementSide, points as implement } from '../sketches/implementSide.ts';
import { points as tractor, sizes, tractorSide } from '../sketches/tractorSide.ts';

const { base, front, rear } = sizes;
const frontWheel = [-base - front * 0.75, -base + front * 0.75] as const;
const rearWheel = [-rear * 0.7, rear * 0.7] as const;

/** Weighings in which something can go wrong. */
export const weighings: Readonly<Record<string, TapeRow>> = {
  'implement.mass': {
    sketch: implementSide(),
    parts: ['hood', 'mast'],
    measured: {
      kind: 'weight',
      from: edge(implement.gravity, 'hung free from a crane scale'),
      to: edge(implement.gravity, 'the hook over the place where it balances'),
      scale: { kind: 'hung', hook: [implement.gravity[0], 620], slings: [implement.upper, [640, 70]] },
    },
    not: [not('while the hitch still carries it', implement.pin)],
    hint: 'with oil, chains and what is always on it',
    show: { left: -170, right: 900, bottom: -400, top: 960 },
  },
  'coupler.mass': {
    sketch: couplerSide({ isFree: true }),
    parts: ['frame', 'hooks'],
    measured: {
      kind: 'weight',
      from: edge(coupler.frameMiddle, 'hung free from a crane scale'),
      to: edge(coupler.frameMiddle, 'unpinned from all three links'),
      scale: { kind: 'hung', hook: [88, 580], slings: [[88, 520]] },
    },
    not: [not('while the links still carry it', coupler.ball)],
    show: { left: -190, right: 340, bottom: -110, top: 830 },
  },
  'tractor.mass': {
    sketch: tractorSide(),
    parts: ['rearWheel', 'frontWheel'],
    measured: {
      kind: 'weight',
      from: edge(tractor.rearGround, 'all four wheels on the scale'),
      to: edge(tractor.rearGround, 'fuel in, nothing hung on, nobody on the seat'),
      scale: { kind: 'platform', under: [[-base - front * 1.1, rear * 1.1]] },
    },
    not: [not('with the driver on it', tractor.seat)],
    hint: 'no implement, coupler or front weights',
  },
  'tractor.frontAxleMass': {
    sketch: tractorSide(),
    parts: ['frontWheel'],
    measured: {
      kind: 'weight',
      from: edge(tractor.frontAxle, 'only the front wheels on the scale'),
      to: edge(tractor.frontAxle, 'the rear wheels beside it at the same height, the tractor as it was weighed whole'),
      scale: { kind: 'platform', under: [frontWheel] },
    },
    not: [not('with the driver on it', tractor.seat), not('with one axle higher than the other', [rearWheel[0], 0])],
    hint: 'rear wheels as high as the front ones',
  },
};
