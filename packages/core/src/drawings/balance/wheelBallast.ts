import type { Answer } from '../../engine/assess/index.ts';
import type { Setup } from '../../records/index.ts';
import { fullestFill } from '../../tables/index.ts';
import type { Point, Stroke } from '../scene.ts';
import { arc, outline, run } from '../strokes.ts';
import { wheelMassesOf } from './masses.ts';

/** Radius of the rim and of the ring of weights, for place only [part of the tyre's radius]. */
const rim = 0.62;
const ringOf = { outer: 0.5, inner: 0.26 } as const;

/** Weights on a rear wheel as a ring, and the level of the liquid in its tyre, for place only; none where there are none. */
export function wheelBallast(setup: Setup, answer: Answer, centre: Point, radius: number): Stroke[] {
  return wheelMassesOf(answer).flatMap(({ what }) =>
    what === 'wheelWeights' ? weightRing(centre, radius) : liquidLevel(centre, radius, fillOf(setup)),
  );
}

/** How full the rear tyres are [share of their volume]: as it was said, else as full as is usual. */
export function fillOf({ tractor }: Setup): number {
  const said = tractor.tyreLiquid?.fill;
  return said === undefined ? fullestFill.value : said / 100;
}

/** A ring with four bolts. */
function weightRing(centre: Point, radius: number): Stroke[] {
  const bolts = [45, 135, 225, 315].map((angle): Point => {
    const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const off = ((ringOf.outer + ringOf.inner) / 2) * radius;
    return [centre[0] + off * cos, centre[1] + off * sin];
  });
  return [
    outline('thin', arc(centre, ringOf.outer * radius, 0, 360).slice(1)),
    outline('thin', arc(centre, ringOf.inner * radius, 0, 360).slice(1)),
    ...bolts.map((bolt) => outline('thin', arc(bolt, 0.03 * radius, 0, 360).slice(1))),
  ];
}

/** The level across the tyre, with two shorter lines under it on each side of the rim. */
function liquidLevel([x, z]: Point, radius: number, fill: number): Stroke[] {
  const height = levelOf(fill);
  const spans = [height, height - 0.05, height - 0.1].flatMap((at, i) => {
    const outer = Math.sqrt(Math.max(0, 1 - at * at));
    const inner = Math.abs(at) < rim ? Math.sqrt(rim * rim - at * at) : 0;
    const short = ((outer - inner) * i) / 6;
    return inner === 0 && i === 0
      ? [[at, -outer, outer] as const]
      : ([
          [at, -outer + short, -inner - short],
          [at, inner + short, outer - short],
        ] as const);
  });
  return spans
    .filter(([, from, to]) => to > from)
    .map(([at, from, to]) =>
      run('thin', [
        [x + from * radius, z + at * radius],
        [x + to * radius, z + at * radius],
      ]),
    );
}

/** How high a liquid stands between rim and tread, from the middle of the wheel [part of the tyre's radius]. */
export function levelOf(fill: number): number {
  const whole = segmentBelow(1, 1) - segmentBelow(rim, 1);
  let [low, high] = [-1, 1];
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if ((segmentBelow(1, middle) - segmentBelow(rim, middle)) / whole < fill) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Area of a circle below a height. */
function segmentBelow(radius: number, height: number): number {
  const t = Math.max(-1, Math.min(1, height / radius));
  return radius * radius * (Math.PI - Math.acos(t) + t * Math.sqrt(1 - t * t));
}
