import type { LiftCase } from '../properties/generateLift.ts';
import type { Weight } from './freeBody.ts';
import { ballAt, placed, upperAt, type SideView } from './sideView.ts';

/** Everything that is lifted: what the top link helps to hold, and what rides on the link ends and turns with them. */
export interface Weights {
  /** What the implement carries, or else the implement itself: margins are told for it. It is one of those on the body. */
  readonly load: Weight;
  readonly onBody: readonly Weight[];
  readonly onLinks: readonly Weight[];
}

/** Each mass of a case at its own point at one height, by where its record says that it sits. */
export function weightsAt(one: LiftCase, view: SideView, height: number): Weights {
  const ball = ballAt(view, height);
  const body = ball === null ? null : upperAt(view, ball);
  if (ball === null || body === null) throw new Error('does not close');
  const figure = (key: string): number => one.implement[key] ?? 0;
  const ofCoupler = (key: string): number => one.coupler[key] ?? 0;
  const isFramed = one.held === 'uFrame' || one.held === 'triangle';
  const pins = isFramed
    ? placed(body.origin, { x: ofCoupler('hookBehind'), z: ofCoupler('hookRise') }, body.pitch)
    : body.origin;
  const onImplement = (mass: string, behind: string, above: string): Weight => ({
    mass: figure(mass),
    at: placed(pins, { x: figure(behind), z: figure(above) }, body.pitch),
  });
  const own = onImplement('mass', 'centreBehind', 'centreAbove');
  const carried = onImplement('carriedMass', 'carriedBehind', 'carriedAbove');
  const carries = one.implement['carriedMass'] !== undefined;
  const load = carries ? carried : own;
  const implement = carries ? [own, carried] : [own];
  const onCoupler = (mass: string, behind: string, above: string): Weight => {
    const offset = { x: ofCoupler(behind), z: ofCoupler(above) };
    const at = isFramed ? placed(body.origin, offset, body.pitch) : placed(ball.at, offset, ball.angle);
    return { mass: ofCoupler(mass), at };
  };
  const coupler = [onCoupler('mass', 'centreBehind', 'centreAbove'), onCoupler('hungMass', 'hungBehind', 'hungAbove')];
  return isFramed
    ? { load, onBody: [...implement, ...coupler], onLinks: [] }
    : { load, onBody: implement, onLinks: coupler };
}
