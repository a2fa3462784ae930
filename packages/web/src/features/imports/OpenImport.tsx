import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { ColumnsStep } from './ColumnsStep.tsx';
import { Gone } from './Gone.tsx';
import { RowsStep } from './RowsStep.tsx';
import { useImport } from './useImport.ts';
import { StepStrip } from './StepStrip.tsx';
import { WrittenStep } from './WrittenStep.tsx';

/** A file that the server holds, at the step where it stands. */
export function OpenImport({ id }: { readonly id: string }) {
  const { asked, desk, isGone } = useImport(id);
  const [isLooking, setLooking] = useState(false);
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set());
  if (isGone) return <Gone />;
  if (desk === null)
    return asked.error === null ? (
      <p className="waiting">Looking the file up…</p>
    ) : (
      <div className="pad">
        <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />
      </div>
    );
  const { state } = desk.state;
  if (state !== 'open' && state !== 'refused')
    return (
      <>
        <StepStrip at="Written" />
        <WrittenStep
          desk={desk}
          problem={asked.error}
          onAgain={() => desk.write({ leaveOut: [...left], remember: true })}
        />
      </>
    );
  const look = (is: boolean): void => {
    setLooking(is);
    if (!is) setLeft(new Set());
  };
  return (
    <>
      <StepStrip at={isLooking ? 'Rows' : 'Columns'} />
      {isLooking ? (
        <RowsStep desk={desk} left={left} onLeave={setLeft} onBack={() => look(false)} />
      ) : (
        <ColumnsStep desk={desk} onLook={() => look(true)} />
      )}
    </>
  );
}
