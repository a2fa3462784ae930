import { adviceFrom } from '@hitchwright/core/advice';
import { answerFrom, judgeSetup } from '@hitchwright/core/assess';
import { readSetup } from '@hitchwright/core/records';
import type { AdviceQuestion, AdviceReply } from './advisor.ts';

/** Says what to read next, away from the page’s own thread. */
addEventListener('message', ({ data }: MessageEvent<AdviceQuestion>) => postMessage(replyTo(data)));

const depth = { thresholds: true } as const;

/** A fault inside the engine is told to the page, which says so; it never looks like advice. */
function replyTo({ document }: AdviceQuestion): AdviceReply {
  try {
    const reading = readSetup(document);
    if (!reading.ok) return { kind: 'errors', errors: reading.errors };
    const judgement = judgeSetup(reading.setup, depth);
    const answer = answerFrom(document, judgement, { full: false });
    return { kind: 'advice', advice: adviceFrom(document, judgement, answer, depth), setup: reading.setup };
  } catch (problem) {
    return { kind: 'fault', message: problem instanceof Error ? problem.message : String(problem) };
  }
}
