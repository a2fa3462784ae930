import { useState } from 'react';
import { useMedia } from '../../app/media.ts';
import { Trouble } from '../../app/server/Trouble.tsx';
import { CustomersThings } from './CustomersThings.tsx';
import { FieldPicture } from './FieldPicture.tsx';
import { MeetingNote } from './MeetingNote.tsx';
import { NotesAndPrice } from './NotesAndPrice.tsx';
import { RecordGroups } from './RecordGroups.tsx';
import { RecordHead } from './RecordHead.tsx';
import { RecordHistory } from './RecordHistory.tsx';
import { recordGroups } from './fieldsOf.ts';
import type { RecordDesk } from './useRecord.ts';

/** The record on its sheet: the drawing of the field that is open at the left, the fields at the right. */
export function RecordEditor({ desk }: { readonly desk: RecordDesk }) {
  const { record } = desk;
  const [open, setOpen] = useState<string | null>(null);
  const isWide = useMedia('(min-width: 1000px)');
  const groups = recordGroups(record);
  const shown = open ?? groups.flatMap(({ fields }) => fields).find((field) => field in record.inUse) ?? null;
  return (
    <section className="sheet record-sheet" aria-label={record.name}>
      <RecordHead desk={desk} />
      <MeetingNote desk={desk} />
      <Trouble problem={desk.problem} />
      <div className={groups.length === 0 ? 'record-body record-body-plain' : 'record-body'}>
        {isWide && groups.length > 0 ? (
          <div className="record-picture">
            <FieldPicture record={record} field={shown} />
          </div>
        ) : null}
        <div className="record-fields">
          <RecordGroups desk={desk} groups={groups} open={open} onOpen={setOpen} hasPicture={!isWide} />
          {record.kind === 'customer' ? <CustomersThings id={record.id} /> : null}
          <NotesAndPrice desk={desk} />
          <RecordHistory id={record.id} revision={record.revision} />
        </div>
      </div>
    </section>
  );
}
