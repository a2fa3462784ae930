import { parentPort } from 'node:worker_threads';
import { worked, type Question } from './work.ts';

/** Answers one question after another, away from the thread that answers requests. A fault of the engine is told and never looks like an answer. */
parentPort?.on('message', ({ text, question }: { readonly text: string; readonly question: Question }) => {
  try {
    parentPort?.postMessage(worked(text, question));
  } catch (problem) {
    parentPort?.postMessage({ fault: problem instanceof Error ? (problem.stack ?? problem.message) : String(problem) });
  }
});
