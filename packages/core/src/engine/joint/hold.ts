import type { CouplerKind } from '../../records/index.ts';

/** How the implement is held: by the bare ends of the tractor's linkage, or by one kind of coupler. */
export type Hold = 'bareBalls' | CouplerKind;
