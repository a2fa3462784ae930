import { hasYard } from './hasYard.ts';

/** The way to the yard’s records, where there are any. */
export function RecordsLink() {
  return hasYard ? (
    <a className="quiet" href="#records">
      Records
    </a>
  ) : null;
}
