import type { Suggestion } from '@hitchwright/core/advice';
import { fieldOfPart } from '@hitchwright/core/readings';
import type { FieldRule } from '@hitchwright/core/records';
import { printQuantity } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';

export interface RulerProps {
  readonly suggestion: Suggestion;
  readonly path: string;
  readonly value: number | null;
  readonly accuracy: number;
  readonly rule: FieldRule;
}

interface Span {
  readonly low: number;
  readonly high: number;
}

const width = 340;
const line = 34;

/** Where the figure decides, on a ruler: it passes where the line is hatched in ink, it fails beyond the heavy mark. */
export function ThresholdRuler({ suggestion, path, value, accuracy, rule }: RulerProps) {
  const { system } = usePreferences();
  const [deciding] = suggestion.thresholds.filter((one) => one.path === path || one.path === fieldOfPart(path));
  if (deciding === undefined) return null;
  const { passes, fails } = deciding;
  const ends = [...passes, ...fails]
    .flatMap(({ low, high }) => [low, high])
    .filter((end) => end > rule.min && end < rule.max);
  if (ends.length === 0) return null;
  const view = viewOf(ends, value, accuracy);
  const at = (figure: number): number =>
    ((Math.min(view.high, Math.max(view.low, figure)) - view.low) / (view.high - view.low)) * width;
  const marks = clearOfEachOther(
    [...passes, ...fails].flatMap(inwardMarks).filter(({ end }) => end > rule.min && end < rule.max),
    at,
  );
  return (
    <svg className="threshold-ruler" viewBox={`-14 0 ${width + 28} 66`} aria-hidden="true" focusable="false">
      <defs>
        <pattern id="ruler-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="6" className="ruler-hatch-good" />
        </pattern>
        <pattern id="ruler-hatch-bad" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="5" className="ruler-hatch-bad" />
        </pattern>
      </defs>
      {passes.map((span) => (
        <Stretch
          key={`p${span.low}`}
          span={span}
          at={at}
          words="it passes"
          fill="url(#ruler-hatch)"
          className="ruler-good"
        />
      ))}
      {fails.map((span) => (
        <Stretch
          key={`f${span.low}`}
          span={span}
          at={at}
          words="it does not"
          fill="url(#ruler-hatch-bad)"
          className="ruler-bad"
        />
      ))}
      <line x1="0" x2={width} y1={line} y2={line} className="ruler-line" />
      {marks.map(({ end, round }) => (
        <g key={end}>
          <line x1={at(end)} x2={at(end)} y1={line - 16} y2={line} className="ruler-end" />
          <text x={at(end)} y={line + 17} textAnchor="middle" className="ruler-figure">
            {printQuantity(end, rule.dimension, { system, round })}
          </text>
        </g>
      ))}
      {value === null ? null : (
        <g className="ruler-value">
          <rect
            x={at(value - accuracy)}
            width={Math.max(2, at(value + accuracy) - at(value - accuracy))}
            y={line - 12}
            height="12"
          />
          <path d={`M${at(value)} ${line + 1}l-8 13h16z`} />
        </g>
      )}
    </svg>
  );
}

interface StretchProps {
  readonly span: Span;
  readonly at: (figure: number) => number;
  readonly words: string;
  readonly fill: string;
  readonly className: string;
}

function Stretch({ span, at, words, fill, className }: StretchProps) {
  const [left, right] = [at(span.low), at(span.high)];
  if (right - left < 1) return null;
  return (
    <g className={className}>
      <rect x={left} width={right - left} y={line - 12} height="12" fill={fill} />
      {right - left < 60 ? null : (
        <text x={(left + right) / 2} y={line - 17} textAnchor="middle">
          {words}
        </text>
      )}
    </g>
  );
}

/** An end that decides; it is rounded so that what is printed still lies in its range. */
interface Mark {
  readonly end: number;
  readonly round: 'up' | 'down';
}

function inwardMarks({ low, high }: Span): Mark[] {
  return [
    { end: low, round: 'up' },
    { end: high, round: 'down' },
  ];
}

/** Figures that would stand on each other: the first, which is the good side’s, stays. */
function clearOfEachOther(marks: readonly Mark[], at: (figure: number) => number): Mark[] {
  return marks.filter((mark, i) => marks.slice(0, i).every((earlier) => Math.abs(at(earlier.end) - at(mark.end)) > 74));
}

/** The ends that decide and the reading, with some room on both sides. */
function viewOf(ends: readonly number[], value: number | null, accuracy: number): Span {
  const all = value === null ? ends : [...ends, value];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = Math.max(0.35 * (high - low), 12 * accuracy, 1);
  return { low: low - room, high: high + room };
}
