import { StepStrip } from './StepStrip.tsx';

/** The server no longer has the file: it was ended, or nobody looked at the file for an hour. */
export function Gone() {
  return (
    <>
      <StepStrip at="File" />
      <section className="imp-part" aria-label="The file is no longer there">
        <h2 className="imp-title">The server no longer has this file</h2>
        <p>
          It keeps a file for an hour, and lets go of it when it is ended or stopped. What was being written then is
          there wholly or not at all: the history says which. Send the file again; what is there already is found and
          not doubled, and what you said of its columns is remembered where it was written.
        </p>
        <p className="button-row">
          <a className="button button-solid" href="#import">
            Send it again
          </a>
          <a className="button" href="#history">
            History
          </a>
        </p>
      </section>
    </>
  );
}
