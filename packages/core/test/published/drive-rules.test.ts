import { describe, expect } from 'vitest';
import {
  clearanceFigures,
  driveRuleNames,
  driveRules,
  highestOf,
  jointAngleFigures,
  overlapFigures,
  type JointAngle,
  type SourceId,
} from '../../src/tables/index.ts';
import { published } from './register.ts';
import { rowOf, sum } from './rows.ts';

describe('clearance left at the shortest', () => {
  const printed: readonly (readonly [SourceId, string, number])[] = [
    ['manual-turf-aerator', 'pp. 13–14', 12],
    ['manual-groove-to-groove', 'chipper p. 21, spreader p. 24, brush cutter p. 13', 25],
    ['manual-chipper', 'p. 12', 25],
    ['manual-rotary-mower-a', 'p. 14', 40],
    ['manual-rotary-tiller-german', 'p. 64', 40],
    ['manual-tractor-shaft', 'compact tractor p. 65', 40],
    ['shaft-length-page', 'the page on length', 50],
    ['manual-trimmer-mower', 'p. 9', 50],
    ['manual-rotary-mower-b', 'p. 10', 76],
  ];
  for (const [source, locator, clearance] of printed) {
    published({ source, locator, kind: 'reads', title: `${clearance} mm left at the shortest` }, () => {
      expect(rowOf(clearanceFigures(), source).value).toBe(clearance);
    });
  }
  published(
    {
      source: 'manual-rotary-mower-b',
      locator: 'p. 10, with the eight others',
      kind: 'reads',
      title: 'nine rows from 12 to 76 mm, never falling, that add up to 358',
    },
    () => {
      const values = clearanceFigures().map(({ value }) => value);
      expect(values).toHaveLength(9);
      expect(sum(values)).toBe(358);
      expect([...values].sort((a, b) => a - b)).toEqual(values);
    },
  );
});

describe('overlap at the longest', () => {
  const lengths: readonly (readonly [SourceId, string, number, number])[] = [
    ['manual-chipper', 'p. 12', 100, 100],
    ['manual-tractor-shaft', 'tractor p. 115', 110, 120],
    ['shaft-length-page', 'the page on length', 150, 150],
    ['manual-groove-to-groove', 'chipper p. 21, spreader p. 24, brush cutter p. 13', 152, 152],
    ['manual-seed-bed', 'p. 12', 250, 250],
  ];
  const rows = (kind: 'length' | 'share') =>
    overlapFigures()
      .filter((rule) => rule.kind === kind)
      .map(({ figure }) => figure);
  for (const [source, locator, low, high] of lengths) {
    const asked = low === high ? `${low}` : `${low}–${high}`;
    published({ source, locator, kind: 'reads', title: `${asked} mm of overlap` }, () => {
      const row = rowOf(rows('length'), source);
      expect([row.value, highestOf(row)]).toEqual([low, high]);
    });
  }
  const shares: readonly (readonly [SourceId, string, string, number])[] = [
    ['manual-rotary-tiller', 'p. 19', 'a third', 1 / 3],
    ['manual-rotary-tiller-german', 'p. 64', 'a third', 1 / 3],
    ['manual-hay-tools', 'supplement B, pp. 29 and 50', 'half', 1 / 2],
    ['shop-shaft-series-a', 'text beside the tables', 'half', 1 / 2],
  ];
  for (const [source, locator, words, share] of shares) {
    published({ source, locator, kind: 'reads', title: `${words} of the profile’s free length overlaps` }, () => {
      expect(rowOf(rows('share'), source).value).toBe(share);
    });
  }
  published(
    {
      source: 'manual-seed-bed',
      locator: 'p. 12, with the eight others',
      kind: 'reads',
      title: 'five lengths that add up to 762 mm and four shares, never falling',
    },
    () => {
      const values = rows('length').map(({ value }) => value);
      expect(values).toHaveLength(5);
      expect(sum(values)).toBe(762);
      expect([...values].sort((a, b) => a - b)).toEqual(values);
      expect(rows('share')).toHaveLength(4);
    },
  );
});

describe('angles of joints', () => {
  const printed: readonly (readonly [SourceId, string, JointAngle['joint'], JointAngle['when'], number])[] = [
    ['shaft-length-page', 'the page on length', 'single', 'advised', 15],
    ['manual-rotary-tiller', 'pp. 19 and 21', 'single', 'turning', 25],
    ['manual-rotary-tiller', 'pp. 19 and 21', 'single', 'stopAbove', 25],
    ['manual-rotary-cutter', 'p. 53', 'single', 'turning', 25],
    ['manual-rotary-cutter', 'p. 53', 'single', 'briefly', 35],
    ['manual-hay-tools', 'supplement B, pp. 29 and 50', 'single', 'turning', 35],
    ['manual-hay-tools', 'supplement B, pp. 29 and 50', 'single', 'standstill', 90],
    ['manual-turf-aerator', 'pp. 13–14', 'single', 'stopAbove', 35],
    ['manual-rotary-tiller-b', 'p. 16', 'single', 'stopAbove', 35],
    ['shop-shaft-safety', 'the safety page', 'single', 'stopAbove', 35],
    ['forum-shaft-angles', 'the rules as copied', 'single', 'turning', 25],
    ['forum-shaft-angles', 'the rules as copied', 'single', 'stopAbove', 45],
    ['forum-shaft-angles', 'the rules as copied', 'wideAngle', 'turning', 25],
    ['forum-shaft-angles', 'the rules as copied', 'wideAngle', 'briefly', 80],
    ['manual-hay-tools', 'supplement B, pp. 29 and 50', 'wideAngle', 'turning', 70],
    ['manual-rotary-cutter', 'p. 53', 'wideAngle', 'briefly', 80],
  ];
  for (const [source, locator, joint, when, degrees] of printed) {
    const name = joint === 'single' ? 'single joint' : 'wide-angle joint';
    const say = { advised: 'advised', turning: 'turning', briefly: 'for a while', stopAbove: 'drive off above' };
    const title = `${name}, ${when === 'standstill' ? 'standing still' : say[when]}: ${degrees}°`;
    published({ source, locator, kind: 'reads', title }, () => {
      const rows = jointAngleFigures().filter((row) => row.joint === joint && row.when === when);
      const row = rowOf(
        rows.map(({ figure }) => figure),
        source,
      );
      expect(row.value).toBe(degrees);
    });
  }
  published(
    {
      source: 'forum-shaft-angles',
      locator: 'the rules as copied, with the others',
      kind: 'reads',
      title: '22 rows; standing still never less than turning',
    },
    () => {
      expect(jointAngleFigures()).toHaveLength(22);
      for (const joint of ['single', 'wideAngle'] as const) {
        const of = (when: JointAngle['when']) =>
          jointAngleFigures()
            .filter((row) => row.joint === joint && row.when === when)
            .map(({ figure }) => figure.value);
        expect(Math.min(...of('standstill'))).toBeGreaterThanOrEqual(Math.max(...of('turning')));
      }
    },
  );
});

describe('rule sets', () => {
  const printed = {
    usual: [50, 150, 25, 35, 25, 70],
    thirdOfTube: [40, 1 / 3, 25, 25, 25, 70],
    halfOfTube: [50, 1 / 2, 35, 35, 70, 70],
    oneInch: [25, 152, 25, 35, 25, 70],
    mostCautious: [76, 250, 15, 25, 25, 70],
    leastCautious: [12, 100, 35, 45, 70, 80],
  } as const;
  const known = {
    usual: 'shaft-length-page',
    thirdOfTube: 'manual-rotary-tiller',
    halfOfTube: 'manual-hay-tools',
    oneInch: 'manual-groove-to-groove',
    mostCautious: 'manual-seed-bed',
    leastCautious: 'manual-chipper',
  } as const;
  for (const name of driveRuleNames) {
    published(
      {
        source: known[name],
        locator: 'its overlap, and the set around it',
        kind: 'reads',
        title: `${name}: clearance, overlap, angles ${printed[name].map((value) => Number(value.toFixed(3))).join(', ')}`,
      },
      () => {
        const rules = driveRules(name);
        const angles = [rules.turningAngle, rules.stopAngle, rules.wideTurningAngle, rules.wideStopAngle];
        const all = [rules.clearance, rules.overlap.figure, ...angles];
        expect(all.map(({ value }) => value)).toEqual(printed[name]);
        expect(rules.overlap.figure.source).toBe(known[name]);
        expect(rules.name).toBe(name);
      },
    );
  }
  published(
    {
      source: 'shaft-length-page',
      locator: 'the usual set',
      kind: 'reads',
      title: 'says who else prints 50 mm, 150 mm, 25° and 35°',
    },
    () => {
      const { clearance, overlap, turningAngle, stopAngle } = driveRules('usual');
      expect(clearance.also).toEqual(['manual-trimmer-mower']);
      expect(overlap.figure.also).toEqual(['manual-groove-to-groove']);
      expect(turningAngle.also).toEqual(['manual-rotary-cutter', 'forum-shaft-angles', 'design-text-joints']);
      expect(stopAngle.also).toEqual(['manual-rotary-tiller-b', 'shop-shaft-safety']);
    },
  );
  published(
    {
      source: 'shaft-length-page',
      locator: 'the usual set',
      kind: 'reads',
      title: 'stands in exactly where a set is silent, and turning never goes past stopping',
    },
    () => {
      const usual = driveRules('usual');
      for (const rules of driveRuleNames.map(driveRules)) {
        for (const field of rules.silentOn) expect(rules[field]).toBe(usual[field]);
        expect(rules.turningAngle.value).toBeLessThanOrEqual(rules.stopAngle.value);
        expect(rules.wideTurningAngle.value).toBeLessThanOrEqual(rules.wideStopAngle.value);
      }
    },
  );
});
