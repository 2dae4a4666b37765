/** Names of the coefficient sets the guide's figures are worked out with. */
export type CoefficientSetId = "smitsSmith1994" | "bearmanHarvey1976";

/**
 * Aerodynamic coefficients of a ball. The force is half the air density times frontal area times
 * coefficient times the square of the speed through the air.
 *
 * @typeParam Id name of the set; tests bring their own
 */
export interface CoefficientSet<Id extends string = string> {
  readonly id: Id;
  /** Where the coefficients are published. */
  readonly source: string;
  /**
   * Drag coefficient.
   *
   * @param speed through the air, m/s, above 0
   * @param spin rad/s
   * @param viscosity kinematic, m2/s
   */
  drag(speed: number, spin: number, viscosity: number): number;
  /** Lift coefficient; parameters as for `drag`. */
  lift(speed: number, spin: number, viscosity: number): number;
  /** Rate of change of the spin, rad/s2; parameters as for `drag`. */
  spinRate(speed: number, spin: number): number;
}
