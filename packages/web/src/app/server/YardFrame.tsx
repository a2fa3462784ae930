import type { ReactNode } from 'react';
import { Header } from '../Header.tsx';
import { chooseWho, usePreferences } from '../preferences.ts';
import { hasYard } from './hasYard.ts';
import { YardQueries } from './YardQueries.tsx';
import './yardFrame.css';

/** The pages of the yard’s records, in the order in which they stand in the strip. */
const pages = [
  ['#records', 'Records'],
  ['#import', 'Import'],
  ['#answers', 'Saved answers'],
  ['#history', 'History'],
  ['#backup', 'Backup'],
] as const;

interface YardFrameProps {
  /** Fragment of the page that is shown. */
  readonly at: (typeof pages)[number][0];
  readonly title: string;
  readonly children: ReactNode;
}

/** What stands around every page of the records: the strip, the way to the others, and who writes. */
export function YardFrame({ at, title, children }: YardFrameProps) {
  return (
    <YardQueries>
      <Header
        actions={
          <a className="quiet" href="#">
            One check
          </a>
        }
      >
        <h1 className="question">{title}</h1>
      </Header>
      <main>
        <div className="yard-bar">
          <nav aria-label="Yard’s records">
            {pages.map(([hash, name]) => (
              <a key={hash} href={hash} aria-current={hash === at ? 'page' : undefined}>
                {name}
              </a>
            ))}
          </nav>
          <WhoWrites />
        </div>
        {hasYard ? children : <NoYard />}
      </main>
    </YardQueries>
  );
}

function WhoWrites() {
  const { who } = usePreferences();
  return (
    <label className="who-writes">
      <span>Who writes</span>
      <input
        value={who}
        maxLength={100}
        autoComplete="name"
        placeholder="your name"
        onChange={({ target }) => chooseWho(target.value)}
      />
    </label>
  );
}

function NoYard() {
  return (
    <section className="sheet sheet-message" aria-label="No records here">
      <p className="because">These pages came without the yard’s records.</p>
      <p>
        Records are kept by the server of the yard, on its own machine. Checks, measuring and requests work without it.
      </p>
      <p className="button-row">
        <a className="button" href="#">
          One check
        </a>
      </p>
    </section>
  );
}
