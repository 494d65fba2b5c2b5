import type { Charger } from '../plan/schema/charger.ts';
import { chemistryTraits } from '../battery/chemistry.ts';

/** What a charger does to the pack at the temperature of the day. */
export interface ChargerProgram {
  readonly kind: Charger['kind'];
  /** Current limit [A]; for a wall supply its rated current, which only sets its source resistance. */
  readonly currentA: number;
  /** Held after the current phase [V]; for a wall supply its voltage without load. */
  readonly endVoltageV: number;
  /** Held after the charge [V]; null when the charger stops. */
  readonly floatVoltageV: number | null;
  /** Current at which it calls the pack full [A]; null when only a timer or the user ends it. */
  readonly tailCurrentA: number | null;
  readonly maximumHours: number | null;
  /** Wall supplies only [Ω]. */
  readonly sourceResistanceOhm: number;
  /** Mains efficiency [1]. */
  readonly efficiency: number;
  /** What the label did not say and the core assumed. */
  readonly assumed: readonly ChargerAssumption[];
}

export type ChargerAssumption =
  | 'end-voltage'
  | 'tail-current'
  | 'source-resistance'
  | 'efficiency'
  | 'compensation';

/** Mains efficiency where the label gives none. Common practice, no source. */
const usualEfficiency = { staged: 0.85, 'constant-voltage': 0.85, 'wall-supply': 0.6 } as const;

/** An unregulated supply loses about a quarter of its no-load voltage at rated current. Common practice, no source. */
const wallSupplyFall = 0.26;

/**
 * The charger's stages at a temperature.
 *
 * End and float voltage follow `compensation * cells * (temperature - 25)`. Where the label states no end voltage, the
 * usual one of its chemistry is taken; where it states no tail current, 3 % of the rated capacity in A (lithium chargers
 * end at 2 to 5 %, published; lead common practice, no source). What was assumed is listed.
 *
 * @param charger the charger's label
 * @param temperatureC temperature at charger and pack [°C]
 * @param packCapacityAh rated capacity of the pack, for the default tail current [A·h]
 */
export function chargerProgram(
  charger: Charger,
  temperatureC: number,
  packCapacityAh: number,
): ChargerProgram {
  const assumed: ChargerAssumption[] = [];
  const chemistry = charger.chemistries[0] ?? 'agm';
  const traits = chemistryTraits[chemistry];
  const lithium = traits.family === 'lithium';
  const compensation = charger.compensationMvPerCellK ?? 0;
  if (charger.compensationMvPerCellK === null && !lithium) assumed.push('compensation');
  const shiftV = (compensation / 1000) * charger.cellGroups * (temperatureC - 25);
  if (charger.endVoltageV === null) assumed.push('end-voltage');
  const endVoltageV = (charger.endVoltageV ?? traits.chargeEndV * charger.cellGroups) + shiftV;
  if (charger.kind === 'staged' && charger.tailCurrentA === null) assumed.push('tail-current');
  const tailCurrentA =
    charger.kind === 'staged' ? (charger.tailCurrentA ?? 0.03 * packCapacityAh) : null;
  if (charger.kind === 'wall-supply' && charger.sourceResistanceOhm === null)
    assumed.push('source-resistance');
  if (charger.efficiencyPercent === null) assumed.push('efficiency');
  const floatV = charger.kind === 'staged' ? charger.floatVoltageV : null;
  return {
    kind: charger.kind,
    currentA: charger.currentA,
    endVoltageV,
    floatVoltageV: floatV === null ? null : floatV + shiftV,
    tailCurrentA,
    maximumHours: charger.maximumHours,
    sourceResistanceOhm:
      charger.sourceResistanceOhm ?? (wallSupplyFall * endVoltageV) / charger.currentA,
    efficiency:
      charger.efficiencyPercent === null
        ? usualEfficiency[charger.kind]
        : charger.efficiencyPercent / 100,
    assumed,
  };
}
