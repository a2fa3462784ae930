/** A repeatable stream of numbers in [0, 1], a quarter of them ends. */
export function* numbers(seed: number): Generator<number, never> {
  let state = seed >>> 0 || 1;
  for (;;) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const value = state / 2 ** 32;
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    if (state / 2 ** 32 < 0.125) yield 0;
    else yield state / 2 ** 32 < 0.25 ? 1 : value;
  }
}
