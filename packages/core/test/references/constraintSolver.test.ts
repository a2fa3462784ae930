import { make_gcs_wrapper, SolveStatus, type SketchPrimitive } from '@salusoft89/planegcs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/engine/formula/index.ts';
import type { LiftSteps } from '../../src/engine/lift/throughLift.ts';
import { even } from '../even.ts';
import { documentOf, liftCases } from '../properties/generateLift.ts';
import { evaluated, questionOf, spaced, type Evaluated } from './engineAt.ts';
import { apart, cross, minus, type Point, type SideView } from './sideView.ts';

const linkages = 40;
const heights = 6;
/** The solver ends where its residuals are this small [mm]; its answer is then as near. */
const residual = 1e-12;
const agreement = 1e-6;

const placesOf = (steps: LiftSteps): readonly { x: Step; z: Step }[] => {
  if (steps.arm === null) throw new Error('no arms');
  return [steps.place.ball, steps.body.origin, steps.body.upper, steps.arm.rodFoot, steps.arm.end];
};

function wanted(steps: LiftSteps): Step[] {
  return [...placesOf(steps).flatMap(({ x, z }) => [x, z]), steps.ballHeight, steps.topLink];
}

const ids = { lowerPivot: '1', topPivot: '2', armPivot: '3', ball: '4', upper: '5', end: '6', foot: '7', origin: '8' };

/** Height of the post that a point off the link stands on [mm]. */
const postHeight = 300;

/** The linkage as points and distances of a drawing that nothing but its dimensions holds together. */
function sketch(view: SideView, topLink: number, height: number, near: readonly Point[]): SketchPrimitive[] {
  const { onLink, upper, arm, link } = view;
  const [ball, origin, top, foot, end] = near as [Point, Point, Point, Point, Point];
  const point = (id: string, { x, z }: Point, fixed: boolean): SketchPrimitive => ({
    id,
    type: 'point',
    x,
    y: z,
    fixed,
  });
  let last = 20;
  const next = (): string => String((last += 1));
  const distance = (p1_id: string, p2_id: string, length: number): SketchPrimitive => ({
    id: next(),
    type: 'p2p_distance',
    p1_id,
    p2_id,
    distance: length,
  });
  /**
   * A point at a distance along the lower link from one of its ends, and square to it: on a post that stands square on the
   * link and is far taller than the point lies off it, so that the point can't change sides.
   */
  const onLowerLink = (id: string, from: string, by: Point, near_: Point): SketchPrimitive[] => {
    const [post, top] = [next(), next()];
    const square = { l1p1_id: ids.lowerPivot, l1p2_id: ids.ball, l2p1_id: post, l2p2_id: top };
    return [
      point(post, near_, false),
      point(top, { x: near_.x, z: near_.z + postHeight }, false),
      point(id, { x: near_.x, z: near_.z + by.z }, false),
      { id: next(), type: 'point_on_line_ppp', p_id: post, lp1_id: ids.lowerPivot, lp2_id: ids.ball },
      distance(from, post, Math.abs(by.x)),
      distance(post, top, postHeight),
      { id: next(), type: 'perpendicular_pppp', ...square },
      { id: next(), type: 'point_on_line_ppp', p_id: id, lp1_id: post, lp2_id: top },
      distance(top, id, postHeight - by.z),
    ];
  };
  return [
    point(ids.lowerPivot, view.pivot, true),
    point(ids.topPivot, view.topPivot, true),
    point(ids.armPivot, arm.pivot, true),
    point(ids.ball, ball, false),
    point(ids.upper, top, false),
    point(ids.end, end, false),
    distance(ids.lowerPivot, ids.ball, link),
    { id: next(), type: 'coordinate_y', p_id: ids.ball, y: height },
    ...onLowerLink(ids.foot, ids.lowerPivot, { x: arm.along, z: arm.above }, foot),
    ...(onLink === null ? [] : onLowerLink(ids.origin, ids.ball, onLink, origin)),
    distance(ids.armPivot, ids.end, arm.length),
    distance(ids.end, ids.foot, arm.rod),
    distance(ids.upper, ids.topPivot, topLink),
    distance(onLink === null ? ids.ball : ids.origin, ids.upper, Math.hypot(upper.x, upper.z)),
  ];
}

/** A start off the answer by up to this much each way, on the same side of every loop [mm]. */
const nudge = 12;

function start(of: Evaluated, place: number, by: number): Point[] {
  return placesOf(of.steps).map(({ x, z }, i) => ({
    x: of.value(x, place) + nudge * Math.sin(by + 3 * i),
    z: of.value(z, place) + nudge * Math.cos(by + 5 * i),
  }));
}

describe('closure against a general-purpose constraint solver', () => {
  test(`${linkages} linkages at ${heights} heights end in the same places`, async () => {
    const solver = await make_gcs_wrapper();
    solver.set_convergence_threshold(residual);
    solver.set_max_iterations(400);
    let compared = 0;
    let worst = 0;
    fc.assert(
      fc.property(liftCases(), even(0, 6), (one, by) => {
        const of = evaluated(questionOf(documentOf(one)), 'stroke', spaced(heights), wanted);
        for (let i = 0; i < heights; i += 1) {
          const view = one.sideView;
          solver.clear_data();
          const primitives = sketch(
            view,
            of.value(of.steps.topLink),
            of.value(of.steps.ballHeight, i),
            start(of, i, by),
          );
          solver.push_primitives_and_params(primitives);
          expect([SolveStatus.Success, SolveStatus.Converged]).toContain(solver.solve());
          solver.apply_solution();
          const solved = (id: string): Point => {
            const point = solver.sketch_index.get_primitive_or_fail(id);
            if (point.type !== 'point') throw new Error(`${id} is no point`);
            return { x: point.x, z: point.y };
          };
          const names = [ids.ball, view.onLink === null ? ids.ball : ids.origin, ids.upper, ids.foot, ids.end];
          placesOf(of.steps).forEach(({ x, z }, k) => {
            const ours = { x: of.value(x, i), z: of.value(z, i) };
            const miss = apart(ours, solved(names[k] as string));
            worst = Math.max(worst, miss);
            expect(miss, names[k]).toBeLessThan(agreement);
          });
          const origin = solved(names[1] as string);
          expect(cross(minus(view.topPivot, origin), minus(solved(ids.upper), origin))).toBeLessThan(0);
          compared += 1;
        }
      }),
      { numRuns: linkages },
    );
    solver.destroy_gcs_module();
    console.log(
      `closed form against the constraint solver: worst ${worst.toExponential(1)} mm over ${compared} places`,
    );
    expect(compared).toBe(linkages * heights);
  });
});
