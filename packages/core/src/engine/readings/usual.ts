import { interval } from '../geometry/index.ts';

/** The two collars between plates and steps: up to 12 mm each [mm]. Common practice, no source. */
export const collars = interval(0, 24);
/** Plates of which the thickness is not known [mm]. Our own. */
export const usualPlate = interval(6, 20);
/** Paint and rust on a pin [mm]. Common practice, no source. */
export const coating = interval(0.2, 0.8);
/** What the shiny band of a worn pin has lost [mm]. Common practice, no source. */
export const wear = interval(0, 2);
/** Share of a tractor that its front axle carries, bare; with a loader on it is more. Common practice, no source. */
export const usualFront = interval(0.25, 0.6);
