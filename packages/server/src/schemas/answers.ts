import { driveRuleNames, steeringRuleNames } from '@hitchwright/core/tables';
import { liftAllowances } from '@hitchwright/core/records';
import * as z from 'zod';
import { because, conflicts, reading } from './records.ts';
import { mayMiss, flag, id, json, object, pageQuery, units } from './common.ts';

const rules = z.strictObject({
  liftAllowance: mayMiss(z.enum(liftAllowances)),
  driveShaft: mayMiss(z.enum(driveRuleNames)),
  steeringShare: mayMiss(z.enum(steeringRuleNames)),
});

/** A question by references. */
const setupRefs = z
  .strictObject({
    tractor: id,
    state: mayMiss(id),
    coupler: mayMiss(id),
    implement: id,
    shaft: mayMiss(id.nullable()),
    parts: mayMiss(z.union([z.literal('fitting'), z.array(id).max(60).readonly()])),
    rules: mayMiss(rules),
    units: mayMiss(units),
  })
  .meta({ id: 'SetupRefs', description: 'Ids of records of the yard, or of customers’ machines.' });

/** Part of a question by references; what is not chosen yet is left out. */
export const partRefs = setupRefs
  .extend({ tractor: mayMiss(id), implement: mayMiss(id) })
  .meta({ id: 'PartRefs', description: 'The same for part of a question: what is not chosen yet is left out.' });

/** The setup of a question, and where each value comes from. */
export const yardSetup = z
  .object({
    setup: object,
    sources: z.array(z.object({ path: z.string(), reading, because, conflicts })).readonly(),
    uses: z.array(z.object({ recordId: z.string(), field: z.string(), used: z.string() })).readonly(),
    removed: z.array(z.string()).readonly(),
    partsLeftOut: z.number().int(),
  })
  .meta({ id: 'YardSetup' });

/** A setup document; docs/setup.schema.json describes it. */
export const setupDocument = object.meta({
  id: 'SetupDocument',
  description: 'A setup as docs/setup.schema.json describes it.',
});

/** The answer as core’s contract has it; docs/glossary.md says what its words mean. */
export const answer = z
  .looseObject({
    hitchwright: z.literal(1),
    saysSafeToRun: z.literal(false),
    headline: z.string(),
    verdict: z.string(),
    because: z.string().nullable(),
    outcomes: object,
    findings: z.array(object),
    cures: z.array(object),
    remarks: z.array(z.string()),
    cautions: z.array(z.object({ id: z.string(), text: z.string() })),
  })
  .meta({ id: 'Answer' });

/** What to measure next. */
export const advice = z
  .object({
    hitchwright: z.literal(1),
    verdict: z.string(),
    headline: z.string(),
    settled: z.boolean(),
    next: z.array(z.looseObject({ path: z.string(), text: z.string(), details: z.array(z.string()) })),
    tooClose: z.array(z.string()),
    needless: z.array(z.string()),
    remarks: z.array(z.string()),
  })
  .meta({ id: 'Advice' });

/** How an answer is to be written. */
export const checkQuery = z.object({
  full: mayMiss(flag).meta({ description: 'With thresholds, sweeps and other ways; true where it is left out.' }),
  units: mayMiss(units),
});

/** An answer that is to be saved. */
export const answerDraft = z
  .strictObject({
    title: z.string(),
    customer: mayMiss(id),
    refs: setupRefs,
    sample: mayMiss(z.boolean()),
  })
  .meta({ id: 'AnswerDraft' });

const note = {
  id: z.string(),
  title: z.string(),
  customer: z.object({ id: z.string(), name: z.string() }).nullable(),
  refs: setupRefs,
  verdict: z.string(),
  reason: z.string(),
  askedAt: z.string(),
  askedBy: z.string(),
  checkedAt: z.string(),
  changedAt: z.string().nullable(),
  sample: z.boolean(),
  revision: z.number().int(),
};

/** A saved answer without its checks. */
export const answerNote = z.object(note).meta({ id: 'AnswerNote' });

/** A saved answer with every check of it. */
export const savedAnswer = z
  .object({
    ...note,
    checks: z
      .array(
        z.object({
          revision: z.number().int(),
          verdict: z.string(),
          reason: z.string(),
          summary: json,
          thresholds: json.optional(),
          rules: mayMiss(z.string()),
          checkedAt: z.string(),
          checkedBy: z.string(),
        }),
      )
      .readonly(),
  })
  .meta({ id: 'SavedAnswer' });

/** Which answers are wanted. */
export const answersQuery = z.object({
  ...pageQuery,
  customer: mayMiss(id),
  verdict: mayMiss(
    z
      .string()
      .max(50)
      .regex(/^[^\0]*$/),
  ),
  changed: mayMiss(flag).meta({ description: 'Only those that a check changed and nobody has dealt with yet.' }),
  search: mayMiss(z.string().max(200)),
  recordId: mayMiss(id),
  field: mayMiss(
    z
      .string()
      .max(200)
      .regex(/^[^\0]*$/),
  ),
});

/** How far the checking again is. */
export const recheckState = z
  .object({
    state: z.enum(['idle', 'running']),
    checked: z.number().int(),
    ruledOut: z.number().int(),
    changed: z.number().int(),
    failed: z.number().int(),
    left: z.number().int(),
    startedAt: z.string().nullable(),
    endedAt: z.string().nullable(),
  })
  .meta({
    id: 'Recheck',
    description:
      '`ruledOut`: nothing that could change the verdict had changed; `left` counts those that are known to wait.',
  });
