/** Bands of the checks through the lift: our own defaults where no source is named. [mm, deg] */
export const liftLimits = {
  /** Least gap between a lower link and a tyre [mm]. */
  tyreGap: 5,
  /** Least gap between what is carried and the tractor [mm]. */
  machineGap: 25,
} as const;
