import { requestLinkOf } from '@hitchwright/core/exchange';
import type { MeasuringRequest, SetupDocument } from '@hitchwright/core/records';
import { useEffect, useMemo, useState } from 'react';
import { sharedAddressOf } from '../../app/address.ts';
import { Header } from '../../app/Header.tsx';
import { chooseAsks, usePreferences } from '../../app/preferences.ts';
import { SendLink } from '../../app/SendLink.tsx';
import { QrCode } from '../../marks/QrCode.tsx';
import { ErrorList } from '../check/ErrorList.tsx';
import { freshId } from '../measure/begin.ts';
import { keepRequest } from '../measure/keep.ts';
import { askedWords } from '../measure/progress.ts';
import { useAdvice } from '../measure/useAdvice.ts';
import { calledIn } from '../question/question.ts';
import { FieldList } from './FieldList.tsx';
import { Worksheet } from './Worksheet.tsx';
import { readableIn } from './readable.ts';
import './request.css';

/** Asks one customer for the readings that matter: a link, a code, or a sheet of paper. */
export function RequestPage({ document }: { readonly document: SetupDocument }) {
  const { asks } = usePreferences();
  const [of, setOf] = useState('');
  const [ticked, setTicked] = useState<ReadonlySet<string> | null>(null);
  const [made] = useState(() => ({ id: freshId(), when: new Date().toISOString() }));
  const { advised, reply } = useAdvice(document);
  const readable = advised === null ? [] : readableIn(advised.advice);
  const paths = readable.map(({ path }) => path);
  const asked = ticked ?? new Set(paths.slice(0, askedFirst));
  const fields = paths.filter((path) => asked.has(path));
  const request = useRequest({ ...made, asks, of, document, key: fields.join(' ') });
  const toggle = (path: string): void => {
    const next = new Set(asked);
    if (!next.delete(path)) next.add(path);
    setTicked(next);
  };
  return (
    <>
      <Header>
        <h1 className="question">What to measure: {titleOf(document)}</h1>
      </Header>
      <main className="request">
        <section className="sheet request-sheet no-print">
          <div className="request-part">
            <h2>Ask for these</h2>
            {reply === null ? <p>Working out what matters…</p> : null}
            {reply?.kind === 'errors' ? <ErrorList errors={reply.errors} /> : null}
            {advised !== null && readable.length === 0 ? (
              <p>Nothing that somebody could read would change the verdict. There is nothing to ask.</p>
            ) : null}
            {paths.length === 0 ? null : (
              <HowMany
                fields={fields}
                all={paths}
                onTick={(ticks) => setTicked(ticks === null ? null : new Set(ticks))}
              />
            )}
            <FieldList suggestions={readable} asked={asked} onToggle={toggle} />
          </div>
          <div className="request-part">
            <h2>From whom, to whom</h2>
            <label className="request-name">
              <span>Who asks</span>
              <input value={asks} maxLength={80} onChange={({ target }) => chooseAsks(target.value)} />
            </label>
            <label className="request-name">
              <span>Who is asked</span>
              <input value={of} maxLength={80} onChange={({ target }) => setOf(target.value)} />
            </label>
          </div>
          {request === null ? null : <Handing request={request} />}
        </section>
        {advised === null || request === null ? null : (
          <Worksheet
            suggestions={readable.filter(({ path }) => fields.includes(path))}
            request={request}
            title={titleOf(document)}
          />
        )}
      </main>
    </>
  );
}

/** How many are asked for at first: those that decide most for their time; more tire whoever reads them. Our own choice. */
const askedFirst = 5;

interface HowManyProps {
  readonly fields: readonly string[];
  readonly all: readonly string[];
  /** Ticks these; null for those that decide most. */
  readonly onTick: (ticks: readonly string[] | null) => void;
}

/** How much is asked of somebody, and all of it or what decides most by one press. */
function HowMany({ fields, all, onTick }: HowManyProps) {
  return (
    <div className="how-many">
      <p role="status">
        {fields.length === 0 ? 'Nothing is ticked: tick what to ask for.' : `You ask for ${askedWords(fields)}.`}
        {all.length > askedFirst ? ` What decides most for its time stands first.` : ''}
      </p>
      {all.length > askedFirst ? (
        <div className="button-row">
          <button type="button" aria-pressed={fields.length === all.length} onClick={() => onTick(all)}>
            Ask for all {all.length}
          </button>
          <button type="button" onClick={() => onTick(null)}>
            Only the first {askedFirst}
          </button>
        </div>
      ) : null}
    </div>
  );
}

interface RequestParts {
  readonly id: string;
  readonly when: string;
  readonly asks: string;
  readonly of: string;
  readonly document: SetupDocument;
  /** The fields that are asked for, in one text. */
  readonly key: string;
}

/** The request as it stands; it is kept here, so that the reply finds its setup again. */
function useRequest({ id, when, asks, of, document, key }: RequestParts): MeasuringRequest | null {
  const request = useMemo((): MeasuringRequest | null => {
    if (key === '') return null;
    const names = {
      ...(asks.trim() === '' ? {} : { asks: asks.trim() }),
      ...(of.trim() === '' ? {} : { of: of.trim() }),
    };
    return { hitchwrightRequest: 1, id, when, ...names, fields: key.split(' '), setup: document };
  }, [id, when, asks, of, document, key]);
  useEffect(() => {
    if (request === null) return undefined;
    const timer = setTimeout(() => void keepRequest(request).catch(() => undefined), 400);
    return () => clearTimeout(timer);
  }, [request]);
  return request;
}

function Handing({ request }: { readonly request: MeasuringRequest }) {
  const link = requestLinkOf(request);
  const address = sharedAddressOf(link);
  const onPaper = (className: string) => (
    <button type="button" className={className} onClick={() => print()}>
      Print the worksheet
    </button>
  );
  return (
    <div className="request-part">
      <h2>Hand it over</h2>
      {address === null ? (
        <p>
          These pages are on this machine only, so a link or a code leads no customer here. Hand over the worksheet on
          paper and type in what comes back, or let somebody read on this device.
        </p>
      ) : (
        <p>
          The link holds the machines and what to read; it works without a signal once it was opened. The readings come
          back as a link or a file of their own.
        </p>
      )}
      <div className="done-actions">
        {address === null ? (
          onPaper('button-solid')
        ) : (
          <SendLink address={address} title="What to measure on the tractor and implement" />
        )}
        {address === null ? (
          <a className="button" href={`#${link}`}>
            Read it on this device
          </a>
        ) : (
          onPaper('')
        )}
        <a className="button" href="#reply">
          Open readings from a file
        </a>
      </div>
      {address === null ? null : <QrCode text={address} label="The same link as a code to photograph" />}
    </div>
  );
}

function titleOf(document: SetupDocument): string {
  const [implement, tractor, coupler] = (['implement', 'tractor', 'coupler'] as const).map((machine) =>
    calledIn(document, machine),
  );
  return `${implement ?? 'implement'} on ${tractor ?? 'tractor'}${coupler === null || coupler === undefined ? '' : ` with ${coupler}`}`;
}
