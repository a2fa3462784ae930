/** Height of each eighth’s tick on a tape, from the first to the seventh. */
const heights = [7, 10, 7, 14, 7, 10, 7] as const;
const apart = 6;

/** The ticks of one inch of a tape with the one that a key stands for marked: match the mark, no sums. */
export function TapeTicks({ eighths }: { readonly eighths: number }) {
  return (
    <svg className="tape-ticks" viewBox="-1 0 50 18" aria-hidden="true" focusable="false">
      {[0, ...heights, 0].map((height, i) => (
        <line
          key={i}
          x1={i * apart}
          x2={i * apart}
          y1="0"
          y2={height === 0 ? 18 : height}
          className={i === eighths ? 'tick tick-marked' : 'tick'}
        />
      ))}
    </svg>
  );
}
