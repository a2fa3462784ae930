import { assess } from '@hitchwright/core/assess';
import { readSetup } from '@hitchwright/core/records';
import type { Reply, Request } from './assessor.ts';

/** Answers one setup after another, away from the page's own thread. */
addEventListener('message', ({ data }: MessageEvent<Request>) => postMessage(replyTo(data)));

/** A fault inside the engine is told to the page, which says so; it never looks like an answer. */
function replyTo({ document, couplers, full }: Request): Reply {
  try {
    const reading = readSetup(document);
    if (!reading.ok) return { kind: 'errors', errors: reading.errors };
    const assessment = assess(document, { full, couplers });
    if (!assessment.ok) return { kind: 'errors', errors: assessment.errors };
    return { kind: 'answer', answer: assessment.answer, setup: reading.setup };
  } catch (problem) {
    return { kind: 'fault', message: problem instanceof Error ? problem.message : String(problem) };
  }
}
