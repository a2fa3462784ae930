/** How wide a result is bounded, over what truths of its box spread: searched for its ends, and only sampled. */
export interface Width {
  readonly what: string;
  readonly searched: number;
  readonly sampled: number;
}

/** The middle one of some values. */
export function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;
}

/** Prints median and worst of some widths. */
export function reportWidths(title: string, widths: readonly Width[]): void {
  const worst = widths.reduce((a, b) => (b.searched > a.searched ? b : a));
  const of = (pick: (one: Width) => number): string => middleOf(widths.map(pick)).toFixed(3);
  const plain = Math.max(...widths.map(({ sampled }) => sampled)).toFixed(2);
  console.log(
    `${title}: bound width over searched spread: median ${of((one) => one.searched)}, worst ${worst.searched.toFixed(2)} (${worst.what}); over plain sampled spread: median ${of((one) => one.sampled)}, worst ${plain}; ${widths.length} bounds`,
  );
}
