/**
 * Bands that the checks use where no standard was readable: our own defaults. The bands of play are wider than the
 * published pairs of bore and pin, which leave 0.1 to 0.8 mm (docs/validation.md, manual-specialist-tractor). [mm, deg]
 */
export const limits = {
  /** Most play of a lower pin in a ball or hook before it counts as loose [mm]. */
  lowerPlay: 2,
  /** Most play of the upper pin in the top link's ball [mm]. */
  upperPlay: 2,
  /** Most play of the upper pin in a top hook, which is commonly oversized to ease pick-up [mm]. */
  topHookPlay: 16,
  /** Most side play of the top link's ball between the mast plates before the plates bend under load [mm]. */
  clevisPlay: 14,
  /** Most play of a bushing on its pin [mm]. */
  bushingPlay: 2,
  /** Most difference of a claw and its ball [mm]. */
  clawPlay: 1,
  /** Most difference of the angles of frame and receiver [deg]. */
  receiverAngle: 1,
  /** Most side play of a frame in its receiver [mm]. */
  receiverPlay: 8,
  /** Most play of a bar in its jaw [mm]. */
  jawPlay: 3,
} as const;
