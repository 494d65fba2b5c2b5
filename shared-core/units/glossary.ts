/** A quantity of the core: how it is named in fields, written in formulas, and which way it counts. */
export interface GlossaryEntry {
  /** Name as it stands at the start of field names; the unit follows it there. */
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
  /** What a positive value means, where a sign is possible. */
  readonly sign?: string;
}

const entry = (
  name: string,
  symbol: string,
  unit: string,
  meaning: string,
  sign?: string,
): GlossaryEntry =>
  sign === undefined ? { name, symbol, unit, meaning } : { name, symbol, unit, meaning, sign };

/** Names and signs, once. */
export const glossary: readonly GlossaryEntry[] = [
  entry(
    'current',
    'I',
    'A',
    'Current of a block, string or pack.',
    'Positive while discharging, negative while charging.',
  ),
  entry(
    'busVoltage',
    'V_bus',
    'V',
    'Voltage between the pack terminals, after joints and leads of the strings.',
  ),
  entry(
    'openCircuit',
    'OCV',
    'V',
    'Voltage of a block at rest, without load, once it has settled.',
  ),
  entry(
    'capacity',
    'C',
    'A·h',
    'Charge a block delivers under its rated conditions: C20 over 20 hours.',
  ),
  entry('ratedHours', 'H', 'h', 'Time over which the maker states the capacity.'),
  entry('exponent', 'k', '1', 'Exponent of Peukert’s law; 1 means no loss at high rates.'),
  entry('charge', 'q', 'A·h', 'Charge left in a block, in both wells.'),
  entry('chargePercent', 's', '%', 'Charge left against the charge when full.'),
  entry(
    'availableShare',
    'c',
    '1',
    'Share of the charge in the well that feeds the terminals at once.',
  ),
  entry('levelling', 'k′', '1/h', 'Rate at which the two wells of a block level out.'),
  entry('resistance', 'R', 'Ω', 'Ohmic resistance; of a block, a joint, a cable or a motor.'),
  entry(
    'polarisation',
    'R1',
    'Ω',
    'Resistance of the slow part of the voltage drop, with time constant tau.',
  ),
  entry('timeConstant', 'tau', 's', 'Time after which 63 % of a settling is done.'),
  entry('temperature', 'theta', '°C', 'Temperature of a block, conductor or part.'),
  entry('delivered', 'Q_out', 'A·h', 'Charge that went to the loads.', 'Positive out of the pack.'),
  entry('energy', 'E', 'W·h', 'Electrical energy.', 'Positive out of the pack.'),
  entry(
    'power',
    'P',
    'W',
    'Power taken by a load or delivered by a motor shaft.',
    'Positive where the load takes it.',
  ),
  entry(
    'runTime',
    't_run',
    'min',
    'Time from the start of an outing until the first cutoff, or its set end.',
  ),
  entry(
    'constant',
    'K_e',
    'V·s/rad',
    'Voltage of a motor per turning speed; equals its torque per ampere, N·m/A.',
  ),
  entry('noLoad', 'I_0', 'A', 'Current a motor takes when nothing hangs on its shaft.'),
  entry('stall', 'I_stall', 'A', 'Current of a motor that cannot turn.'),
  entry('torque', 'T', 'N·m', 'Torque of a shaft or wheel.', 'Positive while it drives forward.'),
  entry('speed', 'v', 'm/s', 'Speed over ground.', 'Positive forward.'),
  entry('grade', 'i', '%', 'Rise over horizontal distance.', 'Positive uphill.'),
  entry('rollingCoefficient', 'C_rr', '1', 'Rolling resistance against weight on the wheels.'),
  entry('duty', 'd', '1', 'Share of the bus voltage that a controller passes to the motor.'),
  entry('efficiency', 'eta', '1', 'Useful output against input.'),
  entry(
    'endVoltage',
    'V_end',
    'V',
    'Charge: voltage held in absorption. Discharge: voltage at which a cutoff opens.',
  ),
  entry('floatVoltage', 'V_float', 'V', 'Voltage a lead block may be held at without end.'),
  entry(
    'tail',
    'I_tail',
    'A',
    'Charge current below which a block counts as full.',
    'Written positive on chargers.',
  ),
  entry('drop', 'ΔV', 'V', 'Voltage lost in a conductor, out and back.'),
  entry('area', 'A', 'mm²', 'Copper area of a conductor.'),
  entry(
    'ampacity',
    'I_z',
    'A',
    'Current a conductor carries without end at its insulation’s temperature.',
  ),
];

/** The entry of that name. */
export function glossaryEntry(name: string): GlossaryEntry | undefined {
  return glossary.find((each) => each.name === name);
}
