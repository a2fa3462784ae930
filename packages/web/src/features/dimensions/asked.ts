import { atPath, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { implementDrive, isDriven } from './driveGroups.ts';
import { pathsOf } from './groups.ts';

/** What is asked of a drive beside whether there is one. */
const driveDetails = implementDrive.flatMap(pathsOf).filter((path) => path !== 'implement.driven');

type Condition = (document: SetupDocument) => boolean;

const is =
  (path: string, ...values: readonly unknown[]): Condition =>
  (document) =>
    values.includes(atPath(document, path));
const isLoaded = is('tractor.loader', 'loaded');
const isFilled: Condition = (document) => atPath(document, 'tractor.tyreLiquid.size') !== undefined;

/** Fields that are asked only after another one has been answered so that they matter. */
const conditions: Readonly<Record<string, Condition>> = {
  'shaft.yokeOverCross': is('shaft.closedLength.from', 'yokeEnds'),
  'shaft.limiterTorque': (document) => !is('shaft.limiter', 'none', 'overrunning')(document),
  'implement.floatSits': is('implement.mounting', 'floatingTopLink'),
  'implement.doublePlateGap': is('implement.lowerPinPlates', 'double'),
  'tractor.loaderLoad': isLoaded,
  'tractor.loaderLoadAhead': isLoaded,
  'tractor.tyreLiquid.fluid': isFilled,
  'tractor.tyreLiquid.fill': isFilled,
};

/** Whether a field matters to a document as it stands. */
export function isAsked(path: string, document: SetupDocument): boolean {
  const isOfDrive = driveDetails.includes(path) || path.startsWith('shaft.');
  if (isOfDrive && !isDriven(document)) return false;
  return conditions[path]?.(document) ?? true;
}

const liquid = 'tractor.tyreLiquid';

/** What choosing a value changes: liquid goes in with a size and comes out with it, and is water until another is chosen. */
export function editsFor(path: string, value: unknown, document: SetupDocument): Edit[] {
  if (path !== `${liquid}.size`) return [{ path, value }];
  if (value === undefined) return [{ path: liquid, value: undefined }];
  return [
    { path, value },
    { path: `${liquid}.fluid`, value: atPath(document, `${liquid}.fluid`) ?? 'water' },
  ];
}
