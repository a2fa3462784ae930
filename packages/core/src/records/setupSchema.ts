import * as z from 'zod/mini';
import { categories } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { couplerFields, fieldRules, implementFields, pinFields, tractorFields } from './fields.ts';
import type { InputError } from './inputError.ts';
import { readValue } from './readValue.ts';
import type { FieldRule, Value } from './value.ts';

/** How an implement is carried; which coupler kinds each style rules out stands in engine/hookup/mounting. */
export const mountingStyles = [
  'threePoint',
  'boomOnTopLinkBracket',
  'subframe',
  'swingingDrive',
  'floatingTopLink',
  'twoPointsAndWheels',
  'armMower',
] as const;
export const couplerKinds = ['uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds'] as const;
export const pinFixings = ['bolted', 'welded', 'reversible'] as const;
export const alterations = ['allowed', 'rented', 'warranty'] as const;
export const outlineParts = ['plate', 'brace', 'gearbox', 'hose', 'guard', 'hook', 'post', 'lever'] as const;

export type MountingStyle = (typeof mountingStyles)[number];
export type CouplerKind = (typeof couplerKinds)[number];
export type Alteration = (typeof alterations)[number];
export type PinFixing = (typeof pinFixings)[number];

type Leaf = z.ZodMiniOptional<z.ZodMiniType<Value>>;
type LeavesOf<R> = { [K in keyof R]: Leaf };

/** Rule of every quantity leaf, for the published JSON Schema. */
export const leafRules = new WeakMap<object, FieldRule>();

const cache = new Map<UnitSystem, ReturnType<typeof build>>();

/** The schema of a setup whose texts without a unit are read in the given system. */
export function setupSchema(assume: UnitSystem) {
  const known = cache.get(assume);
  if (known !== undefined) return known;
  const built = build(assume);
  cache.set(assume, built);
  return built;
}

function build(assume: UnitSystem) {
  const text = z.string().check(z.maxLength(200));
  const category = z.optional(z.enum(categories));
  const leaves = <R extends Readonly<Record<string, FieldRule>>>(rules: R): LeavesOf<R> =>
    Object.fromEntries(Object.entries(rules).map(([key, rule]) => [key, leaf(rule, assume)])) as LeavesOf<R>;
  const pins = {
    ...leaves(pinFields),
    pinsPoint: z.optional(z.enum(['out', 'in'])),
    pinFixing: z.optional(z.enum(pinFixings)),
  };
  const row = z.strictObject({ ...pins, rise: named('implement.secondRow.rise', assume), behind: named('implement.secondRow.behind', assume) });
  const point = z.tuple([coordinate(), coordinate()]);
  const outline = z.array(point).check(z.minLength(3), z.maxLength(40));
  const outlines = z.optional(
    z
      .array(
        z.strictObject({
          name: text,
          part: z.enum(outlineParts),
          rear: z.optional(outline),
          side: z.optional(outline),
          plusMinusMm: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
        }),
      )
      .check(z.maxLength(40)),
  );
  const implement = z.strictObject({
    name: z.optional(text),
    category,
    mounting: z.optional(z.enum(mountingStyles)),
    floatSits: z.optional(z.enum(['atPin', 'behindPin'])),
    lowerPinPlates: z.optional(z.enum(['single', 'double'])),
    alteration: z.optional(z.enum(alterations)),
    receiver: z.optional(z.enum(['triangle', 'jaws', 'none'])),
    note: z.optional(z.string().check(z.maxLength(2000))),
    ...pins,
    ...leaves(implementFields),
    secondRow: z.optional(row),
    outlines,
  });
  const tractor = z.strictObject({
    name: z.optional(text),
    category,
    enginePower: z.optional(leaf({ dimension: 'power', min: 1, max: 500, label: 'engine power', measure: 'From the plate or the manual.' }, assume)),
    ptoPower: z.optional(leaf({ dimension: 'power', min: 1, max: 500, label: 'PTO power', measure: 'From the plate or the manual.' }, assume)),
    note: z.optional(z.string().check(z.maxLength(2000))),
    ...leaves(tractorFields),
  });
  const coupler = z.strictObject({
    name: z.optional(text),
    category,
    kind: z.enum(couplerKinds),
    retainingPin: z.optional(z.enum(['needed', 'notNeeded'])),
    note: z.optional(z.string().check(z.maxLength(2000))),
    ...leaves(couplerFields),
    front: z.optional(z.strictObject(pins)),
    outlines,
  });
  const size = (rule: FieldRule) => required(rule, assume);
  const fits = z.optional(z.array(text).check(z.maxLength(60)));
  const part = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('lowerBushings'), name: text, fits, inside: size(pinFields.lowerBushingInside), outside: size(pinFields.lowerBushingOutside), length: size(pinFields.lowerBushingLength) }),
    z.strictObject({ kind: z.literal('upperBushing'), name: text, fits, inside: size(pinFields.upperBushingInside), outside: size(pinFields.upperBushingOutside) }),
    z.strictObject({ kind: z.literal('lowerPins'), name: text, fits, diameter: size(pinFields.lowerPinDiameter), shoulderSpan: size(pinFields.shoulderSpan), standOut: size(pinFields.standOut), shoulderToHole: size(pinFields.shoulderToHole) }),
    z.strictObject({ kind: z.literal('upperPinPlate'), name: text, fits, mastHeight: size(pinFields.mastHeight), mastSetback: size(pinFields.mastSetback) }),
    z.strictObject({ kind: z.literal('clevisSpacers'), name: text, fits, gapAfter: size(pinFields.clevisGap) }),
    z.strictObject({ kind: z.literal('pinBalls'), name: text, fits, bore: size(implementFields.pinBallBore), diameter: size(implementFields.pinBallDiameter), width: size(implementFields.pinBallWidth) }),
  ]);
  return z.strictObject({
    $schema: z.optional(z.string().check(z.maxLength(300))),
    hitchwright: z.literal(1),
    units: z.optional(z.enum(['us', 'metric'])),
    tractor,
    coupler: z.optional(coupler),
    implement,
    parts: z.optional(z.array(part).check(z.maxLength(60))),
  });
}

function leaf(rule: FieldRule, assume: UnitSystem): Leaf {
  return z.optional(required(rule, assume));
}

function named(path: string, assume: UnitSystem): Leaf {
  const rule = fieldRules.get(path);
  if (rule === undefined) throw new Error(`no field rule for ${path}`);
  return leaf(rule, assume);
}

/** The reader reports its own errors whole; `params.error.path` is below the leaf. */
function required(rule: FieldRule, assume: UnitSystem): z.ZodMiniType<Value> {
  const schema = z.pipe(
    z.unknown(),
    z.transform((raw, ctx): Value => {
      const { value, errors } = readValue(raw, rule, '', assume);
      for (const error of errors) {
        ctx.issues.push({ code: 'custom', input: raw, message: error.code, params: { error } satisfies { error: InputError } });
      }
      return value ?? { kind: 'unknown', provenance: {} };
    }),
  );
  leafRules.set(schema, rule);
  return schema;
}

function coordinate() {
  return z.number().check(z.minimum(-5000), z.maximum(5000));
}
