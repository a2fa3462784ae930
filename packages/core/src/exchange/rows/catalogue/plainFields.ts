import * as words from './choiceWords.ts';
import { choice, count, flag, type FieldSpec } from './fieldSpec.ts';

type Fields = Readonly<Record<string, FieldSpec>>;

const json = (label: string): FieldSpec => ({ form: 'json', label });
const short = (label: string): FieldSpec => ({ form: 'text', label, longest: 200 });
const note: FieldSpec = { form: 'text', label: 'note', longest: 2000 };
const category: FieldSpec = { form: 'category', label: 'category' };
const price: FieldSpec = { form: 'price', label: 'price' };
const fits: FieldSpec = { form: 'names', label: 'fits' };

/** Splines of a shaft end by the type that the standard numbers; the count of splines says which. @source iso-500-1 */
function splines(label: string): FieldSpec {
  const counts = [6, 21, 20, 22];
  const options = counts.map((splined, i) => ({
    said: i + 1,
    spellings: [
      `${splined} splines`,
      `${splined} spline`,
      String(splined),
      `type ${i + 1}`,
      `z${splined}`,
      `${splined}sp`,
    ],
  }));
  return { form: 'choice', label, options };
}

const pinChoices: Fields = {
  pinsPoint: choice('lower pins point', words.pointingWords),
  pinFixing: choice('lower pins are held', words.pinFixingWords),
};

/** Fields of each kind that are chosen or written, not measured, by their path below the record. */
export const plainFields = {
  tractor: {
    category,
    ptoType: splines('PTO splines'),
    ptoSpeeds: { form: 'speeds', label: 'PTO speeds' },
    ptoTurns: choice('PTO turns', words.rotationWords),
    liftCylinders: count('lift cylinders', 1, 4),
    loader: choice('front loader', words.loaderWords),
    weighedWithLoader: flag('weighed with the loader on'),
    tyreLiquid: json('liquid in the rear tyres (JSON)'),
    frontTyreIndex: count('load index of a front tyre', 40, 180),
    rearTyreIndex: count('load index of a rear tyre', 40, 180),
    wheelsDriven: choice('wheels driven', words.wheelsWords),
    remotes: count('remotes', 0, 8),
    outlines: json('outlines (JSON)'),
    price,
    note,
  },
  coupler: {
    kind: choice('kind of coupler', words.couplerKindWords),
    category,
    retainingPin: choice('retaining pin behind the hooks', words.retainingWords),
    'front.pinsPoint': choice('front: lower pins point', words.pointingWords),
    'front.pinFixing': choice('front: lower pins are held', words.pinFixingWords),
    outlines: json('outlines (JSON)'),
    price,
    note,
  },
  implement: {
    category,
    mounting: choice('mounting', words.mountingWords),
    floatSits: choice('where the float sits', words.floatWords),
    lowerPinPlates: choice('plates of each lower pin', words.plateWords),
    alteration: choice('may be altered', words.alterationWords),
    receiver: choice('counterpart for a coupler', words.receiverWords),
    driven: flag('driven by a drive shaft'),
    turnsWhileRaised: flag('turns while raised'),
    inputType: splines('input splines'),
    inputSpeed: { form: 'speed', label: 'input speed' },
    inputTurns: choice('input turns', words.rotationWords),
    work: choice('kind of work', words.workWords),
    tools: count('shanks, bodies or rows', 1, 60),
    remotes: count('remotes', 0, 8),
    ...pinChoices,
    'secondRow.pinsPoint': choice('second row: lower pins point', words.pointingWords),
    'secondRow.pinFixing': choice('second row: lower pins are held', words.pinFixingWords),
    outlines: json('outlines (JSON)'),
    price,
    note,
  },
  shaft: {
    tractorType: splines('splines for the tractor'),
    implementType: splines('splines for the implement'),
    jointFront: choice('joint at the tractor', words.jointWords),
    jointRear: choice('joint at the implement', words.jointWords),
    series: count('series', 1, 9),
    limiter: choice('limiter', words.limiterWords),
    fits,
    price,
    note,
  },
  weight: { kind: choice('kind of weight', words.weightKindWords), count: count('count', 1, 60), fits, price, note },
  part: { kind: choice('kind of part', words.partKindWords), fits, price, note },
  customer: {
    'contact.phone': short('phone'),
    'contact.email': short('e-mail'),
    'contact.address': { form: 'text', label: 'address', longest: 2000 },
    note,
  },
} as const satisfies Readonly<Record<string, Fields>>;

/** The same fields one record further down, told apart by their labels. */
export function placedBelow(fields: Fields, below: string, saidAs = below): Fields {
  return Object.fromEntries(
    Object.entries(fields).map(([key, spec]) => [`${below}.${key}`, { ...spec, label: `${saidAs}: ${spec.label}` }]),
  );
}
