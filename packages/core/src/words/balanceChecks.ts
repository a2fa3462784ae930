import type { CheckId } from '../engine/findings/index.ts';
import type { CheckWords } from './checkWords.ts';

const most = (title: string, what: string, short: string): CheckWords => ({
  title,
  low: '',
  high: `${what} carries {m} more than is permitted.`,
  holds: `${what} carries no more than is permitted, {m} to spare.`,
  short: { low: '', high: `${short} {m} overloaded` },
});

/** Words of the checks of the axle loads. */
export const balanceCheckWords = {
  'balance.frontShare': {
    title: 'Steering',
    low: 'With the implement raised the front axle carries {m} less than it needs to steer.',
    high: '',
    holds: 'The front axle keeps what it needs to steer, {m} to spare.',
    short: { low: 'front axle {m} short', high: '' },
  },
  'balance.rearShare': {
    title: 'Rear axle with the loader on',
    low: 'With the loader on, the rear axle carries {m} less than it needs: a counterweight is missing.',
    high: '',
    holds: 'With the loader on, the rear axle keeps what it needs, {m} to spare.',
    short: { low: 'rear axle {m} short', high: '' },
  },
  'limit.frontOfTotal': {
    title: 'Steering, by the share of everything',
    low: 'Of all that stands on the wheels the front axle carries {m} less than a fifth: some rules want that.',
    high: '',
    holds: 'Of all that stands on the wheels the front axle carries a fifth, {m} to spare.',
    short: { low: 'front axle {m} under a fifth of everything', high: '' },
  },
  'limit.frontAxle': most('Front axle limit', 'The front axle', 'front axle'),
  'limit.rearAxle': most('Rear axle limit', 'The rear axle', 'rear axle'),
  'limit.totalMass': most('Limit in all', 'The tractor', 'tractor'),
  'limit.frontTyres': most('Front tyres', 'The pair of front tyres', 'front tyres'),
  'limit.rearTyres': most('Rear tyres', 'The pair of rear tyres', 'rear tyres'),
  'limit.frontBracket': most('Front bracket', 'The bracket of the front weights', 'front bracket'),
} as const satisfies Partial<Record<CheckId, CheckWords>>;
