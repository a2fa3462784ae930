import type { FieldGroup } from './groups.ts';

export const tractorHydraulics: readonly FieldGroup[] = [
  { title: 'Remotes', at: 'tractor', fields: ['remotes', 'remoteFlow', 'remotePressure'] },
];

export const implementWork: readonly FieldGroup[] = [
  { title: 'At work', at: 'implement', fields: ['work', 'tools', 'workWidth', 'workSpeed', 'workDepth', 'powerMost'] },
  {
    title: 'Hydraulics it takes',
    at: 'implement',
    fields: ['remotes', 'flowWanted', 'pressureWanted', 'cylinderBore', 'cylinderRod', 'cylinderStroke'],
  },
];
