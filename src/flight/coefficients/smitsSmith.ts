import { BALL_DIAMETER_METRES, BALL_RADIUS_METRES } from "../ball.ts";
import type { CoefficientSet } from "./types.ts";

/** The lift grows no further beyond it. */
const LARGEST_LIFTING_SPIN_RATIO = 0.2;

/**
 * Smits and Smith 1994, "A new aerodynamic model of a golf ball in flight", Science and Golf II,
 * pp. 340-347 (its constants from memory; the exponent 0.4 and the spin decay read in later works).
 * With spin ratio S = spin * radius / speed and Reynolds number Re = speed * diameter / viscosity:
 *
 *   drag = 0.24 + 0.18 S + 0.06 sin(pi (Re - 90,000) / 200,000)
 *   lift = 0.54 S^0.4
 *   d(spin)/dt = -2e-5 spin speed / radius
 *
 * Measured for S 0.08 to 0.20 and Re 70,000 to 210,000. Irons and wedges spin more (S 0.3 and up) and
 * the longest drives fly faster. There the drag goes on as printed; the lift is held at what it is at
 * S = 0.20, the edge of what was measured: going on as printed, it carries the short irons of a tour's
 * means 4 to 7 % long and 4 to 8 yd high, held, 1 to 3 % short and within 5 yd of their heights.
 */
export const SMITS_SMITH_1994: CoefficientSet<"smitsSmith1994"> = {
  id: "smitsSmith1994",
  source: "Smits and Smith 1994, Science and Golf II, pp. 340-347",
  drag(speed, spin, viscosity) {
    const reynolds = (speed * BALL_DIAMETER_METRES) / viscosity;
    return (
      0.24 + (0.18 * spin * BALL_RADIUS_METRES) / speed + 0.06 * Math.sin((Math.PI * (reynolds - 90_000)) / 200_000)
    );
  },
  lift(speed, spin) {
    return 0.54 * Math.min(LARGEST_LIFTING_SPIN_RATIO, (spin * BALL_RADIUS_METRES) / speed) ** 0.4;
  },
  spinRate(speed, spin) {
    return (-2e-5 * spin * speed) / BALL_RADIUS_METRES;
  },
};
