import { describe, expect, it } from 'vitest';
import { tapeDrawing, tapeWords, type Scene } from '../../src/drawings/index.ts';
import { fieldRules } from '../../src/records/index.ts';
import { named, onPhone, tapeCases } from './tapeCases.ts';

/** Lettering of a scene, its lines joined. */
function lettered({ items }: Scene): string {
  return items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
}

describe('the words of where the tape goes', () => {
  it('name both ends, every mistake, the hint and the sentence of the field', () => {
    for (const one of tapeCases) {
      const { description } = onPhone(one);
      const words = tapeWords(one.path, one.from);
      const told = description.toLowerCase();
      for (const part of [
        words?.from,
        words?.to,
        ...(words?.not ?? []).map((word) => `not ${word}`),
        one.row.hint ?? '',
      ])
        expect(told, named(one)).toContain((part ?? 'missing').toLowerCase());
      expect(description, named(one)).toContain(fieldRules.get(one.path)?.measure);
      expect(description, named(one)).toContain('not to scale');
    }
  });

  it('stand in the drawing too: each mistake crossed out where it has a place', () => {
    for (const one of tapeCases) {
      const scene = onPhone(one);
      for (const { word } of one.row.not) expect(lettered(scene), named(one)).toContain(`not ${word}`);
      for (const at of one.row.not.flatMap((mistake) => mistake.at)) {
        const crossed = scene.items.filter(
          (item) =>
            item.kind === 'stroke' &&
            item.points.length === 2 &&
            item.points.every(([x, z]) => Math.abs(Math.hypot(x - at[0], z - at[1]) / scene.scale - 1.485) < 0.01),
        );
        expect(crossed.length, named(one)).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it('warn of the usual mistakes', () => {
    const mistakes = {
      'implement.shoulderSpan': ['the tips', 'inside the plates'],
      'implement.standOut': ['the hole'],
      'implement.mastHeight': ['the bottom of a pin', 'the top of a plate'],
      'implement.lowerPinDiameter': ['paint, rust or a bushing'],
      'implement.mass': ['while the hitch still carries it'],
      'shaft.closedLength': ['the ends of the yokes', 'over the guard'],
      'tractor.stubBehindAxle': ['the end of the stub'],
      'tractor.ballSpan': ['the faces of the balls'],
      'tractor.frontAxleMass': ['with the driver on it'],
    };
    for (const [path, wanted] of Object.entries(mistakes))
      expect(tapeWords(path)?.not, path).toEqual(expect.arrayContaining(wanted));
  });

  it('say the reading that was typed, and none where there is none', () => {
    const told = (reading: string): string | undefined =>
      tapeDrawing('implement.shoulderSpan', { system: 'us', format: 'phone', reading })?.description;
    expect(told(' 26 5/8 ')).toContain('Reading so far: 26 5/8.');
    expect(told(' ')).not.toContain('Reading');
  });

  it('say both ends in one sentence', () => {
    expect(tapeWords('implement.shoulderSpan')?.sentence).toBe('From the step on one pin to the step on the other.');
    expect(tapeWords('implement.mass')?.sentence).toBe(
      'Hung free from a crane scale: the hook over the place where it balances.',
    );
  });

  it('have ends that fit into a sentence', () => {
    for (const one of tapeCases) {
      const { from, to, not, sentence } = tapeWords(one.path, one.from) ?? { from: '', to: '', not: [], sentence: '' };
      expect(sentence, named(one)).toMatch(/^[A-Z][^.]*\.$/);
      for (const word of [from, to, ...not]) expect(word, named(one)).toMatch(/^[a-z][^.]*[^.\s]$/);
    }
  });
});
