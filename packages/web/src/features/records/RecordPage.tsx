import { Trouble } from '../../app/server/Trouble.tsx';
import { YardFrame } from '../../app/server/YardFrame.tsx';
import { RecordEditor } from './RecordEditor.tsx';
import { useRecord } from './useRecord.ts';

/** One record: every figure of it with where it is measured, who read it, and what else was read. */
export function RecordPage({ id }: { readonly id: string }) {
  return (
    <YardFrame at="#records" title="A record of the yard">
      <OneRecord id={id} />
    </YardFrame>
  );
}

function OneRecord({ id }: { readonly id: string }) {
  const { asked, desk } = useRecord(id);
  if (desk === null) {
    if (asked.isPending) return <p className="waiting">Fetching the record…</p>;
    return <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />;
  }
  return <RecordEditor desk={desk} />;
}
