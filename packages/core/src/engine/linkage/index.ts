export {
  armAt,
  ballHeightAt,
  bodyAt,
  bodyStanding,
  linksAt,
  lowerLinks,
  riseOf,
  type ArmPlace,
  type BodyPlace,
  type HeldBody,
  type LiftArms,
  type LinkPlace,
  type LowerLinks,
} from './linkage.ts';
export { planeOf, type Arrow, type Plane, type Turn } from './plane.ts';
