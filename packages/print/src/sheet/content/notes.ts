import { balloonsOf } from '@hitchwright/core/drawings';
import type { Finding } from '@hitchwright/core/findings';
import { openFindings, sentenceOf, titleOf } from '@hitchwright/core/words';
import type { Judged, SheetOptions } from '../options.ts';

/** One finding as a note of the sheet. */
export interface Note {
  /** Its number on the drawings; null where they have no balloon for it. */
  readonly number: number | null;
  readonly title: string;
  /** How it stands, where that is not that it holds. */
  readonly standing: string | null;
  readonly sentence: string;
  /** What is at fault has its number reversed, as on the drawing. */
  readonly atFault: boolean;
}

/** The findings by where they stand on the sheet. */
export interface Notes {
  readonly found: readonly Note[];
  readonly holds: readonly Note[];
  /** What was not checked, by the sentence that says what it needs: titles that share one stand together. */
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
  const notes = openFindings(answer)
    .filter(({ status }) => status !== 'notNeeded' && status !== 'notChecked')
    .map((finding): Note => ({
      number: balloons.get(finding.id) ?? null,
      title: titleOf(finding),
      standing: standings[finding.status] ?? null,
      sentence: sentenceOf(finding, setup, system),
      atFault: finding.status === 'fail' || finding.status === 'cured',
    }));
  const isFound = ({ number, standing }: Note): boolean => number !== null || standing !== null;
  const rank = ({ number }: Note): number => number ?? Infinity;
  return {
    found: notes.filter(isFound).sort((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b))),
    holds: notes.filter((note) => !isFound(note)),
    notChecked: notCheckedOf(judged, system),
  };
}

function notCheckedOf({ answer, setup }: Judged, system: SheetOptions['system']): Notes['notChecked'] {
  const bySentence = new Map<string, string[]>();
  for (const finding of answer.findings.filter(({ status }) => status === 'notChecked')) {
    const sentence = sentenceOf(finding, setup, system);
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), titleOf(finding)]);
  }
  return [...bySentence].map(([sentence, titles]) => ({ sentence, titles }));
}

/** `3 limits not checked`, `drive and 1 limit not checked`; null where everything was checked. */
export function uncheckedText({ answer }: Judged): string | null {
  const unchecked = answer.findings.filter(({ status }) => status === 'notChecked');
  const limits = unchecked.filter(({ reason }) => reason !== 'driven').length;
  const what = [
    ...(limits < unchecked.length ? ['drive'] : []),
    ...(limits === 0 ? [] : [`${limits} ${limits === 1 ? 'limit' : 'limits'}`]),
  ];
  return what.length === 0 ? null : `${what.join(' and ')} not checked`;
}
