import type { Answer } from '@hitchwright/core/assess';
import type { Bounds, Format } from '@hitchwright/core/drawings';
import type { Setup } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';

/** A lift to be drawn at every height, the first of them first. */
export interface LiftOrder {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly system: UnitSystem;
  readonly format: Format;
  readonly first: number;
}

/** One drawing as SVG whose names are escaped: the opening tag of its root, and the markup of each child. */
export interface DrawnPicture {
  readonly root: string;
  readonly items: readonly string[];
}

/** The drawings of a lift: from the side, what it manages, the drive from above, what the drive shaft does, and the axle loads. */
export type LiftDrawingName = 'view' | 'plots' | 'top' | 'drivePlots' | 'seeSaw' | 'axlePlots';

/** The lift at one height: its drawings, those of drive and axles where they are known, and all in words. */
export interface LiftPicture {
  readonly drawings: Readonly<Partial<Record<LiftDrawingName, DrawnPicture>>>;
  /** One paragraph for the view, and one each for what drive and axles add to it. */
  readonly words: readonly string[];
}

/** The paper of view and plots, the same at every height [scene mm]. The plots of lift, drive and axles share theirs. */
export interface LiftPaper {
  /** Whether view and plots stand side by side, at one level. */
  readonly areBeside: boolean;
  /** Whether a drive is drawn too. */
  readonly hasDrive: boolean;
  /** Whether the axle loads are drawn too. */
  readonly hasAxles: boolean;
  readonly view: Bounds;
  readonly plots: Bounds;
  /** Scene millimetres to one millimetre of their paper. */
  readonly viewScale: number;
  readonly plotScale: number;
}

/** Pictures by station, as they get ready. */
export interface LiftDelivery {
  readonly order: number;
  readonly paper: LiftPaper;
  readonly pictures: readonly (readonly [number, LiftPicture])[];
}

/** A worker that draws lifts; a new order takes the place of the last one. */
export interface Painter {
  order(order: LiftOrder): void;
  close(): void;
}

/** Opens a worker; what an order that was replaced still sends is dropped. A fault inside it is told. */
export function openPainter(onDelivery: (delivery: LiftDelivery) => void, onFault: () => void): Painter {
  const worker = new Worker(new URL('./lift.worker.ts', import.meta.url), { type: 'module' });
  let latest = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<LiftDelivery>) => {
    if (data.order === latest) onDelivery(data);
  });
  worker.addEventListener('error', onFault);
  return {
    order: (order) => {
      latest += 1;
      worker.postMessage({ ...order, number: latest });
    },
    close: () => worker.terminate(),
  };
}
