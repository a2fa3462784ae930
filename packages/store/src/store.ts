import { answersPart, type Answers } from './answers/part.ts';
import { customersPart, type Customers } from './customers.ts';
import { historyPart, type History } from './history/part.ts';
import { importsPart, type Imports } from './imports/part.ts';
import { keepingPart, type Keeping } from './keep/part.ts';
import { mappingsPart, type Mappings } from './mappings.ts';
import { photosPart, type Photos } from './photos.ts';
import { readingsPart, recordsPart, type Readings, type Records } from './records/part.ts';
import { requestsPart, type Requests } from './requests.ts';
import type { Desk } from './room.ts';
import type { PartRefs } from './setup/refs.ts';
import { setupFor, type YardSetup } from './setup/setupFor.ts';

/** A yard’s records, readings, history and answers. Every call is one transaction: done wholly, or not at all. */
export interface Store extends Keeping {
  readonly records: Records;
  readonly readings: Readings;
  readonly history: History;
  readonly customers: Customers;
  readonly answers: Answers;
  readonly photos: Photos;
  readonly imports: Imports;
  readonly mappings: Mappings;
  readonly requests: Requests;
  /** The setup of a question, made of the values in use, and where each comes from. */
  setupFor(refs: PartRefs): Promise<YardSetup>;
  close(): Promise<void>;
}

/** The store over an open database. */
export function storeOver(desk: Desk): Store {
  return {
    records: recordsPart(desk),
    readings: readingsPart(desk),
    history: historyPart(desk),
    customers: customersPart(desk),
    answers: answersPart(desk),
    photos: photosPart(desk),
    imports: importsPart(desk),
    mappings: mappingsPart(desk),
    requests: requestsPart(desk, storeOver),
    setupFor: (refs) => desk.database.read((queries) => setupFor(queries, refs)),
    ...keepingPart(desk),
    close: () => desk.database.close(),
  };
}
