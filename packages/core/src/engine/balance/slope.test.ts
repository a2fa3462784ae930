import { describe, expect, test } from 'vitest';
import { tippingAngles, type Standing } from './slope.ts';

/** 2 m of wheelbase on 1.2 m of track, its centre 0.8 m ahead of the rear axle and 0.7 m high. */
const standing: Standing = {
  wheelbase: 2000,
  rearTrack: 1200,
  pivotHeight: 400,
  ahead: 800,
  height: 700,
  aside: 0,
};
const slope = (share: number): number => (Math.atan(share) * 180) / Math.PI;

describe('a tractor worked by hand', () => {
  test('sideways (600·1200)/(2000·700 − 800·400) = 2/3, uphill 800/700, on its stop 600/700', () => {
    const { sideways, sidewaysOnStop, uphill } = tippingAngles(standing);
    expect(sideways).toBeCloseTo(slope(2 / 3), 12);
    expect(sidewaysOnStop).toBeCloseTo(slope(6 / 7), 12);
    expect(uphill).toBeCloseTo(slope(8 / 7), 12);
  });

  test('a load 60 mm toward the lower side: (720000 − 2000·60)/1080000 = 5/9', () => {
    const { sideways, sidewaysOnStop, uphill } = tippingAngles({ ...standing, aside: 60 });
    expect(sideways).toBeCloseTo(slope(5 / 9), 12);
    expect(sidewaysOnStop).toBeCloseTo(slope(540 / 700), 12);
    expect(uphill).toBeCloseTo(slope(8 / 7), 12);
  });
});

test('with all of it over the rear axle the front pivot says nothing: half the track over the height', () => {
  const { sideways, sidewaysOnStop } = tippingAngles({ ...standing, ahead: 0 });
  expect(sideways).toBeCloseTo(sidewaysOnStop, 12);
});

test('a higher front pivot holds longer, a higher centre less long', () => {
  const { sideways } = tippingAngles(standing);
  expect(tippingAngles({ ...standing, pivotHeight: 500 }).sideways).toBeGreaterThan(sideways);
  expect(tippingAngles({ ...standing, height: 800 }).sideways).toBeLessThan(sideways);
});

test('what would not stand on the level tips at no slope or less: centre behind the rear axle, or past the line to the pivot', () => {
  expect(tippingAngles({ ...standing, ahead: -50 }).uphill).toBeLessThan(0);
  expect(tippingAngles({ ...standing, aside: 400 }).sideways).toBeLessThan(0);
  expect(tippingAngles({ ...standing, ahead: 2050 }).sideways).toBeLessThan(0);
});
