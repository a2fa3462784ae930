import { atPath, type CouplerKind, type SetupDocument } from '@hitchwright/core/records';
import type { FieldGroup } from './groups.ts';

/** Whether a shaft drives the implement: said, or shown by an input shaft or a drive shaft that is described. */
export function isDriven(document: SetupDocument): boolean {
  const said = atPath(document, 'implement.driven');
  if (typeof said === 'boolean') return said;
  return (atPath(document, 'shaft') ?? atPath(document, 'implement.inputBehind') ?? null) !== null;
}

/** The drive at the implement: whether there is one comes first, and the rest only where there is. */
export const implementDrive: readonly FieldGroup[] = [
  {
    title: 'Drive',
    at: 'implement',
    fields: ['driven', 'turnsWhileRaised', 'inputType', 'inputSpeed', 'inputTurns', 'powerWanted'],
    isUsual: true,
  },
  {
    title: 'Its input shaft',
    at: 'implement',
    fields: [
      'inputBehind',
      'inputAbove',
      'inputAside',
      'inputAngle',
      'inputYaw',
      'inputGrooveToEnd',
      'shiftLeft',
      'shiftRight',
    ],
    isUsual: true,
    ofDrive: true,
  },
];

export const tractorDrive: readonly FieldGroup[] = [
  {
    title: 'PTO',
    at: 'tractor',
    fields: ['ptoType', 'ptoSpeeds', 'ptoTurns', 'ptoPower'],
    isUsual: true,
    ofDrive: true,
  },
  {
    title: 'Where its PTO stub is',
    at: 'tractor',
    fields: ['stubBehindAxle', 'stubHeight', 'stubAside', 'stubGrooveToEnd'],
    isUsual: true,
    ofDrive: true,
  },
];

const framed: readonly CouplerKind[] = ['uFrame', 'triangle'];

/** The opening that the shaft passes; where nothing but links and hooks stands there, there is none. */
export function couplerDrive(kind: CouplerKind): readonly FieldGroup[] {
  if (!framed.includes(kind)) return [];
  const fields = ['windowWidth', 'windowTop', 'windowBottom', 'windowBehind'];
  return [{ title: 'Opening that the drive shaft passes', at: 'coupler', fields, isUsual: true, ofDrive: true }];
}

export const shaftGroups: readonly FieldGroup[] = [
  {
    title: 'Lengths',
    at: 'shaft',
    fields: ['name', 'closedLength', 'yokeOverCross', 'closedOverlap', 'profileLength'],
    isUsual: true,
    ofDrive: true,
  },
  {
    title: 'Yokes and joints',
    at: 'shaft',
    fields: [
      'tractorType',
      'implementType',
      'yokeReachFront',
      'yokeReachRear',
      'jointFront',
      'jointRear',
      'series',
      'bindAngle',
    ],
    isUsual: true,
    ofDrive: true,
  },
  { title: 'Limiter', at: 'shaft', fields: ['limiter', 'limiterTorque'], ofDrive: true },
  {
    title: 'Guard and shields',
    at: 'shaft',
    fields: ['guardTubeDiameter', 'guardConeDiameter', 'guardConeLength', 'shieldOverlapFront', 'shieldOverlapRear'],
    ofDrive: true,
  },
  { title: 'Rules it is judged by', at: 'shaft', fields: ['rules.driveShaft'], isUsual: true, ofDrive: true },
];
