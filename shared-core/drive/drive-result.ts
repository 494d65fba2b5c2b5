/** Drive columns of equal length over their own times; thinned while rolling evenly. */
export interface DriveSeries {
  readonly timeS: Float64Array;
  readonly speedKmh: Float64Array;
  /** Current of the whole motor circuit at the controller's output; negative while braking. */
  readonly motorCurrentA: Float64Array;
  /** Winding temperature; the ambient temperature where the motor's thermal data are missing. */
  readonly motorTemperatureC: Float64Array;
}

/** Where the energy from the pack to the wheel went [W·h]; the entries sum to `fromPackWh` within `closurePercent`. */
export interface WheelLedger {
  readonly fromPackWh: number;
  readonly controllerLossWh: number;
  /** Heat in windings and brushes. */
  readonly windingLossWh: number;
  /** Friction and iron loss of the motors: what the no-load current pays for. */
  readonly motorFrictionWh: number;
  readonly gearLossWh: number;
  readonly slipWh: number;
  readonly rollingWh: number;
  /** Up minus down. */
  readonly climbingWh: number;
  readonly airWh: number;
  /** Turned to heat in the motor circuit's brake resistor or short. */
  readonly electricBrakeWh: number;
  readonly mechanicalBrakeWh: number;
  /** Still in motion at the end. */
  readonly motionWh: number;
  readonly closurePercent: number;
}

/** What the wheels did during a run. */
export interface DriveResult {
  readonly distanceKm: number;
  readonly averageSpeedKmh: number;
  /** Average while rolling. */
  readonly rollingSpeedKmh: number;
  readonly topSpeedKmh: number;
  readonly startsDone: number;
  /** W·h from the pack through the motor circuit for each km; null when nothing was driven. */
  readonly energyPerKmWh: number | null;
  /** Root mean square over the whole run. */
  readonly motorRmsA: number;
  /** The same in each single motor: what heats it. */
  readonly eachMotorRmsA: number;
  readonly motorPeakA: number;
  readonly batteryRmsA: number;
  readonly batteryPeakA: number;
  /** Winding temperature at its highest; null where the motor's thermal data are missing. */
  readonly motorPeakTemperatureC: number | null;
  readonly motorEndTemperatureC: number | null;
  /** Shaft power of one motor, averaged over the time it pulls. */
  readonly motorShaftPowerW: number;
  /** Seconds in which the wheels slipped. */
  readonly slipS: number;
  /** Seconds in which the machine was driven and did not move. */
  readonly stalledS: number;
  /** Seconds in which it would roll backwards down a slope that nothing holds it on; the run counts it as standing. */
  readonly rollsBackS: number;
  /** Seconds in which a target speed could not be held at full throttle. */
  readonly belowTargetS: number;
  /** Charge returned to the pack [A·h]. */
  readonly returnedAh: number;
  /** Electrical braking: largest motor current and energy of the largest single stop in the resistor. */
  readonly brakePeakA: number;
  readonly largestStopJ: number;
  readonly ledger: WheelLedger;
  readonly series: DriveSeries;
}
