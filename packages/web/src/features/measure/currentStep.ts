import type { Entries, Entry } from './session.ts';
import type { Step } from './steps.ts';

/**
 * The figure that is asked for: one that is half read before one that isn’t begun, so that nothing changes under a hand while
 * the order of the others does; else what settles most for its time.
 */
export function currentStep(steps: readonly Step[], entries: Entries): Step | null {
  const begun = steps.filter(({ path }) => isBegun(entries.get(path)));
  const latest = begun.sort((a, b) => touched(entries, b).localeCompare(touched(entries, a)));
  return latest[0] ?? steps[0] ?? null;
}

function touched(entries: Entries, { path }: Step): string {
  return entries.get(path)?.touched ?? '';
}

/** Whether something was typed for it. */
export function isBegun(entry: Entry | undefined): boolean {
  return entry !== undefined && (entry.draft !== '' || entry.typed.length > 0);
}
