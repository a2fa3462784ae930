import type { SetupDocument } from '@hitchwright/core/records';
import { Refusal, said, yard } from '../../app/server/yard.ts';

/** Couplers of the yard that are tried, by name: each is an answer of its own. */
const most = 6;

/** The first few of the yard’s own couplers, from the values in use, never an invented one; none where its server can’t be reached. */
export async function yardCouplers(): Promise<readonly SetupDocument[]> {
  try {
    const { items } = await said(
      yard.records.$get({ query: { kind: 'coupler', sample: 'false', limit: String(most) } }),
    );
    const setups = await Promise.all(items.map(({ id }) => said(yard.setups.$post({ json: { coupler: id } }))));
    return setups.map(({ setup }) => setup['coupler'] as SetupDocument);
  } catch (problem) {
    if (problem instanceof Refusal) return [];
    throw problem;
  }
}
