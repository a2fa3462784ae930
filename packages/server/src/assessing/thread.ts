import { parentPort } from 'node:worker_threads';
import { chartCell } from '@hitchwright/core/handover';
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

/** The writers are large: they are loaded when the first of them is wanted. */
async function replyTo(message: Message): Promise<unknown> {
  if ('question' in message) return worked(message.text, message.question);
  if ('pairing' in message) return chartCell(message.pairing, message.system);
  const { bundledFonts, chartFile, handOver } = await import('@hitchwright/print');
  return 'chart' in message ? chartFile(message.chart, bundledFonts) : handOver(message.handOver, bundledFonts);
}
