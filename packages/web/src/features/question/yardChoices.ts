import type { SetupDocument } from '@hitchwright/core/records';
import { Refusal, said, yard } from '../../app/server/yard.ts';
import type { Machine } from '../yard/sampleYard.ts';
import type { Choice, ChoiceGroup, Picked } from './choices.ts';

/** How many of the yard’s records are listed at a time. */
const most = 12;

/** The yard’s own records and customers’ machines that what was typed fits. */
export async function yardChoices(machine: Machine, typed: string): Promise<ChoiceGroup> {
  try {
    const search = typed.trim() === '' ? {} : { search: typed };
    const [own, states, ofCustomers] = await Promise.all([
      said(yard.records.$get({ query: { kind: machine, limit: String(most), ...search } })),
      machine === 'tractor' ? statesFor(search) : [],
      said(yard.records.$get({ query: { kind: 'machine', limit: '100', ...search } })),
    ]);
    const models = await modelsOf(machine, ofCustomers.items);
    const theirs = ofCustomers.items.filter(({ model }) => models.has(model ?? '')).slice(0, most);
    return {
      heading: 'Yard’s records',
      choices: [
        ...theirs.map((record) => choiceOf(machine, record, `a customer’s ${models.get(record.model ?? '') ?? ''}`)),
        ...own.items.map((record) => choiceOf(machine, record, record.sample ? 'sample' : 'of the yard')),
        ...states,
      ],
    };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    const heading =
      problem.status === 0 ? 'The yard’s records can’t be reached. Is its server running?' : problem.message;
    return { heading, choices: [] };
  }
}

/** States of tractors, each with the tractor that it is laid over. */
async function statesFor(search: { readonly search?: string }): Promise<Choice[]> {
  const { items } = await said(yard.records.$get({ query: { kind: 'state', limit: String(most), ...search } }));
  return Promise.all(
    items.map(async ({ id, name, parent }): Promise<Choice> => {
      const tractor = await said(yard.records[':id'].$get({ param: { id: parent ?? '' }, query: {} }));
      const fetched = async (): Promise<Picked> => {
        const { setup } = await said(yard.setups.$post({ json: { tractor: tractor.id, state: id } }));
        const record = { ...(setup['tractor'] as SetupDocument), name: `${tractor.name}, ${name}` };
        return { id: tractor.id, state: id, record, beside: {} };
      };
      return { id: `record-${id}`, name: `${tractor.name}, ${name}`, note: 'a state of it', record: null, fetched };
    }),
  );
}

/** Names of the models of a kind that machines are one of. */
async function modelsOf(
  machine: Machine,
  machines: readonly { readonly model: string | null }[],
): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(machines.flatMap(({ model }) => model ?? []))];
  const models = await Promise.all(ids.map((id) => said(yard.records[':id'].$get({ param: { id }, query: {} }))));
  return new Map(models.filter(({ kind }) => kind === machine).map(({ id, name }) => [id, name]));
}

function choiceOf(
  machine: Machine,
  { id, name }: { readonly id: string; readonly name: string },
  note: string,
): Choice {
  return { id: `record-${id}`, name, note, record: null, fetched: () => picked(machine, id) };
}

/** The record as a setup has it, from the values in use; an implement comes with what lies on the shelf for it. */
async function picked(machine: Machine, id: string): Promise<Picked> {
  const isImplement = machine === 'implement';
  const { setup } = await said(
    yard.setups.$post({ json: { [machine]: id, ...(isImplement ? { parts: 'fitting' as const } : {}) } }),
  );
  const { [machine]: record, parts, shaft } = setup;
  return { id, record: record as SetupDocument, beside: isImplement ? { parts, shaft } : {} };
}
