import { adviceFrom } from '@hitchwright/core/advice';
import { answerFrom, judgeSetup, type Answer } from '@hitchwright/core/assess';
import {
  axleBalance,
  balloonsOf,
  liftStrip,
  rearView,
  sceneToSvg,
  shaftDrawing,
  slopeSketch,
  type Format,
  type Scene,
  type StationOptions,
} from '@hitchwright/core/drawings';
import { readSetup, type Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { worstStation } from '../balance/axleLoads.ts';
import type { Drawings, Picture, Reply, Request } from './assessor.ts';

/** Answers and draws one setup after another, away from the page's own thread. */
addEventListener('message', ({ data }: MessageEvent<Request>) => postMessage(replyTo(data)));

/** A fault inside the engine is told to the page, which says so; it never looks like an answer. */
function replyTo({ document, couplers, full }: Request): Reply {
  try {
    const reading = readSetup(document);
    if (!reading.ok) return { kind: 'errors', errors: reading.errors };
    const { setup } = reading;
    const depth = { thresholds: full !== null };
    const judgement = judgeSetup(setup, depth);
    const answer = answerFrom(document, judgement, { full: full !== null, couplers });
    const isOpen = full !== null && answer.verdict === 'measureFirst';
    return {
      kind: 'answer',
      document,
      answer,
      setup,
      drawings: full === null ? null : drawingsOf(setup, answer, full),
      advice: isOpen ? adviceFrom(document, judgement, answer, depth) : null,
    };
  } catch (problem) {
    return { kind: 'fault', message: problem instanceof Error ? problem.message : String(problem) };
  }
}

/** All formats at once, so that a turned phone or a printer finds its picture ready. */
function drawingsOf(setup: Setup, answer: Answer, system: UnitSystem): Drawings {
  const picture = (format: Format): Picture => pictureOf(rearView(setup, answer, { system, format }), `rear-${format}`);
  const cut = answer.cures.find(({ kind }) => kind === 'cutShaft')?.amount ?? 0;
  const shaft = (format: Format): Scene | null => shaftDrawing(setup, answer, { system, format, cut });
  const strip = liftStrip(setup, answer, { system, format: 'print' });
  return {
    pictures: { desk: picture('desk'), phone: picture('phone'), print: picture('print') },
    strip: strip === null ? null : pictureOf(strip, 'strip'),
    shaft: inEveryFormat(shaft, 'shaft'),
    cut: cut === 0 ? null : inEveryFormat(shaft, 'cut'),
    axles: inEveryFormat((format) => axlesAtWorst(setup, answer, { system, format }), 'axles'),
    slopes: inEveryFormat((format) => slopeSketch(answer, system, { format }), 'slopes'),
    balloons: balloonsOf(answer),
  };
}

/** The axle loads where the front axle has least to spare. */
function axlesAtWorst(setup: Setup, answer: Answer, options: Pick<StationOptions, 'system' | 'format'>): Scene | null {
  const { balance } = answer;
  return balance === null ? null : axleBalance(setup, answer, { ...options, station: worstStation(balance) });
}

/** A drawing in every format; names inside a picture begin with the prefix. */
function inEveryFormat(draw: (format: Format) => Scene | null, prefix: string): Drawings['shaft'] {
  const picture = (format: Format): Picture | null => {
    const scene = draw(format);
    return scene === null ? null : pictureOf(scene, `${prefix}-${format}`);
  };
  const [desk, phone, print] = [picture('desk'), picture('phone'), picture('print')];
  return desk === null || phone === null || print === null ? null : { desk, phone, print };
}

function pictureOf(scene: Scene, idPrefix: string): Picture {
  return { svg: sceneToSvg(scene, { idPrefix }), words: scene.description };
}
