import type { Stage } from '../stage.ts';
import { unknownAt, type Shown } from '../shown.ts';
import { isSetBack } from '../upper.ts';

/** A figure that is dimensioned in the view: its name on the drawing and in words, and where it is drawn. */
export interface Dimensioned {
  readonly name: string;
  readonly said: string;
  readonly figure: Shown;
  /** Half of a span, or the height, at which it is drawn [mm]. */
  readonly drawnAt: number;
  /** How far out a height is drawn, or how low a span is taken [mm]. */
  readonly from: number;
}

/** Heights above the lower pins, the lowest first. */
export function heightsOf({ upper, frame }: Stage): Dimensioned[] {
  if (frame !== null || !upper.exists) return [];
  const slanted = upper.hook !== null && (isSetBack(upper) || isSetBack(upper.hook));
  const pin: Dimensioned = {
    name: 'pin',
    said: slanted ? 'Lower pins to upper pin, pin to pin' : 'Upper pin above the lower pins',
    figure: slanted ? upper.distance : upper.height,
    drawnAt: upper.distance.value,
    from: -(upper.clevisOuter.value / 2 + 16),
  };
  if (upper.hook === null) return [pin];
  const hook: Dimensioned = {
    name: 'hook',
    said: slanted ? 'Lower hooks to top hook, seat to seat' : 'Top hook above the lower hooks',
    figure: slanted ? upper.hook.distance : upper.hook.height,
    drawnAt: upper.hook.distance.value,
    from: -(upper.hook.cheekGap?.value ?? upper.hook.thickness.value) / 2,
  };
  return [pin, hook].sort((a, b) => a.drawnAt - b.drawnAt);
}

/** Spans across both sides, the narrowest first. */
export function spansOf(stage: Stage): Dimensioned[] {
  const { frame, bar } = stage;
  if (frame !== null) {
    return sorted([
      span('frame', 'Frame over its feet', frame.frameWidth, 0),
      span('receiver', 'Receiver inside its feet', frame.receiverWidth, 0),
    ]);
  }
  if (bar !== null) {
    const low = -bar.diameter.value / 2;
    return sorted([
      span('jaws', 'Jaws, outside to outside', bar.span, low - 10),
      span('free bar', 'Free length of the bar', bar.length, low),
    ]);
  }
  return sorted([...pinSpans(stage)]);
}

function pinSpans({ pins, seats }: Stage): Dimensioned[] {
  const radius = pins.diameter.value / 2;
  const low = -Math.max(seats.opening.value, 30);
  const shoulders = span('shoulders', 'Shoulder to shoulder of the lower pins', pins.shoulders, -radius);
  const names = {
    hooks: ['hook to hook', 'Hook centre to hook centre'],
    hookEnds: ['hook to hook', 'Hook centre to hook centre, as the links are set'],
    balls: ['ball to ball', 'Ball centre to ball centre, balls against the shoulders'],
    claws: ['ball to ball', 'Ball centre to ball centre, balls against the shoulders'],
  } as const;
  const [name, said] = names[seats.kind];
  return [shoulders, span(name, said, seats.centres, low)];
}

function span(name: string, said: string, figure: Shown, from: number): Dimensioned {
  return { name, said, figure, drawnAt: figure.value / 2, from };
}

function sorted(spans: Dimensioned[]): Dimensioned[] {
  return spans.sort((a, b) => a.drawnAt - b.drawnAt);
}

/** How far the links' balls can be set apart, where the finding says. */
export function reachOf({ answer, seats, frame, bar }: Stage): Shown | null {
  if (seats.kind === 'hooks' || frame !== null || bar !== null) return null;
  const finding = answer.findings.find(({ id }) => id === 'front.span');
  const { low, high } = finding?.band ?? { low: null, high: null };
  if (low === null || high === null) return null;
  const limits = finding?.drivers.filter(({ path }) => path.startsWith('tractor.ballSpan')) ?? [];
  const origins = limits.map(({ origin }) => origin);
  if (origins.includes('unknown')) return null;
  const base = unknownAt('tractor.ballSpan', (low + high) / 2);
  return { ...base, low, high, standing: origins.includes('class') ? 'standIn' : 'measured' };
}
