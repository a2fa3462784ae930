import { parentPort } from 'node:worker_threads';
import type { HandOverAsked } from '@hitchwright/print';
import { worked, type Message } from './work.ts';

/** Answers one question after another, away from the thread that answers requests. A fault of the engine is told and never looks like an answer. */
parentPort?.on('message', (message: Message) => {
  replyTo(message).then(
    (reply) => parentPort?.postMessage(reply),
    (problem: unknown) =>
      parentPort?.postMessage({
        fault: problem instanceof Error ? (problem.stack ?? problem.message) : String(problem),
      }),
  );
});

async function replyTo(message: Message): Promise<unknown> {
  return 'handOver' in message ? made(message.handOver) : worked(message.text, message.question);
}

/** The writers are large: they are loaded when the first of them is wanted. */
async function made(asked: HandOverAsked): Promise<unknown> {
  const { bundledFonts, handOver } = await import('@hitchwright/print');
  return handOver(asked, bundledFonts);
}
