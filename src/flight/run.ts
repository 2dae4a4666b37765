import { BALL_RADIUS_METRES, RADIANS_PER_SECOND_PER_RPM, STANDARD_GRAVITY } from "./ball.ts";
import type { Flight } from "./trajectory.ts";

/** How the ground takes the ball. */
export interface Turf {
  /** Coefficient of sliding friction during a bounce. */
  readonly friction: number;
  /** Resistance to rolling, as a share of the weight. */
  readonly rollingResistance: number;
}

/**
 * A mown fairway, neither soaked nor baked. Friction 0.40 is Penner's (from memory); his rolling
 * figure for a green is 0.131 (read in later works), and a fairway's longer grass is taken at twice
 * that (common practice, no source).
 */
export const FAIRWAY: Turf = { friction: 0.4, rollingResistance: 0.26 };

const MOST_BOUNCES = 30;
const LOWEST_BOUNCE_METRES = 0.005;

/** Share of the normal speed kept in a bounce. */
function restitution(normalSpeed: number): number {
  return normalSpeed < 20 ? 0.51 - 0.0375 * normalSpeed + 0.000903 * normalSpeed ** 2 : 0.12;
}

/** How far a rolling ball goes on level turf, metres: v^2 / (2 * 5/7 * resistance * g). */
export function rollMetres(speedMetresPerSecond: number, turf: Turf = FAIRWAY): number {
  return speedMetresPerSecond ** 2 / (2 * (5 / 7) * turf.rollingResistance * STANDARD_GRAVITY);
}

/**
 * Run after the first touch, metres along the flight's last direction, on level turf: bounces, then
 * roll. Negative when a spinning ball comes back.
 *
 * Bounces after Penner 2002, "The run of a golf ball", Canadian Journal of Physics 80, 931-940: the
 * turf gives as though it were tilted towards the ball by 15.4 degrees * (speed / 18.6 m/s) * (angle
 * from the vertical / 44.4 degrees) (from memory), a restitution falling with the normal speed (read
 * in later works), sliding or rolling within the contact. Hops are without air.
 *
 * Real turf differs far more than this number shows: it says "a driver runs, a wedge sits", not
 * where the ball ends. It is never part of a carry or an effective length.
 */
export function runMetres(
  landing: Pick<Flight, "landingAngleDegrees" | "landingSpeedMetresPerSecond" | "landingSpinRpm">,
  turf: Turf = FAIRWAY,
): number {
  const angle = (landing.landingAngleDegrees * Math.PI) / 180;
  let along = landing.landingSpeedMetresPerSecond * Math.cos(angle);
  let down = landing.landingSpeedMetresPerSecond * Math.sin(angle);
  let backspin = landing.landingSpinRpm * RADIANS_PER_SECOND_PER_RPM;
  let run = 0;
  for (let n = 0; n < MOST_BOUNCES; n += 1) {
    const speed = Math.hypot(along, down);
    // Signed like the motion along the ground, so a ball bouncing backwards meets the turf tilted the other way.
    const fromVertical = Math.atan2(along, down);
    const tilt = ((15.4 * Math.PI) / 180) * (speed / 18.6) * (fromVertical / ((44.4 * Math.PI) / 180));
    const tangential = speed * Math.sin(fromVertical - tilt);
    const normal = speed * Math.cos(fromVertical - tilt);
    const kept = restitution(normal);
    const slip = tangential + BALL_RADIUS_METRES * backspin;
    const needed = (2 * Math.abs(slip)) / (7 * (1 + kept) * normal);
    let outTangential: number;
    if (turf.friction < needed) {
      const lost = Math.sign(slip) * turf.friction * normal * (1 + kept);
      outTangential = tangential - lost;
      backspin -= (5 * lost) / (2 * BALL_RADIUS_METRES);
    } else {
      outTangential = (5 / 7) * tangential - (2 / 7) * BALL_RADIUS_METRES * backspin;
      backspin = -outTangential / BALL_RADIUS_METRES;
    }
    const outNormal = kept * normal;
    along = outTangential * Math.cos(tilt) - outNormal * Math.sin(tilt);
    const up = outTangential * Math.sin(tilt) + outNormal * Math.cos(tilt);
    if (!(up > 0) || up ** 2 / (2 * STANDARD_GRAVITY) < LOWEST_BOUNCE_METRES) break;
    run += (along * 2 * up) / STANDARD_GRAVITY;
    down = up;
  }
  return run + Math.sign(along) * rollMetres(along, turf);
}
