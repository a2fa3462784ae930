import type { Kind } from './kinds.ts';

/**
 * What is asked of a new record: its class. Of everything that nobody has read yet the check then takes what machines of the class
 * usually have, and says so.
 */
export const classChoices: Readonly<Record<Kind, readonly string[]>> = {
  tractor: ['category', 'wheelsDriven', 'ptoType'],
  coupler: ['kind', 'category'],
  implement: ['category', 'mounting', 'driven'],
  shaft: ['tractorType', 'implementType', 'series'],
  weight: [],
  part: [],
  customer: [],
  machine: [],
  state: [],
};
