import type { Answer, Outcome } from '@hitchwright/core/assess';
import type { CheckId } from '@hitchwright/core/findings';
import { printMarginSize, type UnitSystem } from '@hitchwright/core/units';
import { driveSpare, shortOf, topicLine, topicWords } from '@hitchwright/core/words';

/** One of the four answers. */
export interface TopicAnswer {
  readonly name: string;
  readonly outcome: Outcome;
  readonly says: string;
}

type Topic = keyof typeof topicWords;

/** What one of the answers has to spare where it is yes; the beginning of its findings. */
const tellings: Readonly<
  Record<
    Topic,
    { readonly spare: (answer: Answer, system: UnitSystem) => string | null; readonly findings: string | null }
  >
> = {
  hooksUp: { spare: () => null, findings: null },
  runs: { spare: driveSpare, findings: 'shaft.' },
  lifts: { spare: (answer, system) => massToSpare(answer, 'lift.force', system), findings: 'lift.' },
  staysUpright: { spare: frontSpare, findings: 'balance.' },
};

/** The four answers, each with what there is to spare or what is wrong. */
export function topicsOf(answer: Answer, system: UnitSystem): TopicAnswer[] {
  return (Object.keys(topicWords) as Topic[]).map((topic) => ({
    name: topicWords[topic],
    outcome: answer.outcomes[topic],
    says: sayingOf(answer, topic, system),
  }));
}

function sayingOf(answer: Answer, topic: Topic, system: UnitSystem): string {
  const { spare, findings } = tellings[topic];
  const plain = topicLine(answer, topic);
  const toSpare = answer.outcomes[topic] === 'works' ? spare(answer, system) : null;
  if (toSpare !== null) return toSpare;
  const wrong = answer.findings.find(
    ({ id, status }) => findings !== null && id.startsWith(findings) && ['fail', 'cured'].includes(status),
  );
  return wrong === undefined ? plain : `${plain}: ${shortOf(wrong, system)}`;
}

function frontSpare(answer: Answer, system: UnitSystem): string | null {
  const spare = massToSpare(answer, 'balance.frontShare', system);
  return spare === null ? null : `${spare} in front`;
}

function massToSpare({ findings }: Answer, which: CheckId, system: UnitSystem): string | null {
  const low = findings.find(({ id, status }) => id === which && status === 'pass')?.margin?.low ?? null;
  return low === null || low < 0 ? null : `${printMarginSize(low, 'mass', system)} to spare`;
}
