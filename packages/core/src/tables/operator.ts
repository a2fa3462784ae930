import type { Figure } from './figure.ts';
import { seatStandard } from './loadCitations.ts';

/** The driver as tests of tractors count one: on the seat [kg]. @source paes-119-2001, clause 5.2.5; manual-tiller-italian counts the same */
export const operatorMass: Figure = seatStandard(75, '75', 'kg', {
  note: 'on the seat; the tiller manuals say the same',
});
