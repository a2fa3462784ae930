import type { CheckId } from '../engine/findings/index.ts';

/** The words of one check. `{m}` stands for the size of a miss or of what is left to spare. */
export interface CheckWords {
  readonly title: string;
  /** What is wrong when the low end of the band is missed, and the high end. */
  readonly low: string;
  readonly high: string;
  /** What holds, with `{m}` to spare. */
  readonly holds: string;
  /** Short form for a cell of the yard. */
  readonly short: { readonly low: string; readonly high: string };
}

const bushingBore: CheckWords = {
  title: 'Bushing on its pin',
  low: 'The bushing’s bore is {m} too small for the pin.',
  high: 'The bushing is {m} too loose on the pin.',
  holds: 'The bushing goes over the pin.',
  short: { low: 'bushing {m} too tight', high: 'bushing {m} too loose' },
};

const bushingLength: CheckWords = {
  title: 'Bushing length',
  low: 'The bushing is {m} too long: the retaining pin can’t go in.',
  high: '',
  holds: 'The bushing leaves the retaining hole free, {m} to spare.',
  short: { low: 'bushing {m} too long', high: '' },
};

/** Words of every check that is computed, and titles of the rest. */
export const checkWords: Readonly<Record<CheckId, CheckWords>> = {
  mounting: {
    title: 'Way of mounting',
    low: '',
    high: '',
    holds: 'It mounts on three points like any other.',
    short: { low: 'mounts another way', high: '' },
  },
  'front.lowerPin': {
    title: 'Lower pins in the balls',
    low: 'The lower pin is {m} too thick for the ball.',
    high: 'The lower pin is {m} too loose in the ball.',
    holds: 'The lower pins fit the balls.',
    short: { low: 'pin {m} too thick for the ball', high: 'pin {m} too loose in the ball' },
  },
  'front.bushingBore': bushingBore,
  'front.bushingLength': bushingLength,
  'front.span': {
    title: 'Spread of the lower links',
    low: 'The links can’t come together far enough: {m} too far apart at their narrowest.',
    high: 'The links can’t spread far enough: {m} short at their widest.',
    holds: 'The links reach the pins, {m} to spare.',
    short: { low: 'links {m} too far apart', high: 'links {m} short of the pins' },
  },
  'front.retention': {
    title: 'Retaining pins behind the balls',
    low: 'The ball goes on, but covers the retaining hole by {m}.',
    high: '',
    holds: 'The retaining pins go in, {m} to spare.',
    short: { low: 'retaining hole covered by {m}', high: '' },
  },
  'front.upperPin': {
    title: 'Upper pin in the top link',
    low: 'The upper pin is {m} too thick for the top link’s ball.',
    high: 'The upper pin is {m} too loose in the top link’s ball.',
    holds: 'The upper pin fits the top link.',
    short: { low: 'upper pin {m} too thick', high: 'upper pin {m} too loose' },
  },
  'front.upperBushing': bushingBore,
  'front.clevis': {
    title: 'Top link between the mast plates',
    low: 'The mast clevis is {m} too narrow for the top link’s ball.',
    high: 'The mast clevis is {m} too wide for the top link’s ball: its plates can bend.',
    holds: 'The top link’s ball goes between the mast plates.',
    short: { low: 'clevis {m} too narrow', high: 'clevis {m} too wide' },
  },
  'front.topLink': {
    title: 'Reach of the top link',
    low: 'The top link is {m} too long at its shortest for the implement to stand level at work.',
    high: 'The top link is {m} too short at its longest for the implement to stand level at work.',
    holds: 'The top link reaches with the implement standing level at work, {m} to spare.',
    short: { low: 'top link {m} too long', high: 'top link {m} too short' },
  },
  'rear.lowerPin': {
    title: 'Lower pins in the hooks',
    low: 'The lower pin is {m} too thick for the hook.',
    high: 'The lower pin is {m} too loose in the hook.',
    holds: 'The lower pins fit the hooks.',
    short: { low: 'pin {m} too thick for the hook', high: 'pin {m} too loose in the hook' },
  },
  'rear.bushingBore': bushingBore,
  'rear.bushingLength': bushingLength,
  'rear.shoulders': {
    title: 'Shoulders against the hooks',
    low: 'The shoulders leave the hooks no room: {m} too much, both sides together.',
    high: '',
    holds: 'The shoulders clear the hooks, {m} to spare, both sides together.',
    short: { low: 'shoulders foul the hooks by {m}', high: '' },
  },
  'rear.pinSeat': {
    title: 'Pins across the hooks',
    low: 'The pins end {m} short of the far side of the hooks, both sides together.',
    high: '',
    holds: 'The pins pass the hooks by {m}, both sides together.',
    short: { low: 'pins {m} short of the hooks', high: '' },
  },
  'rear.retention': {
    title: 'Retaining pins behind the hooks',
    low: 'The pins seat in the hooks, but can’t take their retaining pins: {m} short, both sides together.',
    high: '',
    holds: 'The retaining pins go in, {m} to spare, both sides together.',
    short: { low: 'no room for retaining pins, {m} short', high: '' },
  },
  'rear.upperPin': {
    title: 'Upper pin in the top hook',
    low: 'The upper pin is {m} too thick for the top hook.',
    high: 'The upper pin is {m} too loose in the top hook.',
    holds: 'The upper pin fits the top hook.',
    short: { low: 'upper pin {m} too thick for the hook', high: 'upper pin {m} too loose in the hook' },
  },
  'rear.upperBushing': bushingBore,
  'rear.clevis': {
    title: 'Top hook at the mast plates',
    low: 'The top hook is {m} too wide for the mast clevis.',
    high: '',
    holds: 'The top hook goes to the mast plates, {m} to spare.',
    short: { low: 'mast clevis {m} too narrow', high: '' },
  },
  'rear.mast': {
    title: 'Upper pin to the top hook',
    low: 'The upper pin sits {m} too low for the top hook.',
    high: 'The upper pin sits {m} too high for the top hook.',
    holds: 'The upper pin meets the top hook, {m} to spare.',
    short: { low: 'upper pin {m} too low', high: 'upper pin {m} too high' },
  },
  'rear.room': {
    title: 'Room for hooks and latches',
    low: 'Something stands {m} inside the room that the hooks need.',
    high: '',
    holds: 'The hooks have room, {m} to spare.',
    short: { low: '{m} too little room for the hooks', high: '' },
  },
  'rear.claw': {
    title: 'Ball in the claw',
    low: 'The ball is {m} too small for the claw.',
    high: 'The ball is {m} too big for the claw.',
    holds: 'The ball fits the claw.',
    short: { low: 'ball {m} too small for the claw', high: 'ball {m} too big for the claw' },
  },
  'rear.ballOnPin': {
    title: 'Ball on the lower pin',
    low: 'The ball’s bore is {m} too small for the lower pin.',
    high: 'The ball is {m} too loose on the lower pin.',
    holds: 'The ball goes over the lower pin.',
    short: { low: 'ball bore {m} too small', high: 'ball {m} too loose on the pin' },
  },
  'rear.receiver': {
    title: 'Counterpart on the implement',
    low: '',
    high: '',
    holds: 'The implement carries the counterpart.',
    short: { low: 'no counterpart on the implement', high: '' },
  },
  'rear.receiverAngle': {
    title: 'Angle of frame and receiver',
    low: 'The receiver is {m} too pointed for the frame.',
    high: 'The receiver is {m} too blunt for the frame.',
    holds: 'Frame and receiver have the same angle.',
    short: { low: 'receiver {m} too pointed', high: 'receiver {m} too blunt' },
  },
  'rear.receiverWidth': {
    title: 'Width of frame and receiver',
    low: 'The frame is {m} too wide for the receiver.',
    high: 'The frame is {m} too loose in the receiver.',
    holds: 'The frame goes into the receiver.',
    short: { low: 'frame {m} too wide', high: 'frame {m} too loose' },
  },
  'rear.jaw': {
    title: 'Bar in the jaws',
    low: 'The bar is {m} too thick for the jaws.',
    high: 'The bar is {m} too loose in the jaws.',
    holds: 'The jaws close on the bar.',
    short: { low: 'bar {m} too thick', high: 'bar {m} too loose' },
  },
  'rear.jawSpan': {
    title: 'Jaws along the bar',
    low: 'The jaws stand {m} too far apart for the bar.',
    high: '',
    holds: 'The jaws find room on the bar, {m} to spare.',
    short: { low: 'jaws {m} too far apart', high: '' },
  },
  'pickUp.height': {
    title: 'Down to the parked pins',
    low: 'Right down, it is still {m} too high to come under the parked pins.',
    high: '',
    holds: 'It comes down below the parked pins, {m} to spare.',
    short: { low: 'stays {m} too high for the parked pins', high: '' },
  },
  'work.height': {
    title: 'Working height',
    low: 'The links stay {m} too high for the working height.',
    high: 'The links end {m} below the working height.',
    holds: 'The links reach the working height, {m} to spare.',
    short: { low: 'links {m} too high for work', high: 'links {m} too low for work' },
  },
  'work.attitude': {
    title: 'Standing at work',
    low: 'At work it stands {m} too far back.',
    high: 'At work it stands {m} too far forward.',
    holds: 'The top link sets it to stand level at work, within 3°.',
    short: { low: 'stands {m} off level', high: 'stands {m} off level' },
  },
  'contact.tyre': {
    title: 'Lower links beside the tyres',
    low: 'The lower links come {m} too near the tyres somewhere in the lift, pushed to one side.',
    high: '',
    holds: 'The lower links stay clear of the tyres through the lift, {m} to spare.',
    short: { low: 'links {m} too near the tyres', high: '' },
  },
  'contact.machines': {
    title: 'What is carried, against the tractor',
    low: 'What is carried comes {m} too near the tractor somewhere in the lift.',
    high: '',
    holds: 'What is carried stays clear of the tractor through the lift, {m} to spare.',
    short: { low: 'comes {m} too near the tractor', high: '' },
  },
  'lift.linkage': {
    title: 'Linkage through the lift',
    low: 'The linkage binds before it is all the way through its lift: {m} short.',
    high: '',
    holds: 'The linkage moves freely from its lowest to its highest, {m} to spare.',
    short: { low: 'linkage binds, {m} short', high: '' },
  },
  'lift.height': {
    title: 'Up to the carrying height',
    low: 'The lift ends {m} below the carrying height.',
    high: '',
    holds: 'The lift reaches the carrying height, {m} to spare.',
    short: { low: 'lifts {m} too low', high: '' },
  },
  'lift.force': {
    title: 'Lift at the load’s centre',
    low: 'The lift is {m} short at the load’s centre on its way to the carrying height, once the allowance is off.',
    high: '',
    holds: 'The lift carries it to the carrying height, {m} to spare at the load’s centre once the allowance is off.',
    short: { low: 'lift {m} short', high: '' },
  },
  'limit.clearance': {
    title: 'Ground clearance when carried',
    low: 'Carried, its lowest part comes {m} nearer to the ground than wanted.',
    high: '',
    holds: 'Carried, its lowest part clears the ground as wanted, {m} to spare.',
    short: { low: 'ground clearance {m} short', high: '' },
  },
  'limit.hooks': {
    title: 'Weight on the hooks',
    low: 'The load lifts the lower pins out of their hooks by {m}: it may unhook.',
    high: '',
    holds: 'The load keeps the lower pins down in their hooks.',
    short: { low: 'may unhook', high: '' },
  },
  'limit.couplerLoad': {
    title: 'Rated load of the coupler',
    low: '',
    high: 'The coupler carries {m} more than it is rated for.',
    holds: 'The coupler is rated for what it carries, {m} to spare.',
    short: { low: '', high: 'coupler overloaded by {m}' },
  },
  'limit.pinLoad': {
    title: 'Rated load of the pins',
    low: '',
    high: 'A lower pin carries {m} more than it is rated for.',
    holds: 'The lower pins are rated for what they carry, {m} to spare.',
    short: { low: '', high: 'pin overloaded by {m}' },
  },
};
