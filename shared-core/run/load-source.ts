/**
 * What the motor circuit asks of the bus during one time step, as the three terms the circuit solution knows:
 * `I(V) = currentA + powerW / V + conductanceS * V`.
 *
 * A motor fits these terms exactly: at fixed duty d it is a conductance d^2/R minus a current d*Ke*w/R; at its motor
 * current limit it is a constant power; at the battery current limit a constant current.
 */
export interface LoadTerms {
  currentA: number;
  powerW: number;
  conductanceS: number;
}

/** Something that loads the bus over time and may have a state of its own (speed, temperature, position in the outing). */
export interface LoadSource {
  /** Writes the terms for a step that starts at `timeS` with the bus at `busVoltageV`. */
  terms(timeS: number, busVoltageV: number, into: LoadTerms): void;
  /** Longest step [s] before the terms must be asked again: distance to the next switching, or the stability of its own state. */
  longestStepS(timeS: number): number;
  /** Called after an accepted step of `stepS` [s] during which the bus stood at `busVoltageV` on average and `currentA` flowed. */
  advance(timeS: number, stepS: number, busVoltageV: number, currentA: number): void;
  /** True while the drive is stopped by a cutoff; the source keeps its clock but asks for nothing. */
  stop(stopped: boolean): void;
  /** Current the controller holds the load back to at present [A]; null, or left out, while it does not. */
  limitedA?(): number | null;
}
