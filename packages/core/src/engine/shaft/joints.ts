/**
 * The speed of the driven shaft over that of the driving one in a single joint: cos β / (1 − sin²β·cos²θ).
 *
 * @param angle β between the two shafts, 0 to below π/2 [rad]
 * @param turn θ of the driving yoke from where the ratio is greatest, its pin in the plane of both shafts [rad]
 * @returns ratio, between cos β and 1/cos β [1]
 * @example speedRatio(0, 1); // 1
 * @source textbook-companion-a, handbook-joint-ratio
 */
export function speedRatio(angle: number, turn: number): number {
  return Math.cos(angle) / (1 - (Math.sin(angle) * Math.cos(turn)) ** 2);
}

/** Greatest ratio of a single joint: 1/cos β, twice in each turn. Angle [rad], 0 to below π/2. @source handbook-joint-ratio */
export function greatestRatio(angle: number): number {
  return 1 / Math.cos(angle);
}

/** Least ratio of a single joint: cos β, a quarter turn after the greatest. Angle [rad]. @source handbook-joint-ratio */
export function leastRatio(angle: number): number {
  return Math.cos(angle);
}

/** How far the speed swings in all, as a share of the mean: 1/cos β − cos β = sin β·tan β. Angle [rad], 0 to below π/2. */
export function nonUniformity(angle: number): number {
  return Math.sin(angle) * Math.tan(angle);
}

/**
 * Inverse of {@link nonUniformity}: the angle at which the speed swings by a share of the mean in all,
 * cos β = (√(q² + 4) − q)/2.
 *
 * @param share q, total swing over mean, 0 or more [1]
 * @returns β [rad]
 * @source textbook-companion-b
 */
export function angleForFluctuation(share: number): number {
  return Math.acos((Math.hypot(share, 2) - share) / 2);
}

/**
 * Where both shafts of a single joint turn equally fast: tan θ = √cos β; likewise at −θ and half a turn on.
 *
 * @param angle β [rad], 0 to below π/2
 * @returns θ of the driving yoke from the greatest ratio [rad]
 * @source question-banks-joints
 */
export function equalSpeedTurn(angle: number): number {
  return Math.atan(Math.sqrt(Math.cos(angle)));
}

/** The most by which the driven shaft runs ahead or behind: asin((1 − cos β)/(1 + cos β)) [rad]. Angle [rad], 0 to below π/2. */
export function phaseError(angle: number): number {
  return Math.asin(Math.tan(angle / 2) ** 2);
}

/** Greatest acceleration of a driven shaft and where it falls. */
export interface PeakAcceleration {
  /** speeding up or slowing down [rad/s²] */
  readonly acceleration: number;
  /** of the driving yoke from the greatest ratio; likewise at its negative and half a turn on [rad] */
  readonly turn: number;
}

/**
 * Greatest acceleration of the driven shaft of a single joint, ω²·cos β·sin²β·sin 2θ/(1 − sin²β·cos²θ)² at its peak. The
 * peak lies where h·c² + (1 − h)·c − 2h = 0 with c = cos 2θ and h = sin²β/2; books often print c ≈ 2·sin²β/(2 − sin²β).
 *
 * @param angle β [rad], 0 to below π/2
 * @param speed ω of the driving shaft [rad/s]
 * @returns its amount and place [rad/s², rad]
 * @source textbook-companion-a; the place is our own derivation
 */
export function greatestAcceleration(angle: number, speed: number): PeakAcceleration {
  const half = Math.sin(angle) ** 2 / 2;
  const cosine = (4 * half) / (1 - half + Math.sqrt((1 - half) ** 2 + 8 * half ** 2));
  const turn = Math.acos(cosine) / 2;
  const ratio = speedRatio(angle, turn);
  const acceleration = (speed ** 2 * ratio ** 2 * 2 * half * Math.sin(2 * turn)) / Math.cos(angle);
  return { acceleration, turn };
}

/**
 * The single joint that swings as two joints do between them, inner yokes in line: |β1² − β2²·e^(2jτ)|^½. Right to the
 * second order of the angles; zero where both are equal in one plane.
 *
 * @param first β1 at one end [rad]
 * @param second β2 at the other [rad]
 * @param twist τ, by which the planes of the two joints are turned about the tube [rad]
 * @returns β of that joint [rad]
 * @source our own derivation, held against a simulation; paper-double-joint says that the relative phase decides
 */
export function equivalentAngle(first: number, second: number, twist: number): number {
  // (a − b)² + 4ab·sin²τ, which loses nothing where the angles are equal.
  const difference = first ** 2 - second ** 2;
  const turned = 2 * first * second * Math.sin(twist);
  return Math.sqrt(Math.hypot(difference, turned));
}

/**
 * As {@link equivalentAngle} for two joints in one plane, exactly: cos β = cos(larger)/cos(smaller).
 *
 * @param first β1 [rad], 0 to below π/2
 * @param second β2 [rad], 0 to below π/2
 * @returns β of the single joint that swings alike [rad]
 * @source our own derivation
 */
export function exactEquivalentAngle(first: number, second: number): number {
  const [one, other] = [Math.cos(first), Math.cos(second)];
  return Math.acos(Math.min(one, other) / Math.max(one, other));
}

/**
 * Greatest acceleration left at the far end of two joints.
 *
 * @param angle what {@link equivalentAngle} gives [rad]
 * @param speed of the PTO [rpm]
 * @returns amount [rad/s²]
 * @source textbook-companion-a, through the equivalent joint
 */
export function residualAcceleration(angle: number, speed: number): number {
  return greatestAcceleration(angle, (speed * 2 * Math.PI) / 60).acceleration;
}

/**
 * Angle between a shaft and a line that is seen to leave it from the side and from above: tan²β = tan²v + tan²h.
 *
 * @param side v, seen from the side [rad], between ±π/2
 * @param plan h, seen from above [rad], between ±π/2
 * @returns β in space [rad]
 */
export function angleInSpace(side: number, plan: number): number {
  return Math.atan(Math.hypot(Math.tan(side), Math.tan(plan)));
}

/**
 * Torque that carries a power at a speed: P/(2πn).
 *
 * @param power P [kW]
 * @param speed n, above 0 [rpm]
 * @returns torque [N·m]
 * @source study-notes-torque, pto-power-text
 */
export function torqueOf(power: number, speed: number): number {
  return (power * 60000) / (2 * Math.PI * speed);
}

/**
 * Hours that nine in ten joints outlast: 1.5·10⁶/(A·N)·(Tc/Ta)^(10/3). Null where the joint is straight, stands still or
 * carries nothing: then the rule says nothing. An industrial rule: for comparing, no promise for a farm shaft.
 *
 * @param angle A [deg], not rad: the rule is printed so
 * @param speed N [rpm]
 * @param torqueShare Ta/Tc, torque over what the joint is rated for at 3° and 100 rpm [1]
 * @returns B10 life [h], or null
 * @example bearingLife(3, 100, 1); // 5000
 * @source joint-sizing-page
 */
export function bearingLife(angle: number, speed: number, torqueShare: number): number | null {
  if (angle <= 0 || speed <= 0 || torqueShare <= 0) return null;
  return 1.5e6 / (angle * speed) / torqueShare ** (10 / 3);
}

/**
 * How fast a turning shaft winds something in.
 *
 * @param diameter on which it winds [mm]
 * @param speed [rpm]
 * @returns speed of the surface [m/s]
 * @source extension-pto-safety-a, extension-pto-safety-b
 */
export function wrapSpeed(diameter: number, speed: number): number {
  return (Math.PI * diameter * speed) / 60000;
}
