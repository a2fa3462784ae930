import { describe, expect, test } from 'vitest';
import { errorLine, readSetup, type InputErrorCode } from '../../src/records/index.ts';

type Case = readonly [title: string, document: unknown, code: InputErrorCode, path: string];

const fine = { hitchwright: 1, tractor: {}, implement: {} };
const tractor = (fields: object) => ({ ...fine, tractor: fields });
const implement = (fields: object) => ({ ...fine, implement: fields });

const choices: readonly Case[] = [
  ['a kind of work that no table has', implement({ work: 'bale spear' }), 'not-a-choice', 'implement.work'],
  ['a kind of work in other letters', implement({ work: 'RotaryTiller' }), 'not-a-choice', 'implement.work'],
  ['two kinds of work', implement({ work: ['chisel', 'discHarrow'] }), 'not-a-choice', 'implement.work'],
  ['wheels that are no choice', tractor({ wheelsDriven: 'front' }), 'not-a-choice', 'tractor.wheelsDriven'],
  ['driven wheels as a count', tractor({ wheelsDriven: 4 }), 'not-a-choice', 'tractor.wheelsDriven'],
  ['a kind of work on the tractor', tractor({ work: 'chisel' }), 'unknown-key', 'tractor.work'],
  ['a surface to drive on', tractor({ surface: 'firm' }), 'unknown-key', 'tractor.surface'],
];

const counts: readonly Case[] = [
  ['no shanks', implement({ tools: 0 }), 'out-of-range', 'implement.tools'],
  ['too many shanks', implement({ tools: 61 }), 'out-of-range', 'implement.tools'],
  ['half a shank', implement({ tools: 2.5 }), 'wrong-type', 'implement.tools'],
  ['shanks as a text', implement({ tools: '3' }), 'wrong-type', 'implement.tools'],
  ['half a remote', tractor({ remotes: 1.5 }), 'wrong-type', 'tractor.remotes'],
  ['nine remotes', implement({ remotes: 9 }), 'out-of-range', 'implement.remotes'],
  ['fewer remotes than none', tractor({ remotes: -1 }), 'out-of-range', 'tractor.remotes'],
];

const figures: readonly Case[] = [
  ['a width in feet without the unit', implement({ workWidth: 5 }), 'out-of-range', 'implement.workWidth'],
  ['a power for a width', implement({ workWidth: '25 hp' }), 'wrong-unit', 'implement.workWidth'],
  ['a speed of turning for a ground speed', implement({ workSpeed: '540 rpm' }), 'wrong-unit', 'implement.workSpeed'],
  ['a speed of the road', implement({ workSpeed: '40 mph' }), 'out-of-range', 'implement.workSpeed'],
  ['a depth above the ground', implement({ workDepth: -50 }), 'out-of-range', 'implement.workDepth'],
  ['a pressure for a flow', tractor({ remoteFlow: '2300 psi' }), 'wrong-unit', 'tractor.remoteFlow'],
  ['a flow for a pressure', implement({ pressureWanted: '11 gpm' }), 'wrong-unit', 'implement.pressureWanted'],
  ['a pressure in psi without the unit', tractor({ remotePressure: 2300 }), 'out-of-range', 'tractor.remotePressure'],
  ['a force for a bore', implement({ cylinderBore: '20 kN' }), 'wrong-unit', 'implement.cylinderBore'],
  ['most power of nothing', implement({ powerMost: 0 }), 'out-of-range', 'implement.powerMost'],
  ['a flow that is no number', implement({ flowWanted: NaN }), 'not-finite', 'implement.flowWanted'],
];

function errorsIn(document: unknown) {
  const reading = readSetup(document);
  return reading.ok ? [] : reading.errors;
}

for (const [title, cases] of [
  ['choices of the work that there are not', choices],
  ['counts that are none', counts],
  ['figures of the work in the wrong unit or out of their range', figures],
] as const) {
  describe(title, () => {
    for (const [what, document, code, path] of cases) {
      test(`${what}: ${code} at ${path}`, () => {
        expect(errorsIn(document).map((error) => `${error.code} ${error.path}`)).toEqual([`${code} ${path}`]);
      });
    }
  });
}

test('a kind of work that there is not is answered with those that there are', () => {
  const lines = errorsIn(implement({ work: 'mower' }))
    .map(errorLine)
    .join('\n');
  expect(lines).toContain('rotaryTiller');
  expect(lines).toContain('landPlane');
});
