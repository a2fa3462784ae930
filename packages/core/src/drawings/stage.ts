import type { Answer } from '../engine/assess/index.ts';
import type { Finding } from '../engine/findings/index.ts';
import type { Hold } from '../engine/joint/index.ts';
import type { Setup } from '../records/index.ts';
import { lowerPinsOf, type LowerPins } from './lowerPins.ts';
import { seatsOf, type Seats } from './seats.ts';
import { barOf, frameOf, type BarAndJaws, type FrameAndReceiver } from './counterparts.ts';
import { meetingOf, type Meeting } from './meeting.ts';
import { upperOf, type Upper } from './upper.ts';

/** All that a view of one meeting is drawn from, in figures of the answer [mm, deg]. */
export interface Stage {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly hold: Hold;
  readonly meeting: Meeting;
  readonly pins: LowerPins;
  readonly seats: Seats;
  readonly upper: Upper;
  readonly frame: FrameAndReceiver | null;
  readonly bar: BarAndJaws | null;
}

/** Gathers what is drawn: the meeting where the lead finding is, else the one at the implement. */
export function stageOf(setup: Setup, answer: Answer): Stage {
  const meeting = meetingOf(answer);
  const { hold } = answer;
  const path = meeting === 'front' ? 'coupler.front' : 'implement';
  const pins = lowerPinsOf(setup, answer, path);
  return {
    setup,
    answer,
    hold,
    meeting,
    pins,
    seats: seatsOf(answer, meeting, pins),
    upper: upperOf(setup, answer, meeting, pins),
    frame: hold === 'triangle' && meeting === 'rear' ? frameOf(answer) : null,
    bar: hold === 'bar' && meeting === 'rear' ? barOf(answer) : null,
  };
}

/** Whether a finding is about the meeting that is drawn. */
export function isOnStage(stage: Stage, { id }: Finding): boolean {
  if (stage.meeting === 'front') return id.startsWith('front.');
  if (stage.hold === 'bareBalls' || stage.hold === 'clawEnds') return true;
  if (id.startsWith('rear.') || (id === 'front.span' && stage.hold === 'hookEnds')) return true;
  const upperIsImplement = stage.hold === 'bar' || stage.hold === 'hookEnds';
  return upperIsImplement && ['front.upperPin', 'front.clevis', 'front.topLink'].includes(id);
}
