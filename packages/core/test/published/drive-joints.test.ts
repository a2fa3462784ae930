import { describe, expect } from 'vitest';
import {
  angleForFluctuation,
  equalSpeedTurn,
  greatestAcceleration,
  greatestRatio,
  leastRatio,
  nonUniformity,
  speedRatio,
} from '../../src/engine/shaft/joints.ts';
import { published } from './register.ts';

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const deg = (radians: number): number => (radians * 180) / Math.PI;

describe('one joint of 20° at 1000 rpm', () => {
  const source = 'textbook-companion-a';
  const locator = 'ch. 4, example 1, p. 138';
  const speed = (1000 * 2 * Math.PI) / 60;
  published({ source, locator, kind: 'computes', title: 'the driven shaft turns at 111.4 and 98.4 rad/s' }, () => {
    expect(Math.abs(speed * greatestRatio(rad(20)) - 111.4)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(speed * leastRatio(rad(20)) - 98.4)).toBeLessThanOrEqual(0.05);
  });
  published({ source, locator, kind: 'computes', title: 'it speeds up and slows down by 1370 rad/s²' }, () => {
    expect(Math.abs(greatestAcceleration(rad(20), speed).acceleration - 1370)).toBeLessThanOrEqual(0.5);
  });
  published(
    {
      source,
      locator,
      kind: 'computes',
      title: 'most at 41.43° and 138.57°: the print’s shorter formula, within 0.05° of ours',
    },
    () => {
      const turn = deg(greatestAcceleration(rad(20), speed).turn);
      expect(Math.abs(turn - 41.43)).toBeLessThanOrEqual(0.05);
      expect(Math.abs(180 - turn - 138.57)).toBeLessThanOrEqual(0.05);
      const sine = Math.sin(rad(20)) ** 2;
      expect((deg(Math.acos((2 * sine) / (2 - sine))) / 2).toFixed(2)).toBe('41.43');
    },
  );
});

published(
  {
    source: 'question-banks-joints',
    locator: 'question on a double joint of 20°',
    kind: 'computes',
    title: '500 rpm at 20°: the shaft between turns at 469.85 to 532.1 rpm',
  },
  () => {
    expect((500 * leastRatio(rad(20))).toFixed(2)).toBe('469.85');
    expect((500 * greatestRatio(rad(20))).toFixed(1)).toBe('532.1');
  },
);

describe('the angle for a swing of the speed', () => {
  const angle = angleForFluctuation(100 / 1200);
  published(
    {
      source: 'question-banks-joints',
      locator: 'question on 1200 rpm and a range of 100 rpm',
      kind: 'computes',
      title: '1251 and 1151 rpm',
    },
    () => {
      expect(Math.abs(1200 * greatestRatio(angle) - 1251)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(1200 * leastRatio(angle) - 1151)).toBeLessThanOrEqual(0.5);
    },
  );
  published(
    {
      source: 'question-banks-joints',
      locator: 'the same question, its angle',
      kind: 'computes',
      title: '16.4°, not the 16.2° that is printed: 16.2° does not give the printed speeds',
    },
    () => {
      expect(deg(angle).toFixed(1)).toBe('16.4');
      expect(deg(angle).toFixed(1)).not.toBe('16.2');
      expect(Math.abs(1200 * (greatestRatio(rad(16.2)) - leastRatio(rad(16.2))) - 100)).toBeGreaterThan(2);
    },
  );
  for (const [title, swing] of [
    ['1200 rpm, 100 rpm in all', 100 / 1200],
    ['500 rpm, 6 % either way', 0.12],
  ] as const) {
    published(
      {
        source: 'textbook-companion-b',
        locator: 'ch. 9, examples 9.2 and 9.3, pp. 251–252',
        kind: 'computes',
        title: `${title}: the printed formula, (1 − cos²β)/cos β = swing over mean`,
      },
      () => {
        const cosine = Math.cos(angleForFluctuation(swing));
        expect((1 - cosine ** 2) / cosine).toBeCloseTo(swing, 12);
        expect(nonUniformity(angleForFluctuation(swing))).toBeCloseTo(swing, 12);
      },
    );
  }
});

published(
  {
    source: 'textbook-vehicle',
    locator: 'sec. 6.2.3, example 1',
    kind: 'computes',
    title: '500 rev/min at 30°: least speed by the printed formula, N·cos 30°',
  },
  () => {
    expect(500 * leastRatio(rad(30))).toBeCloseTo((500 * Math.sqrt(3)) / 2, 9);
  },
);

published(
  {
    source: 'textbook-companion-b',
    locator: 'ch. 9, example 9.4',
    kind: 'computes',
    title: '18°: equal speeds by the printed formula, tan θ = ±√cos 18°',
  },
  () => {
    const turn = equalSpeedTurn(rad(18));
    expect(Math.tan(turn) ** 2).toBeCloseTo(Math.cos(rad(18)), 12);
    expect(speedRatio(rad(18), turn)).toBeCloseTo(1, 12);
    expect(speedRatio(rad(18), Math.PI - turn)).toBeCloseTo(1, 12);
  },
);

published(
  {
    source: 'forum-joint-ratio',
    locator: 'thread 30314',
    kind: 'computes',
    title: '30°: the ratio is 1/cos 30° or cos 30°, by where the yoke stands',
  },
  () => {
    expect(speedRatio(rad(30), 0)).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(speedRatio(rad(30), Math.PI / 2)).toBeCloseTo(Math.sqrt(3) / 2, 12);
  },
);
