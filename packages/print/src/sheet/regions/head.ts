import { becauseOf, verdictWords, uncheckedText } from '@hitchwright/core/words';
import { frameWidth } from '../../pdf/paper.ts';
import type { Spot } from '../../pdf/ink.ts';
import { settings, span, words, type Block, type Words } from '../block.ts';
import { topicsOf, type TopicAnswer } from '../content/topics.ts';
import type { Judged, SheetOptions } from '../options.ts';
import { rule, rules, type Press } from '../press.ts';
import { paintMark } from './marks.ts';

/** Width of the verdict's compartment, and padding [mm]. */
const [verdictWidth, pad] = [106, 3.5];
const mark = { verdict: 9, unchecked: 5.2, topic: 5 } as const;

/** Room over and under the verdict's words [mm]. */
const over = 2;

/** The verdict with its reason, and the four answers beside it. */
export function head(press: Press, judged: Judged, options: SheetOptions): Block {
  const left = verdictBlock(press, judged, options);
  const right = answersBlock(press, topicsOf(judged.answer, options.system), left.height);
  const height = Math.max(left.height, right.height);
  return {
    height,
    paint: ([x, y]) => {
      left.paint([x, y]);
      rule(press, [x + verdictWidth, y], [x + verdictWidth, y + height], rules.frame);
      right.paint([x + verdictWidth, y]);
    },
  };
}

function verdictBlock({ ink, tags }: Press, judged: Judged, { system }: SheetOptions): Block {
  const room = verdictWidth - 2 * pad;
  const set = (text: string, setting: (typeof settings)[keyof typeof settings], width: number): Words =>
    words(ink.faces, [span(text, setting)], setting, width);
  const verdict = set(verdictWords(judged.answer), settings.verdict, room - mark.verdict - 3);
  const question = set(questionOf(judged), settings.body, room);
  const because = set(becauseOf(judged.answer, judged.setup, system) ?? '', settings.because, room);
  const unchecked = set(uncheckedText(judged.answer.findings) ?? '', settings.unchecked, room - mark.unchecked - 3);
  const gaps = 2 * over + (because.height > 0 ? 1 : 0) + (unchecked.height > 0 ? 1.5 : 0);
  const paint = ([x, y]: Spot): void => {
    let top = y + over;
    tags.leaf('P', () => question.write(ink, [x + pad, top]));
    top += question.height;
    tags.artifact(() => paintMark(ink, judged.answer.verdict, [x + pad, top + 0.5], mark.verdict));
    tags.leaf('H1', () => verdict.write(ink, [x + pad + mark.verdict + 3, top]));
    top += verdict.height + (because.height > 0 ? 1 : 0);
    if (because.height > 0) tags.leaf('P', () => because.write(ink, [x + pad, top]));
    top += because.height + 1.5;
    if (unchecked.height === 0) return;
    tags.artifact(() => paintMark(ink, 'notChecked', [x + pad, top + 0.3], mark.unchecked));
    tags.leaf('P', () => unchecked.write(ink, [x + pad + mark.unchecked + 3, top]));
  };
  return { height: question.height + verdict.height + because.height + unchecked.height + gaps, paint };
}

/** `Will the box blade go on the tractor with the coupler?` */
function questionOf({ setup: { tractor, coupler, implement } }: Judged): string {
  const withCoupler = coupler === undefined ? '' : ` with the ${coupler.name ?? 'coupler'}`;
  return `Will the ${implement.name ?? 'implement'} go on the ${tractor.name ?? 'tractor'}${withCoupler}?`;
}

const nameWidth = 29;

function answersBlock(press: Press, topics: readonly TopicAnswer[], least: number): Block {
  const { ink, tags } = press;
  const room = frameWidth - verdictWidth;
  const from = pad + mark.topic + 2;
  const rows = topics.map((topic) => ({
    topic,
    name: words(ink.faces, [span(topic.name, settings.answer)], settings.answer, nameWidth),
    says: words(ink.faces, [span(topic.says, settings.body)], settings.body, room - from - nameWidth - pad),
  }));
  const needed = rows.map(({ name, says }) => Math.max(name.height, says.height) + 3);
  const sum = needed.reduce((all, one) => all + one, 0);
  const more = Math.max(0, (least - sum) / rows.length);
  const paint = ([x, y]: Spot): void => {
    let top = y;
    rows.forEach(({ topic, name, says }, i) => {
      const height = (needed[i] ?? 0) + more;
      const middle = top + height / 2;
      if (i > 0) rule(press, [x, top], [x + room, top], rules.thin);
      tags.artifact(() => paintMark(ink, topic.outcome, [x + pad, middle - mark.topic / 2], mark.topic));
      tags.leaf('P', () => {
        name.write(ink, [x + from, middle - name.height / 2]);
        says.write(ink, [x + from + nameWidth, middle - says.height / 2]);
      });
      top += height;
    });
  };
  return { height: Math.max(least, sum), paint };
}
