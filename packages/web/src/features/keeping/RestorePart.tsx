import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { Sure } from '../history/Sure.tsx';
import { heldWords } from './heldWords.ts';

/** Puts a backup in the place of everything: it is read first, says what it holds, and only then may it take the place. */
export function RestorePart() {
  const client = useQueryClient();
  const [file, setFile] = useState<File | null>(null);
  const looking = useMutation({ mutationFn: (sent: File) => sentFile(sent, { look: 'true' }) });
  const restoring = useMutation({
    mutationFn: (sent: File) => sentFile(sent, { replace: 'true' }),
    onSettled: () => client.invalidateQueries(),
  });
  const choose = (chosen: File | undefined): void => {
    if (chosen === undefined) return;
    setFile(chosen);
    restoring.reset();
    looking.mutate(chosen);
  };
  const isBusy = looking.isPending || restoring.isPending;
  return (
    <section className="keep-part" aria-labelledby="keep-restore" aria-busy={isBusy}>
      <h2 id="keep-restore">Bring a backup back</h2>
      <p>The file is read from end to end first, and says what it holds. Nothing is changed by that.</p>
      <label className="keep-file">
        <span>A backup or an archive</span>
        <input
          type="file"
          disabled={isBusy}
          onChange={({ target }) => {
            choose(target.files?.[0]);
            target.value = '';
          }}
        />
      </label>
      <Trouble problem={looking.error} />
      <div role="status" className="keep-status">
        {looking.isPending ? <p>{file?.name} is being read…</p> : null}
        {restoring.isPending ? <p>{file?.name} is taking the place of what is here…</p> : null}
        {restoring.data === undefined ? null : <Restored counts={restoring.data.counts} kept={restoring.data.kept} />}
      </div>
      {looking.data === undefined || file === null || restoring.isSuccess || restoring.isPending ? null : (
        <div className="keep-found">
          <p>
            <b>{file.name} is whole.</b> It is {formWords[looking.data.form]}, and holds{' '}
            {heldWords(looking.data.counts)}.
          </p>
          <Sure
            ask="Everything that is in the yard now goes, and this takes its place. A backup of what goes is kept in the data folder."
            yes="Yes, replace everything"
            onYes={() => restoring.mutate(file)}
          >
            Replace everything in the yard with it
          </Sure>
        </div>
      )}
      <Trouble problem={restoring.error} />
    </section>
  );
}

const formWords = { database: 'a backup', archive: 'an archive' } as const;

function sentFile(file: File, query: { readonly look?: 'true'; readonly replace?: 'true' }) {
  const headers = { 'content-type': 'application/octet-stream' };
  return said(yard.restore.$post({ query }, { init: { body: file, headers } }));
}

function Restored({
  counts,
  kept,
}: {
  readonly counts: Readonly<Record<string, number>>;
  readonly kept: string | null;
}) {
  return (
    <>
      <p>
        <b>The yard is restored.</b> It holds {heldWords(counts)}.
      </p>
      {kept === null ? null : (
        <p>
          What was here before is kept in the data folder as <code className="keep-kept">{kept}</code>. Bring that back
          here if this was a mistake.
        </p>
      )}
    </>
  );
}
