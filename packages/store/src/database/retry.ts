/** How long other writers are waited for [ms]. */
const usualPatience = 30_000;
/** Longest wait between two tries [ms]. */
const longestWait = 250;

/**
 * Does it again where another writer was in the way, for some seconds, a little later each time.
 *
 * @param work what to do; nothing of a try that failed has stayed [function]
 * @param isInTheWay whether an error says that trying again may help [function]
 * @param patience how long it is tried [ms]
 * @returns what the work returns [any]
 */
export async function patiently<T>(
  work: () => Promise<T>,
  isInTheWay: (problem: unknown) => boolean,
  patience: number = usualPatience,
): Promise<T> {
  const started = Date.now();
  for (let wait = 2; ; wait = Math.min(2 * wait, longestWait)) {
    try {
      return await work();
    } catch (problem) {
      if (!isInTheWay(problem) || Date.now() - started > patience) throw problem;
    }
    await pause(wait * (0.5 + Math.random()));
  }
}

/** Lets everything else that waits for its turn have it. */
function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

/** Lets everything else that waits have one turn: work on a SQLite file never waits by itself. */
export function turn(): Promise<void> {
  return new Promise((resolve) => {
    setImmediate(resolve);
  });
}
