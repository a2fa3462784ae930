import { rearRules } from '../../tables/index.ts';

/** A tractor by its axle loads, and how far behind the rear axle a weight would hang [mm, kg]. */
export interface Hanging {
  readonly wheelbase: number;
  readonly front: number;
  readonly rear: number;
  readonly behind: number;
}

/**
 * Weight behind so that the rear axle carries a share of everything, the weight itself included:
 * (share·(front + rear) − rear) / (1 + behind/wheelbase − share). Level ground, at rest.
 *
 * @param hanging axle loads without the weight, and how far behind the rear axle it hangs [mm, kg]
 * @param share what the rear axle is to carry of everything [share]
 * @returns weight, negative where none is needed [kg]
 * @example rearBallastWanted({ wheelbase: 1600, front: 1300, rear: 100, behind: 800 }, 0.2); // 138.5
 * @source en-12525, least counterweight, as quoted in loader manuals
 */
export function rearBallastWanted({ wheelbase, front, rear, behind }: Hanging, share: number): number {
  return (share * (front + rear) - rear) / (1 + behind / wheelbase - share);
}

/**
 * The counterweight that keeps the rear axle at its share wherever the lift is.
 *
 * @param places axle loads at each height, and how far back the lower hitch points are there [mm, kg]
 * @returns weight hung at the lower hitch points, or null where none is needed [kg]
 * @source en-12525
 */
export function counterweightFor(places: readonly Hanging[]): number | null {
  const share = rearRules('rearOfTotal').share.value;
  const most = Math.max(...places.map((place) => rearBallastWanted(place, share)));
  return most > 0 ? most : null;
}
