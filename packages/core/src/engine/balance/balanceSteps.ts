import { rearRules, steeringRules, type AxleRule, type SteeringRuleName } from '../../tables/index.ts';
import { openFormula, type Formula, type Step } from '../formula/index.ts';
import { liftSteps, type Course, type LiftSteps } from '../lift/index.ts';
import { planeOf, type Plane } from '../linkage/index.ts';
import type { BalanceStructure } from './structure.ts';

/** The axle loads at a place of the lift, as steps of a formula [mm, kg]; loads are raw and signed. */
export interface BalanceSteps extends SharedSteps, SteeringSteps {}

/** What no rule for steering changes. */
interface SharedSteps extends AxleSteps {
  readonly lift: LiftSteps;
  readonly wheelbase: Step;
  /** What hangs behind, and its moment about the rear axle. */
  readonly behind: Step;
  readonly moment: Step;
  /** What the front axle carries beyond its share of everything, and the rear axle beyond its own. */
  readonly spareOfTotal: Step;
  readonly rearSpare: Step;
}

/** The front axle by one rule for steering. */
interface SteeringSteps {
  /** What it has to carry by the rule, and what it carries beyond that. */
  readonly wanted: Step;
  readonly spare: Step;
  /** Front weights, all of them together where they would hang, that would just meet the rule; below zero none are needed. */
  readonly ballast: Step;
}

/** What stands on each axle. */
interface AxleSteps {
  readonly front: Step;
  readonly rear: Step;
  readonly total: Step;
  /** The front axle with nothing hung behind. */
  readonly frontFree: Step;
  /** The tractor as weighed for the job: what a share is taken of by the usual rule. */
  readonly base: Step;
}

/** A formula with its steps. */
export interface ThroughBalance {
  readonly formula: Formula;
  readonly steps: BalanceSteps;
}

/** One formula serves every rule for steering: what they are taken of is the same. */
interface Written {
  readonly formula: Formula;
  readonly shared: SharedSteps;
  readonly steering: Readonly<Record<SteeringRuleName, SteeringSteps>>;
}

const known = new Map<string, Written>();

/** The formula of the axle loads along a course of the lift, with its steps by the chosen rule; setups of the same structure share it. */
export function throughBalance({ rule, ...structure }: BalanceStructure, course: Course): ThroughBalance {
  const key = `${course} ${JSON.stringify(structure)}`;
  const made = known.get(key) ?? write(structure, course);
  known.set(key, made);
  return { formula: made.formula, steps: { ...made.shared, ...made.steering[rule] } };
}

/** What decides how the formula is written. */
type Unruled = Omit<BalanceStructure, 'rule'>;

function write(structure: Unruled, course: Course): Written {
  const writer = openFormula();
  const p = planeOf(writer);
  const lift = liftSteps(p, structure.lift, course);
  const { behind, moment } = structure.held ? hungBehind(p, lift) : hungLevel(p, structure, lift);
  const loader = loaderOf(p, structure);
  const loads = (fitted: readonly Fitted[]): AxleSteps => axleLoads(p, structure, { behind, moment, fitted });
  const axles = loads([{ mass: p.leaf('frontWeightMass'), ahead: p.leaf('frontWeightAhead') }, ...loader]);
  const bare = loads(loader);
  const by = (name: SteeringRuleName): SteeringSteps => steeringSteps(p, steeringRules(name), { axles, bare });
  const steering = { ofTractor: by('ofTractor'), ofTotal: by('ofTotal'), halfOfFront: by('halfOfFront') };
  const rearOfTotal = p.scaled(axles.total, rearRules('rearOfTotal').share.value);
  const shared: SharedSteps = {
    lift,
    wheelbase: p.leaf('wheelbase'),
    behind,
    moment,
    ...axles,
    spareOfTotal: steering.ofTotal.spare,
    rearSpare: p.subtract(axles.rear, rearOfTotal),
  };
  return { formula: writer.finish(), shared, steering };
}

/** The front axle as it is, and with nothing hung in front of it, by one rule. */
function steeringSteps(
  p: Plane,
  rule: AxleRule<SteeringRuleName>,
  { axles, bare }: { readonly axles: AxleSteps; readonly bare: AxleSteps },
): SteeringSteps {
  const wantedOf = (of: AxleSteps): Step => {
    const bases = { tractor: of.base, total: of.total, frontUnladen: of.frontFree };
    return p.scaled(bases[rule.base], rule.share.value);
  };
  const wanted = wantedOf(axles);
  return {
    wanted,
    spare: p.subtract(axles.front, wanted),
    ballast: p.divide(p.subtract(wantedOf(bare), bare.front), gainedBy(p, rule)),
  };
}

/** What a kilogram on the front bracket gains on the front axle, less what it adds to what is wanted there. */
function gainedBy(p: Plane, { base, share }: AxleRule<SteeringRuleName>): Step {
  const onAxle = p.add(p.constant(1), p.divide(p.leaf('ballastAhead'), p.leaf('wheelbase')));
  if (base === 'tractor') return onAxle;
  if (base === 'frontUnladen') return p.scaled(onAxle, 1 - share.value);
  return p.subtract(onAxle, p.constant(share.value));
}

/** Everything lifted, each mass where it is. */
function hungBehind(p: Plane, { held, riding }: LiftSteps): { behind: Step; moment: Step } {
  const masses = [...held, ...riding];
  const sum = (steps: readonly Step[]): Step => steps.reduce((a, b) => p.add(a, b));
  return {
    behind: sum(masses.map(({ mass }) => mass)),
    moment: sum(masses.map(({ mass, at }) => p.multiply(mass, at.x))),
  };
}

/** Everything lifted, standing level, with the lower links level: they reach farthest back then. */
function hungLevel(p: Plane, { lift: { alone } }: Unruled, { links }: LiftSteps): { behind: Step; moment: Step } {
  const balls = p.add(links.pivot.x, links.length);
  const pins = p.add(balls, p.leaf('hookBehind'));
  const part = (mass: string, from: Step, behind: string): readonly [mass: Step, at: Step] => [
    p.leaf(mass),
    p.add(from, p.leaf(behind)),
  ];
  const own = part('mass', alone ? balls : pins, 'centreBehind');
  const besides = [
    part('carriedMass', pins, 'carriedBehind'),
    part('couplerMass', balls, 'couplerCentreBehind'),
    part('hungMass', balls, 'hungBehind'),
  ];
  const parts = alone ? [own] : [own, ...besides];
  const sum = (steps: readonly Step[]): Step => steps.reduce((a, b) => p.add(a, b));
  return {
    behind: sum(parts.map(([mass]) => mass)),
    moment: sum(parts.map(([mass, at]) => p.multiply(mass, at))),
  };
}

/** Something on the tractor itself: its mass, and how far ahead of the front axle it sits. */
interface Fitted {
  readonly mass: Step;
  readonly ahead: Step;
}

/** What is put on the tractor: what hangs behind, its moment about the rear axle, and what is fitted in front. */
interface Loads {
  readonly behind: Step;
  readonly moment: Step;
  readonly fitted: readonly Fitted[];
}

/**
 * Moments about the rear axle. What sits ahead of the front axle is written as standing on it, and beside that as turning
 * about it: the wheelbase is read once.
 */
function axleLoads(p: Plane, structure: Unruled, { behind, moment, fitted }: Loads): AxleSteps {
  const sum = (steps: readonly Step[]): Step => steps.reduce((a, b) => p.add(a, b), p.constant(0));
  const inFront = sum(fitted.map(({ mass }) => mass));
  const driver = p.leaf('driverMass');
  const added = p.add(p.leaf('wheelWeightMass'), p.leaf('tyreLiquidMass'));
  const turning = sum([
    p.multiply(driver, p.leaf('driverAhead')),
    ...fitted.map(({ mass, ahead }) => p.multiply(mass, ahead)),
  ]);
  const over = (what: Step): Step => p.divide(what, p.leaf('wheelbase'));
  const onFront = p.add(p.leaf('frontAxleMass'), inFront);
  const onRear = sum([p.subtract(p.leaf('tractorMass'), p.leaf('frontAxleMass')), driver, added, behind]);
  return {
    front: p.add(onFront, over(p.subtract(turning, moment))),
    rear: p.add(onRear, over(p.subtract(moment, turning))),
    total: sum([p.leaf('tractorMass'), driver, added, inFront, behind]),
    frontFree: p.add(onFront, over(turning)),
    base: sum([p.leaf('tractorMass'), added, ...fittedLoader(p, structure)]),
  };
}

/** A loader that was weighed with the tractor and is off now weighs against it. */
function loaderOf(p: Plane, structure: Unruled): Fitted[] {
  const arms = fittedLoader(p, structure).map((mass): Fitted => ({ mass, ahead: p.leaf('loaderAhead') }));
  const load = { mass: p.leaf('loaderLoad'), ahead: p.leaf('loaderLoadAhead') };
  return structure.loader === 'loaded' ? [...arms, load] : arms;
}

/** The loader as it adds to what was weighed. */
function fittedLoader(p: Plane, { loader, weighedWithLoader }: Unruled): Step[] {
  const isOn = loader !== 'absent';
  if (isOn === weighedWithLoader) return [];
  return [isOn ? p.leaf('loaderMass') : p.scaled(p.leaf('loaderMass'), -1)];
}
