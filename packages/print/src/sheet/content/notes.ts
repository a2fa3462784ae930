import { balloonsOf } from '@hitchwright/core/drawings';
import type { Finding } from '@hitchwright/core/findings';
import { openFindings, sentenceCase, sentenceOf, spareOf, titleOf } from '@hitchwright/core/words';
import type { Judged, SheetOptions } from '../options.ts';

/** One finding as a note of the sheet. */
export interface Note {
  /** Its number on the drawings; null where they have no balloon for it. */
  readonly number: number | null;
  readonly title: string;
  /** Others that stand just like it, for which the same sentence is true: all are open for want of one reading. */
  readonly alike: readonly { readonly number: number | null; readonly title: string }[];
  /** How it stands, where that is not that it holds. */
  readonly standing: string | null;
  readonly sentence: string;
  /** What is at fault has its number reversed, as on the drawing. */
  readonly atFault: boolean;
}

/** A finding that holds and has no number: what it has to spare, and its sentence where no figure says it. */
export interface HeldNote {
  readonly title: string;
  readonly spare: string | null;
  readonly sentence: string | null;
}

/** The findings by where they stand on the sheet. */
export interface Notes {
  readonly found: readonly Note[];
  readonly holds: readonly HeldNote[];
  /** What was not checked, by what it needs, the heading saying the rest: titles that share it stand together. */
  readonly notChecked: readonly { readonly titles: readonly string[]; readonly sentence: string }[];
}

const standings: Readonly<Partial<Record<Finding['status'], string>>> = {
  fail: 'does not hold',
  cured: 'a part cures it',
  undecided: 'open',
};

/** The findings as notes: first what has a number or does not hold, then what holds besides. */
export function notesOf(judged: Judged, { system }: SheetOptions): Notes {
  const { answer, setup } = judged;
  const balloons = balloonsOf(answer);
  const findings = openFindings(answer).filter(({ status }) => status !== 'notNeeded' && status !== 'notChecked');
  const isFound = ({ id, status }: Finding): boolean => balloons.has(id) || standings[status] !== undefined;
  const rank = ({ number }: Note): number => number ?? Infinity;
  const found = findings.filter(isFound).map((finding): Note => ({
    number: balloons.get(finding.id) ?? null,
    title: titleOf(finding),
    alike: [],
    standing: standings[finding.status] ?? null,
    sentence: sentenceOf(finding, setup, system),
    atFault: finding.status === 'fail' || finding.status === 'cured',
  }));
  return {
    found: gathered(found.sort((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)))),
    holds: findings.filter((finding) => !isFound(finding)).map((finding) => heldNote(finding, judged, system)),
    notChecked: notCheckedOf(judged, system),
  };
}

/** Open notes that follow each other and say the same become one. */
function gathered(notes: readonly Note[]): Note[] {
  const result: Note[] = [];
  for (const note of notes) {
    const last = result.at(-1);
    if (last !== undefined && isAlike(last, note))
      result[result.length - 1] = { ...last, alike: [...last.alike, note] };
    else result.push(note);
  }
  return result;
}

function isAlike(a: Note, b: Note): boolean {
  return a.standing === standings.undecided && a.standing === b.standing && a.sentence === b.sentence;
}

/** A margin below nothing that holds all the same is explained by its sentence alone. */
function heldNote(finding: Finding, { setup }: Judged, system: SheetOptions['system']): HeldNote {
  const isExplained = (finding.margin?.low ?? 0) < 0;
  return {
    title: titleOf(finding),
    spare: spareOf(finding, system),
    sentence: isExplained ? sentenceOf(finding, setup, system) : null,
  };
}

function notCheckedOf({ answer, setup }: Judged, system: SheetOptions['system']): Notes['notChecked'] {
  const bySentence = new Map<string, string[]>();
  for (const finding of answer.findings.filter(({ status }) => status === 'notChecked')) {
    const sentence = sentenceCase(sentenceOf(finding, setup, system).replace(/^Not checked: /, ''));
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), titleOf(finding)]);
  }
  return [...bySentence].map(([sentence, titles]) => ({ sentence, titles }));
}
