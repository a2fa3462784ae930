import { describe, expect, it } from 'vitest';
import { planPins } from '../../src/engine/pinplan/index.ts';
import { pinRefusalWords } from '../../src/words/index.ts';
import { example } from '../asked.ts';
import { setupOn, setupWith } from '../drawings/setups.ts';
import { refusalOf } from './judged.ts';

const misfit = { mastHeight: 521 };

describe('no plan', () => {
  it('without a coupler', () => {
    expect(refusalOf(setupWith({ coupler: null }))).toEqual({ why: 'noCoupler' });
  });
  it('where everything fits', () => {
    expect(refusalOf(setupWith({}))).toEqual({ why: 'fitsAlready' });
  });
  it('where a second row of pins fits', () => {
    const secondRow = {
      rise: 51,
      behind: 0,
      shoulderSpan: 661,
      standOut: 58,
      shoulderToHole: 44,
      lowerPinDiameter: 22.2,
      washer: 0,
    };
    expect(refusalOf(setupWith({ implement: { ...misfit, secondRow } }))).toEqual({ why: 'fitsAlready' });
  });
  it.each(['rented', 'warranty'])('for a machine that is not to be altered: %s', (alteration) => {
    expect(refusalOf(setupWith({ implement: { ...misfit, alteration } }))).toEqual({ why: 'mayNotAlter', alteration });
  });
  it('a machine that may be altered, or of which nothing is said, gets one', () => {
    expect(planPins(setupWith({ implement: { ...misfit, alteration: 'allowed' } })).ok).toBe(true);
    expect(planPins(setupWith({ implement: misfit })).ok).toBe(true);
  });
  it.each(['triangle', 'bar'])('for a %s, which takes hold elsewhere', (kind) => {
    expect(refusalOf(setupOn({ kind }, misfit))).toEqual({ why: 'counterpart', kind });
  });
  it.each([
    ['a pin thicker than the hook', { lowerPinDiameter: 28 }, 'rear.lowerPin'],
    ['a pin too thin for the hook', { lowerPinDiameter: 19 }, 'rear.lowerPin'],
    ['an upper pin thicker than the throat', { upperPinDiameter: 25 }, 'rear.upperPin'],
    ['a clevis too narrow for the top hook', { clevisGap: 20 }, 'rear.clevis'],
    ['no room', { freeRoomLower: 60 }, 'rear.room'],
    ['an upper pin that floats', { mounting: 'floatingTopLink', floatSits: 'atPin' }, 'mounting'],
    ['two points and wheels', { mounting: 'twoPointsAndWheels' }, 'mounting'],
  ])('for %s', (_, implement, id) => {
    const refused = refusalOf(setupWith({ implement: { ...misfit, ...implement } }));
    expect(refused.why).toBe('notByMoving');
    expect('findings' in refused && refused.findings.map((finding) => finding.id)).toEqual([id]);
  });
  it.each([
    ['coupler', 'hookSpan'],
    ['coupler', 'hookWidth'],
    ['coupler', 'topHookHeight'],
    ['coupler', 'topHookThroat'],
    ['coupler', 'hookSeat'],
    ['implement', 'shoulderSpan'],
    ['implement', 'mastHeight'],
    ['implement', 'shoulderToHole'],
    ['implement', 'freeRoomLower'],
  ])('before the %s’s %s is measured', (machine, key) => {
    const changes = { implement: misfit, [machine]: { ...(machine === 'implement' ? misfit : {}), [key]: null } };
    const refused = refusalOf(setupWith(changes));
    expect(refused).toEqual({ why: 'measureFirst', paths: [`${machine}.${key}`] });
  });
  it('before it is said between which points a spread was read', () => {
    const implement = { ...misfit, shoulderSpan: { value: 661, from: 'unsaid' } };
    expect(refusalOf(setupWith({ implement }))).toMatchObject({ why: 'measureFirst' });
  });
  it('where the coupler is known too coarsely, and says which figure', () => {
    const coupler = { topHookHeight: { between: [455, 485] } };
    expect(refusalOf(setupWith({ implement: misfit, coupler }))).toEqual({
      why: 'tooCoarse',
      paths: ['coupler.topHookHeight'],
    });
  });
  it('for a document with errors', () => {
    expect(planPins({ hitchwright: 1, tractor: {}, implement: { mastHeight: 19 } })).toMatchObject({
      ok: false,
      refused: null,
    });
  });
  it('is told in words, each with its reason', () => {
    const documents = [
      setupWith({ coupler: null }),
      setupWith({}),
      example('rented-aerator-on-coupler'),
      example('auger-on-coupler'),
      example('flail-measure-first'),
      setupWith({ implement: misfit, coupler: { topHookHeight: { between: [455, 485] } } }),
      setupWith({ implement: { ...misfit, lowerPinDiameter: 28 } }),
      setupOn({ kind: 'bar' }, misfit),
    ];
    const told = documents.map((document) => {
      const result = planPins(document);
      if (result.ok || result.refused === null) throw new Error('a plan');
      return pinRefusalWords(result.refused, result.setup, 'us');
    });
    for (const { headline, sentences } of told) {
      expect(headline).not.toBe('');
      expect(sentences.length).toBeGreaterThan(0);
    }
    expect(told.map(({ headline }) => headline)).toEqual([
      'No coupler is named',
      'Nothing has to move',
      'This machine is not to be altered',
      'Moving pins does not help',
      'Measure first',
      'Measure more closely first: what is left of the range is not wide enough',
      'Moving pins does not help',
      'Moving pins does not help',
    ]);
    expect(told[4]?.sentences[0]).toBe(
      'Shoulder span of the implement. Tape from the step of one lower pin to the step of the other, where the ball or hook rubs.',
    );
    expect(told[6]?.sentences).toEqual([
      'Lower pins in the hooks: The lower pin is 1/4 in (6 mm) too thick for the hook.',
    ]);
  });
});
