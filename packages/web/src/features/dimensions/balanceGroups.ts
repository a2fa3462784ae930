import type { FieldGroup } from './groups.ts';

/** What the axle loads are worked out from, in the order in which people find it out. */
export const tractorBalance: readonly FieldGroup[] = [
  {
    title: 'Weight and axles',
    at: 'tractor',
    fields: ['mass', 'frontAxleMass', 'wheelbase', 'driverMass', 'driverAhead', 'rules.steeringShare'],
    isUsual: true,
  },
  {
    title: 'Front weights',
    at: 'tractor',
    fields: ['frontWeightMass', 'frontWeightAhead', 'frontBracketLimit'],
    isUsual: true,
  },
  {
    title: 'Front loader',
    at: 'tractor',
    fields: ['loader', 'weighedWithLoader', 'loaderMass', 'loaderAhead', 'loaderLoad', 'loaderLoadAhead'],
    isUsual: true,
  },
  {
    title: 'Weight on the rear wheels',
    at: 'tractor',
    fields: ['wheelWeightMass', 'tyreLiquid.size', 'tyreLiquid.fluid', 'tyreLiquid.fill', 'tyreLiquidMass'],
  },
  { title: 'Axle plates', at: 'tractor', fields: ['frontAxleLimit', 'rearAxleLimit', 'totalLimit'] },
  {
    title: 'What its tyres carry',
    at: 'tractor',
    fields: ['frontTyreIndex', 'frontTyreLimit', 'rearTyreIndex', 'rearTyreLimit'],
  },
  { title: 'For slopes', at: 'tractor', fields: ['centreHeight', 'frontPivotHeight', 'rearTrack'] },
];
