import { readSetup, withEdits, type CouplerKind, type SetupDocument } from '../../records/index.ts';
import { assess, type Answer } from '../assess/index.ts';
import type { Driver, Finding } from '../findings/index.ts';
import { groundOf, type Ground } from './ground.ts';
import { lowerRanges, type Ranges } from './lower.ts';
import { movable, type ClearZone, type PinPlan, type PinPlanResult, type PinRefusal } from './plan.ts';
import { refusalBefore, whyNoPlace } from './refusal.ts';
import { holdsAt } from './search.ts';
import { placesIn, targetOf, wholeOf } from './targets.ts';
import { upperRanges } from './upper.ts';

/**
 * Finds where the pins of an implement would have to sit for it to take the coupler of a setup. Every end of every range is
 * found with the checks of the hook-up themselves, everything uncertain taken off on the safe side, and the plan as a whole is
 * proven and judged again. It says nothing of strength.
 *
 * @param document a setup document with a coupler; its tractor may be empty where the coupler is a frame [JSON]
 * @returns the plan, why there is none, or every error in the input [mm]
 * @source docs/method/pinplan.md
 */
export function planPins(document: SetupDocument): PinPlanResult {
  const reading = readSetup(document);
  if (!reading.ok) return { ok: false, refused: null, errors: reading.errors };
  const { setup } = reading;
  const before = answerTo(document);
  const refuse = (refused: PinRefusal): PinPlanResult => ({ ok: false, refused, setup, before });
  const ground = groundOf(document, before);
  const refused = refusalBefore(ground, setup, before);
  if (refused !== null) return refuse(refused);
  const ranges = rangesOn(ground);
  if (ranges === null) return refuse(whyNoPlace(ground, (easier) => rangesOn(easier) !== null));
  const plan = planWith(ground, ranges, { document, setup, before });
  return plan === null ? refuse(whyNoPlace(ground, () => false)) : { ok: true, plan };
}

function rangesOn(ground: Ground): Ranges | null {
  const [lower, upper] = [lowerRanges(ground), upperRanges(ground)];
  return lower === null || upper === null ? null : { ...lower, ...upper };
}

function answerTo(document: SetupDocument): Answer {
  const assessment = assess(document, { full: false });
  if (!assessment.ok) throw new Error(`invariant: ${JSON.stringify(assessment.errors)}`);
  return assessment.answer;
}

type Asked = Pick<PinPlan, 'document' | 'setup' | 'before'>;

/** The plan, once it is proven as a whole; null where it is not. */
function planWith(ground: Ground, ranges: Ranges, asked: Asked): PinPlan | null {
  const targets = movable.flatMap((path) => targetOf(ground, ranges, path));
  const everywhere = { question: ground.question, checks: ground.checks };
  if (!holdsAt(everywhere, placesIn(targets))) return null;
  const moved = targets.filter(({ stays }) => !stays).map((target) => ({ path: target.path, range: wholeOf(target) }));
  const planned = withEdits(
    ground.document,
    moved.map(({ path, range }) => ({ path, value: { between: [range.low, range.high] } })),
  );
  const after = answerTo(planned);
  const checks = ground.checks.map(({ id }) => id);
  const isMet = (one: Finding): boolean => !checks.includes(one.id) || one.status === 'pass';
  if (!after.findings.every(isMet)) return null;
  return {
    ...asked,
    kind: asked.setup.coupler?.kind as CouplerKind,
    targets,
    clear: clearZones(after),
    checks,
    planned,
    after,
    assumed: assumedIn(after, checks),
  };
}

/** What the hooks sweep, where the coupler is one whose hooks close on pins. */
function clearZones({ figures, hold }: Answer): ClearZone[] {
  const zone = (at: ClearZone['at'], path: string): ClearZone[] => {
    const figure = figures[path];
    if (figure === undefined || figure.origin === 'unknown') return [];
    const measured = figure.origin === 'stated' || figure.origin === 'range';
    return [{ at, side: { low: figure.low, high: figure.high }, measured }];
  };
  return [
    ...zone('lower', 'coupler.roomNeededLower'),
    ...(hold === 'uFrame' ? zone('upper', 'coupler.roomNeededUpper') : []),
  ];
}

const standIns: readonly string[] = ['class', 'habit', 'default', 'unknown'];

function assumedIn({ findings }: Answer, checks: readonly string[]): Driver[] {
  const drivers = findings.filter(({ id }) => checks.includes(id)).flatMap((finding) => finding.drivers);
  const assumed = drivers.filter(({ origin }) => standIns.includes(origin));
  return [...new Map(assumed.map((driver) => [driver.path, driver])).values()];
}
