import type { ChargePack, ChargeUnit } from '#core/charge/charge-unit.ts';
import type { ChargerProgram } from '#core/charge/charger-program.ts';
import { sampleUniform } from '#core/battery/uniform-table.ts';

/** A bare unit with a straight open-circuit line: 12 A·h, 11.8 to 12.8 V, 80 mΩ; no polarisation, no gassing. */
export function plainUnit(change: Partial<ChargeUnit> = {}): ChargeUnit {
  return {
    label: 'plain',
    chemistry: 'agm',
    cellGroups: 6,
    count: 1,
    position: 1,
    group: null,
    capacityAh: 12,
    openCircuit: sampleUniform((share) => 11.8 + share, 101),
    hysteresisV: 0,
    resistanceOhm: 0.08,
    acceptanceOhm: 0,
    acceptanceRoom: 0.005,
    polarisationOhm: 0,
    polarisationS: 60,
    gassing: null,
    balancing: null,
    opensAboveV: null,
    opensAboveA: null,
    startShare: 0,
    ...change,
  };
}

export function packOf(...units: ChargeUnit[]): ChargePack {
  return { leadOhm: 0, strings: [{ count: 1, linkOhm: 0, units }] };
}

export function plainProgram(change: Partial<ChargerProgram> = {}): ChargerProgram {
  return {
    kind: 'staged',
    currentA: 1.2,
    endVoltageV: 12.6,
    floatVoltageV: null,
    tailCurrentA: 0.12,
    maximumHours: null,
    sourceResistanceOhm: 0,
    efficiency: 0.85,
    assumed: [],
    ...change,
  };
}
