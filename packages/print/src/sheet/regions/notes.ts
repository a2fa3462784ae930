import { inks, type Spot } from '../../pdf/ink.ts';
import { paintNumber } from '../../scene/paintScene.ts';
import { bold, settings, span, words, type Block, type Words } from '../block.ts';
import type { ListOf } from '../content/cures.ts';
import type { HeldNote, Note, Notes } from '../content/notes.ts';
import type { Readings } from '../content/readings.ts';
import type { Span } from '../../text/pieces.ts';
import type { FlowItem } from '../flow.ts';
import type { Press } from '../press.ts';

/** Width of a column's text, and where it begins beside a balloon [mm]. */
const columnWidth = 86;
const indent = 7;
const balloon = { radius: 2.5, size: 3.2, drop: 1.15 } as const;

/** A heading over a group of a column. */
export function groupHeading({ ink, tags }: Press, group: string, goesOn: boolean): Block {
  const text = goesOn ? `${group}, continued` : group;
  const set = words(ink.faces, [span(text, settings.heading)], settings.heading, columnWidth);
  return { height: set.height, paint: (at) => tags.leaf('H2', () => set.write(ink, at)) };
}

/** The findings: those with a number or a fault first, one by one, then what holds besides, run on. */
export function noteItems(press: Press, { found, holds }: Notes): FlowItem[] {
  return [
    ...found.map((note): FlowItem => ({ group: 'What we found', block: noteBlock(press, note) })),
    ...runOn(
      press,
      'What holds besides, with what there is to spare',
      [...holds].sort((a, b) => weight(a) - weight(b)).map((note, i, { length }) => held(note, i === length - 1)),
    ),
  ];
}

/** What has a figure to spare comes first, then what has a sentence, then titles alone. */
function weight({ spare, sentence }: HeldNote): number {
  return spare !== null ? 0 : sentence !== null ? 1 : 2;
}

/** `Reach of the top link 2 1/16 in (53 mm); ` */
function held({ title, spare, sentence }: HeldNote, isLast: boolean): Span[] {
  const { small } = settings;
  const end = isLast ? '.' : '; ';
  if (sentence !== null) return led(title, sentence);
  return spare === null ? [span(title + end, small)] : [span(`${title} `, small), bold(spare, small), span(end, small)];
}

/** What was not checked, and what each check needs. */
export function notCheckedItems(press: Press, { notChecked }: Notes): FlowItem[] {
  return runOn(
    press,
    'Not checked',
    notChecked.map(({ titles, sentence }) => led(titles.join(', '), sentence)),
  );
}

/** Sentences one after the other. */
export function sentenceItems(press: Press, { heading, entries }: ListOf): FlowItem[] {
  return runOn(
    press,
    heading,
    entries.map((text) => [span(`${text} `, settings.small)]),
  );
}

/** A title that runs into its sentence. */
function led(title: string, sentence: string): Span[] {
  return [bold(`${title}. `, settings.small), span(`${sentence} `, settings.small)];
}

/** A paragraph of run-on sentences ends with the sentence that fills this many lines: columns break between paragraphs. */
const fullParagraph = 5;

/** Sentences run on in paragraphs, none of which is torn between columns. */
function runOn({ ink, tags }: Press, group: string, sentences: readonly (readonly Span[])[]): FlowItem[] {
  const paragraphs: Words[] = [];
  let open: readonly Span[] = [];
  sentences.forEach((sentence, i) => {
    open = [...open, ...sentence];
    const set = words(ink.faces, open, settings.small, columnWidth);
    if (set.lines.length < fullParagraph && i < sentences.length - 1) return;
    paragraphs.push(set);
    open = [];
  });
  return paragraphs.map((set, i): FlowItem => {
    const paint = (at: Spot): void => tags.leaf('P', () => set.write(ink, at));
    return { group, block: { height: set.height, paint }, goesOn: i > 0 };
  });
}

/** What holds is set smaller than what does not, or what is open. */
function noteBlock({ ink, tags }: Press, note: Note): Block {
  const { number, standing, sentence, atFault } = note;
  const setting = standing === null ? settings.small : settings.body;
  const stands = standing === null ? '' : ` (${standing})`;
  const spans = [bold(`${titlesOf(note)}${stands}. `, setting), span(sentence, setting)];
  const set = words(ink.faces, spans, setting, columnWidth - indent);
  const paint = ([x, y]: Spot): void => {
    const middle: Spot = [x + balloon.radius, y + settings.body.leading / 2];
    tags.leaf('P', () => {
      if (number !== null) {
        ink.circle(middle, balloon.radius, {
          stroke: inks.black,
          width: 0.25,
          fill: atFault ? inks.black : inks.paper,
        });
        paintNumber(ink, number, [middle[0], middle[1] + balloon.drop], balloon.size, atFault);
      }
      set.write(ink, [x + indent, y]);
    });
  };
  return { height: Math.max(set.height, 2 * balloon.radius), paint };
}

/** `Shaft at its shortest, 6: Overlap while it turns`: those behind the first bring their numbers along. */
function titlesOf({ title, alike }: Note): string {
  return [title, ...alike.map((one) => (one.number === null ? one.title : `${one.number}:\u00a0${one.title}`))].join(
    ', ',
  );
}

/** Entries of lists, lettered where they are to be chosen from. */
export function listItems(press: Press, lists: readonly ListOf[]): FlowItem[] {
  return lists.flatMap(({ heading, entries, mark }) =>
    entries.map((text, i): FlowItem => ({
      group: heading,
      block: entryBlock(press, text, mark === null ? null : mark === 'letters' ? letterOf(i) : '!'),
    })),
  );
}

/** a, b, ... z, aa, ab, ... */
function letterOf(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26));
  return index < 26 ? letter : letterOf(Math.floor(index / 26) - 1) + letter;
}

function entryBlock({ ink, tags }: Press, text: string, sign: string | null): Block {
  const setting = sign === null || sign === '!' ? settings.small : settings.body;
  const from = sign === null ? 0 : sign === '!' ? 3 : indent;
  const set = words(ink.faces, [span(text, setting)], setting, columnWidth - from);
  const mark = sign === null ? null : words(ink.faces, [bold(sign, settings.answer)], setting, indent);
  const paint = ([x, y]: Spot): void =>
    tags.leaf('P', () => {
      mark?.write(ink, [x, y]);
      set.write(ink, [x + from, y]);
    });
  return { height: set.height, paint };
}

/** Readings run on behind how they were taken. */
export function readingItems(press: Press, { lists }: Readings): FlowItem[] {
  const { small } = settings;
  const readings = lists.flatMap(({ how, readings }) =>
    readings.map(({ label, value }, i) => [
      ...(i === 0 ? [bold(`${how}: `, small)] : []),
      span(`${label} `, small),
      bold(value, small),
      span(i < readings.length - 1 ? '; ' : '. ', small),
    ]),
  );
  return runOn(press, 'Measured: how, by whom, when', readings);
}
