import { useRef, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import type { SessionDesk } from './useSession.ts';
import { KeepingNote } from './KeepingNote.tsx';
import { askedWords } from './progress.ts';
import { passSafety } from './usePlace.ts';
import { readinessChecks, safetyRules } from './safety.ts';
import { OfflineStatus } from '../../app/offline/OfflineNotices.tsx';

/** What has to be safe before anybody reaches for the tape, and what else spoils a reading. */
export function SafetyScreen({ desk }: { readonly desk: SessionDesk }) {
  const { session, change } = desk;
  const [isUnlooked, setUnlooked] = useState(false);
  const ground = useRef<HTMLFieldSetElement>(null);
  const begin = (): void => {
    if (session.isAslant === null) {
      setUnlooked(true);
      ground.current?.querySelector('input')?.focus();
      return;
    }
    change({ isReady: true });
    passSafety();
  };
  return (
    <>
      <Header>
        <h1 className="measure-title">Before you measure</h1>
      </Header>
      <main className="measure">
        <KeepingNote desk={desk} />
        <form
          className="measure-sheet safety"
          onSubmit={(event) => {
            event.preventDefault();
            begin();
          }}
        >
          {session.request === null ? null : <Asked request={session.request} />}
          <h2>Make it safe</h2>
          <ol className="safety-rules">
            {safetyRules.map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
          </ol>
          <p className="safety-manual">The operator’s manuals of tractor and implement come first.</p>
          <h2>So that the figures are right</h2>
          <ul className="safety-checks">
            {readinessChecks.map((check) => (
              <li key={check}>{check}</li>
            ))}
          </ul>
          <fieldset className="safety-ground" ref={ground}>
            <legend>Does the tractor stand on level ground?</legend>
            {[false, true].map((isAslant) => (
              <label key={String(isAslant)} className="big-choice">
                <input
                  type="radio"
                  name="ground"
                  checked={session.isAslant === isAslant}
                  onChange={() => change({ isAslant })}
                />
                <span>{isAslant ? 'Not sure' : 'Yes, level'}</span>
              </label>
            ))}
          </fieldset>
          {isUnlooked && session.isAslant === null ? (
            <p className="doubt" role="alert">
              Look how the tractor stands, then say “Yes, level” or “Not sure”.
            </p>
          ) : null}
          <label className="safety-who">
            <span>Who measures (name, if you like)</span>
            <input
              value={session.who}
              maxLength={80}
              autoComplete="name"
              onChange={({ target }) => change({ who: target.value })}
            />
          </label>
          <button type="submit" className="button-solid safety-done">
            {session.isReady ? 'It is safe: go on' : 'It is safe: begin'}
          </button>
          <OfflineStatus />
        </form>
      </main>
    </>
  );
}

function Asked({ request }: { readonly request: NonNullable<SessionDesk['session']['request']> }) {
  const { asks, of, fields } = request;
  return (
    <p className="safety-asked">
      {of === undefined ? '' : `${of}: `}
      {asks === undefined ? 'Somebody' : asks} asks you for {askedWords(fields)}. You need a tape; a caliper or a try
      square helps. Every figure is kept on this device until you send it, and you can send what you have at any time.
    </p>
  );
}
