interface ShaftBarProps {
  /** Closed length from cross to cross, and overlap [mm]; null where it is not known. */
  readonly closed: number | null;
  readonly overlap: number | null;
  /** What the whole width stands for [mm]. */
  readonly longest: number;
}

/** A drive shaft pushed together, to the scale of its neighbours: crosses, tubes, and the overlap heavy. */
export function ShaftBar({ closed, overlap, longest }: ShaftBarProps) {
  if (closed === null) return null;
  const width = 300;
  const scale = (width - 12) / longest;
  const [left, right] = [6, 6 + closed * scale];
  const half = ((overlap ?? 0) * scale) / 2;
  const middle = (left + right) / 2;
  return (
    <svg className="shaft-bar" viewBox={`0 0 ${width} 14`} aria-hidden="true" focusable="false">
      <path d={`M${left} 7H${right}`} />
      <circle cx={left} cy={7} r={4} />
      <circle cx={right} cy={7} r={4} />
      {half === 0 ? null : <rect x={middle - half} y={3} width={2 * half} height={8} />}
    </svg>
  );
}
