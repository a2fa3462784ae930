/** [mm²] */
const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const newtonsPerBarAndSquareMillimetre = 0.1;
const cubicMillimetresPerLitre = 1e6;

/**
 * What a cylinder pushes with: pressure · area of the bore, friction and back pressure left out.
 *
 * @param pressure oil pressure [bar]
 * @param bore diameter of the bore [mm]
 * @returns push [N]
 * @source formula-page-hydraulics
 */
export function cylinderForce(pressure: number, bore: number): number {
  return newtonsPerBarAndSquareMillimetre * pressure * area(bore);
}

/**
 * Oil that a cylinder takes to come out.
 *
 * @param bore diameter of the bore [mm]
 * @param stroke way of the piston [mm]
 * @returns volume [L]
 * @source formula-page-hydraulics
 */
export function cylinderVolume(bore: number, stroke: number): number {
  return (area(bore) * stroke) / cubicMillimetresPerLitre;
}

/**
 * How long a cylinder takes out and back on a flow: the way back is shorter by the rod. Sets no pressure and knows of no
 * second stage of a pump.
 *
 * @param bore diameter of the bore [mm]
 * @param rod diameter of the rod, below the bore [mm]
 * @param stroke way of the piston [mm]
 * @param flow oil flow [L/min]
 * @returns time out and time back [s]
 * @source formula-page-hydraulics
 */
export function cycleTime(
  bore: number,
  rod: number,
  stroke: number,
  flow: number,
): { readonly out: number; readonly back: number } {
  const litresPerSecond = flow / 60;
  return {
    out: cylinderVolume(bore, stroke) / litresPerSecond,
    back: (cylinderVolume(bore, stroke) - cylinderVolume(rod, stroke)) / litresPerSecond,
  };
}

/**
 * Power in a flow of oil: pressure · flow, losses left out.
 *
 * @param pressure oil pressure [bar]
 * @param flow oil flow [L/min]
 * @returns power [kW]
 * @source formula-page-hydraulics
 */
export function hydraulicPower(pressure: number, flow: number): number {
  return (pressure * flow) / 600;
}
