import { chartFile, handOver } from '@hitchwright/print/pure';
import { withFonts } from './fonts.ts';
import type { Asked, Made } from './made.ts';

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => void answer(data));

/** A fault is told and never looks like something that was made. */
async function answer(asked: Asked): Promise<void> {
  const made: Made = await withFonts<Made>((fonts) =>
    'chart' in asked ? chartFile(asked, fonts) : handOver(asked, fonts),
  ).catch((problem: unknown): Made => ({
    kind: 'fault',
    message: problem instanceof Error ? problem.message : String(problem),
  }));
  self.postMessage(made);
}
