import type { Answer, Outcome } from '@hitchwright/core/assess';
import type { UnitSystem } from '@hitchwright/core/units';
import { topicAnswer, topicWords } from '@hitchwright/core/words';

/** One of the four answers. */
export interface TopicAnswer {
  readonly name: string;
  readonly outcome: Outcome;
  readonly says: string;
}

/** The four answers, each with what there is to spare or what is wrong. */
export function topicsOf(answer: Answer, system: UnitSystem): TopicAnswer[] {
  return (Object.keys(topicWords) as (keyof typeof topicWords)[]).map((topic) => ({
    name: topicWords[topic],
    outcome: answer.outcomes[topic],
    says: topicAnswer(answer, topic, system),
  }));
}
