import type { Answer } from '../engine/assess/index.ts';
import { add, scale } from '../engine/geometry/index.ts';
import type { LowerPins } from './lowerPins.ts';
import { shown, worked, type Shown } from './shown.ts';
import type { Meeting } from './meeting.ts';

/** What takes the lower pins, as it is drawn [mm]. */
export interface Seats {
  readonly kind: 'hooks' | 'hookEnds' | 'balls' | 'claws';
  /** Centre to centre; balls stand against the shoulders. */
  readonly centres: Shown;
  readonly width: Shown;
  /** Seat of a hook, bore of a ball, size of a claw. */
  readonly opening: Shown;
  /** Loose balls on the pins, which claws take. */
  readonly looseBall: { readonly diameter: Shown; readonly bore: Shown } | null;
}

/** The seats of a meeting. */
export function seatsOf(answer: Answer, meeting: Meeting, pins: LowerPins): Seats {
  const { hold } = answer;
  if (meeting === 'rear' && hold === 'uFrame') return hooksOf(answer, 'hooks', pins);
  if (meeting === 'rear' && hold === 'hookEnds') return hooksOf(answer, 'hookEnds', pins);
  if (hold === 'clawEnds') return clawsOf(answer, pins);
  const width = shown(answer, 'tractor.lowerBallWidth', 35);
  return {
    kind: 'balls',
    width,
    centres: againstShoulders(pins, width),
    opening: shown(answer, 'tractor.lowerBallBore', pins.diameter.value + 0.4),
    looseBall: null,
  };
}

function hooksOf(answer: Answer, kind: 'hooks' | 'hookEnds', pins: LowerPins): Seats {
  const width = shown(answer, 'coupler.hookWidth', 25);
  const place = pins.shoulders.value + pins.sign * (width.value + 12);
  const opening = shown(answer, 'coupler.hookSeat', pins.diameter.value + 1);
  const fixed = shown(answer, 'coupler.hookSpan', place);
  return { kind, width, opening, centres: kind === 'hooks' ? fixed : setCentres(answer, pins, width), looseBall: null };
}

/** Hooks on the link ends stand where the links are set; their centres follow from the float that was found. */
function setCentres(answer: Answer, pins: LowerPins, width: Shown): Shown {
  const float = answer.findings.find((finding) => finding.id === 'rear.shoulders')?.quantity;
  const path = 'tractor.ballSpan';
  if (float?.low == null || float.high === null) {
    const touching = add(pins.shoulders, scale(width, pins.sign));
    return worked(path, touching, pins.shoulders, width);
  }
  const centre = pins.shoulders.value + pins.sign * ((float.low + float.high) / 2 + width.value);
  return worked(path, { low: centre, high: centre }, pins.shoulders, width);
}

function clawsOf(answer: Answer, pins: LowerPins): Seats {
  const width = shown(answer, 'implement.pinBallWidth', 45);
  return {
    kind: 'claws',
    width,
    centres: againstShoulders(pins, width),
    opening: shown(answer, 'coupler.clawSize', 56),
    looseBall: {
      diameter: shown(answer, 'implement.pinBallDiameter', 56),
      bore: shown(answer, 'implement.pinBallBore', pins.diameter.value + 0.4),
    },
  };
}

function againstShoulders(pins: LowerPins, width: Shown): Shown {
  return worked('tractor.ballSpan', add(pins.shoulders, scale(width, pins.sign)), pins.shoulders, width);
}
