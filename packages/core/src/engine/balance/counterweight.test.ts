import { expect, test } from 'vitest';
import { counterweightFor, rearBallastWanted } from './counterweight.ts';

/** 1300 kg on the front axle and 100 on the rear one. */
const tipped = { wheelbase: 1600, front: 1300, rear: 100 };

test('worked by hand: 180 kg short of a fifth, each kilogram at 800 mm brings 1.5 and asks for 0.2', () => {
  expect(rearBallastWanted({ ...tipped, behind: 800 }, 0.2)).toBeCloseTo(180 / 1.3, 9);
});

test('put back, the rear axle carries its share', () => {
  for (const behind of [0, 400, 900]) {
    const mass = rearBallastWanted({ ...tipped, behind }, 0.2);
    const rear = tipped.rear + mass * (1 + behind / tipped.wheelbase);
    expect(rear / (1400 + mass)).toBeCloseTo(0.2, 12);
  }
});

test('over the rear axle it takes more than behind it', () => {
  expect(rearBallastWanted({ ...tipped, behind: 0 }, 0.2)).toBeGreaterThan(
    rearBallastWanted({ ...tipped, behind: 900 }, 0.2),
  );
});

test('the height that asks for most decides; where none asks for any there is none', () => {
  const places = [700, 900, 800].map((behind) => ({ ...tipped, behind }));
  expect(counterweightFor(places)).toBeCloseTo(rearBallastWanted({ ...tipped, behind: 700 }, 0.2), 12);
  expect(counterweightFor([{ ...tipped, rear: 400, behind: 800 }])).toBeNull();
});
