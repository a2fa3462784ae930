import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type DragEvent } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { asImport } from './importTypes.ts';
import { StepStrip } from './StepStrip.tsx';

/** What a file is sent as, by its ending; the server looks into it anyhow. */
const types: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** The first step: a file is chosen or dropped, and the server reads it. */
export function ChooseFile() {
  const client = useQueryClient();
  const [file, setFile] = useState<File | null>(null);
  const [isOver, setOver] = useState(false);
  const opening = useMutation({
    mutationFn: async (sent: File) => asImport(await opened(sent)),
    onSuccess: (state) => client.setQueryData(['import', state.id], state),
  });
  const take = (chosen: File | undefined): void => {
    if (chosen === undefined || opening.isPending) return;
    setFile(chosen);
    opening.mutate(chosen, { onSuccess: ({ id }) => (location.hash = `import=${encodeURIComponent(id)}`) });
  };
  const drag = (event: DragEvent, over: boolean): void => {
    event.preventDefault();
    setOver(over);
  };
  return (
    <>
      <StepStrip at="File" />
      <section
        className={isOver ? 'imp-drop imp-drop-over' : 'imp-drop'}
        aria-label="The file"
        onDragOver={(event) => drag(event, true)}
        onDragLeave={(event) => drag(event, false)}
        onDrop={(event) => {
          drag(event, false);
          take(event.dataTransfer.files[0]);
        }}
      >
        <h2 className="imp-title">Choose a spreadsheet, or drop it here</h2>
        <p>
          A list of tractors, couplers, implements, drive shafts, weights, parts or customers as you have it: CSV or
          XLSX, in your own words. Nothing is written until you have seen what becomes of every row.
        </p>
        <label className="imp-file">
          <span>The file</span>
          <input
            type="file"
            accept=".csv,.tsv,.txt,.xlsx"
            onChange={({ target }) => {
              take(target.files?.[0]);
              target.value = '';
            }}
          />
        </label>
        <p className="imp-file-is" role="status">
          {file === null ? '' : `${file.name}, ${sizeText(file.size)}. ${opening.isPending ? 'It is being read…' : ''}`}
        </p>
        <Trouble problem={opening.error} />
        {opening.isError ? <p>Nothing was written. Mend the file and choose it again, or choose another one.</p> : null}
      </section>
    </>
  );
}

function opened(file: File) {
  const ending = /[^.]*$/.exec(file.name.toLowerCase())?.[0] ?? '';
  const headers = { 'content-type': types[ending] ?? 'application/octet-stream' };
  const name = file.name.slice(0, 200);
  return said(yard.imports.$post({ query: { name } }, { init: { body: file, headers } }));
}

/** `812 bytes`, `3.1 kB`, `18.4 MB`. */
function sizeText(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1e6 ? `${(bytes / 1e3).toFixed(1)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
