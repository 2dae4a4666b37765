/**
 * The ball, at the limits the Equipment Rules set: the heaviest and the smallest that conforms
 * (mass at most 1.620 oz avoirdupois, diameter at least 1.680 in). Published: Rules of Golf 2016,
 * Appendix III, usga.org.
 *
 * The metric figures are those the coefficient fits were made with: 0.04593 kg, 0.04267 m.
 */
export const BALL_MASS_KILOGRAMS = 0.04593;

/** Diameter, metres. */
export const BALL_DIAMETER_METRES = 0.04267;

/** Radius, metres. */
export const BALL_RADIUS_METRES = BALL_DIAMETER_METRES / 2;

/** Frontal area, square metres. */
export const BALL_AREA_SQUARE_METRES = Math.PI * BALL_RADIUS_METRES ** 2;

/** Standard acceleration of gravity, m/s2, exact by definition. */
export const STANDARD_GRAVITY = 9.80665;

/** Radians per second in one revolution per minute. */
export const RADIANS_PER_SECOND_PER_RPM = Math.PI / 30;
