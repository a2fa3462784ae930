import { drawbarShare, ptoShare, type DriveType, type Surface } from '../../tables/index.ts';

/** The machine's part of a draft: what it asks for at no speed, with the speed, and with its square. */
export interface DraftTerms {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/**
 * The pull that a machine asks for in the soil: factor · (a + b·speed + c·speed²) · width · depth.
 *
 * @param terms a, b and c of the machine [N for each unit of width and cm of depth]
 * @param factor of the soil's texture [share]
 * @param speed forward speed [km/h]
 * @param width what the machine is counted by [m, tools or rows]
 * @param depth working depth; 1 for machines that none is counted for [cm]
 * @returns draft [N]
 * @source textbook-draft
 */
export function draft({ a, b, c }: DraftTerms, factor: number, speed: number, width: number, depth: number): number {
  return factor * (a + b * speed + c * speed ** 2) * width * depth;
}

/**
 * What a pull at a speed takes at the drawbar: force · speed.
 *
 * @param force pull [N]
 * @param speed forward speed [km/h]
 * @returns drawbar power [kW]
 * @example drawbarPower(18000, 5); // 25
 * @source review-problems-power
 */
export function drawbarPower(force: number, speed: number): number {
  return (force * speed) / 3600;
}

/**
 * What the PTO gives of the engine's power at the flywheel: about nine tenths.
 *
 * @param flywheelPower power at the flywheel [kW]
 * @returns power at the PTO [kW]
 * @source extension-power-rules
 */
export function ptoFromFlywheel(flywheelPower: number): number {
  return ptoShare.value * flywheelPower;
}

/**
 * What is left at the drawbar of the power that the PTO would give.
 *
 * @param ptoPower power at the PTO [kW]
 * @param surface the ground [one of surfaces]
 * @param drive how the tractor drives [one of driveTypes]
 * @returns power at the drawbar [kW]
 * @source extension-power-rules
 */
export function drawbarFromPto(ptoPower: number, surface: Surface, drive: DriveType): number {
  return drawbarShare(surface, drive).value * ptoPower;
}
