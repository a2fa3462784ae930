import type { SchemaModule } from 'kysely';
import type { ColumnTypes } from './columnTypes.ts';

/** One step of the schema. A migration only adds, and once it is released it never changes. */
export interface Migration {
  readonly version: number;
  up(schema: SchemaModule, types: ColumnTypes): Promise<void>;
}
