import type { Edit } from '@hitchwright/core/records';

interface DrivenQuestionProps {
  readonly onEdit: (edits: readonly Edit[]) => void;
}

/** Whether a shaft drives the implement, answered where it is asked. */
export function DrivenQuestion({ onEdit }: DrivenQuestionProps) {
  const answerWith = (value: boolean): void => onEdit([{ path: 'implement.driven', value }]);
  return (
    <span className="driven-question" role="group" aria-label="Does a shaft drive it?">
      <button type="button" onClick={() => answerWith(true)}>
        A shaft drives it
      </button>
      <button type="button" onClick={() => answerWith(false)}>
        No shaft
      </button>
    </span>
  );
}
