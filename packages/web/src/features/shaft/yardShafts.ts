import type { SetupDocument } from '@hitchwright/core/records';
import { Refusal, said, yard } from '../../app/server/yard.ts';

/** How many drive shafts of the yard are offered. */
const most = 60;

/** The drive shafts of the yard’s records as parts, by name, never an invented one; null where the server can’t be reached. */
export async function yardShafts(): Promise<readonly SetupDocument[] | null> {
  try {
    const { items } = await said(yard.records.$get({ query: { kind: 'shaft', sample: 'false', limit: String(most) } }));
    if (items.length === 0) return [];
    const { setup } = await said(yard.setups.$post({ json: { parts: items.map(({ id }) => id) } }));
    return setup['parts'] as SetupDocument[];
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return null;
  }
}
