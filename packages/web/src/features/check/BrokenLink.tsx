import type { InputError } from '@hitchwright/core/records';
import { Header } from '../../app/Header.tsx';
import { VerdictMark } from '../../marks/VerdictMark.tsx';
import { ErrorWords } from './ErrorList.tsx';
import './sheet.css';

/** A link that can't be opened: what is wrong with it, and what to do. */
export function BrokenLink({ errors }: { readonly errors: readonly InputError[] }) {
  return (
    <>
      <Header>
        <h1 className="question">This link can’t be opened</h1>
      </Header>
      <main>
        <section className="sheet sheet-message" aria-label="What is wrong with the link">
          <p className="verdict">
            <VerdictMark outcome="notChecked" />
            <span className="verdict-words">No setup in it</span>
          </p>
          {errors.map((error) => (
            <p key={error.code} className="because">
              <ErrorWords error={error} />
            </p>
          ))}
          <p>
            A link carries the whole setup after its # sign, and mail programs like to cut long links. Copy it again
            from the first letter to the last, or ask the person who sent it to send the question in words.
          </p>
          <p className="button-row">
            <a className="button button-solid" href="#">
              Start a new check
            </a>
            <a className="button" href="#yard">
              Look at the sample yard
            </a>
          </p>
        </section>
      </main>
    </>
  );
}
