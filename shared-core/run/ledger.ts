import { demandCurrentA } from '../accessories/converter-input.ts';
import { placeOfHead } from '../pack/head-tables.ts';
import type { Circuit } from '../pack/circuit.ts';
import type { BusLoad } from './bus-load.ts';
import { motorCurrentA } from './bus-load.ts';
import type { EnergyLedger } from './result.ts';
import type { RunSetup } from './setup.ts';

/** Places of the sums in a ledger's column, in joules. */
const place = {
  motor: 0,
  idle: 1,
  accessories: 2,
  converterLoss: 3,
  harness: 4,
  link: 5,
  resistance: 6,
  polarisation: 7,
  rate: 8,
  converterInput: 9,
} as const;
const placeCount = 10;

/** Where the energy goes, integrated by the trapezoid rule over accepted steps. */
export interface LedgerSums {
  readonly joules: Float64Array;
  readonly before: Float64Array;
  readonly now: Float64Array;
}

export function createLedger(): LedgerSums {
  return {
    joules: new Float64Array(placeCount),
    before: new Float64Array(placeCount),
    now: new Float64Array(placeCount),
  };
}

/** Open-circuit voltage at the whole charge, where the unit would stand if its wells were level. */
function levelVoltage(table: Float64Array, charge: number): number {
  const at = placeOfHead(charge);
  const index = Math.floor(at);
  const low = table[index]!;
  return low + (table[index + 1]! - low) * (at - index);
}

/** Powers at the present solution, into `ledger.now`. */
export function measure(
  ledger: LedgerSums,
  circuit: Circuit,
  load: BusLoad,
  setup: RunSetup,
  busV: number,
  busA: number,
): void {
  const { now } = ledger;
  now[place.motor] = load.on ? motorCurrentA(load, busV) * busV : 0;
  now[place.idle] = load.on ? setup.controllerIdleA * busV : 0;
  now[place.accessories] =
    load.converter.outputPowerW + (load.on ? demandCurrentA(setup.packDemand, busV) * busV : 0);
  now[place.converterLoss] = load.converter.inputPowerW - load.converter.outputPowerW;
  now[place.converterInput] = load.converter.inputPowerW;
  now[place.harness] = busA * busA * setup.harnessOhm;
  let link = 0;
  let resistance = 0;
  let polarisation = 0;
  let rate = 0;
  let tap = 0;
  const {
    stringStart,
    stringCurrentA,
    multiplicity,
    linkOhm,
    count,
    ohm,
    emfV,
    polarisationV,
    charge,
    restTables,
  } = circuit;
  const { hysteresis, hysteresisV, belowTap, tapA } = circuit;
  for (let string = 0; string < stringCurrentA.length; string += 1) {
    const current = stringCurrentA[string]!;
    const times = multiplicity[string]!;
    link += times * current * current * linkOhm[string]!;
    const end = stringStart[string + 1]!;
    for (let unit = stringStart[string]!; unit < end; unit += 1) {
      const many = times * count[unit]!;
      const unitCurrent = current + belowTap[unit]! * tapA;
      const inner = polarisationV[unit]! - hysteresis[unit]! * hysteresisV[unit]!;
      resistance += many * unitCurrent * unitCurrent * ohm[unit]!;
      polarisation += many * unitCurrent * inner;
      rate +=
        many * unitCurrent * (levelVoltage(restTables[unit]!, charge[unit]!) - emfV[unit]! - inner);
      if (tapA !== 0)
        tap += many * belowTap[unit]! * tapA * (emfV[unit]! - unitCurrent * ohm[unit]!);
    }
  }
  now[place.link] = link;
  now[place.resistance] = resistance;
  now[place.polarisation] = polarisation;
  now[place.rate] = rate;
  now[place.accessories] = now[place.accessories]! + tap;
}

/** Takes the present powers as the start of the next step: after a switching, or at the beginning. */
export function open(ledger: LedgerSums): void {
  ledger.before.set(ledger.now);
}

/** Adds a step between the powers at its start and at its end. */
export function book(ledger: LedgerSums, stepS: number): void {
  const { joules, before, now } = ledger;
  const half = 0.5 * stepS;
  for (let index = 0; index < placeCount; index += 1) {
    joules[index] = joules[index]! + half * (before[index]! + now[index]!);
    before[index] = now[index]!;
  }
}

/** Output over input energy of the converter [%]; null when it took nothing. */
export function converterEfficiencyPercent(ledger: LedgerSums): number | null {
  const input = ledger.joules[place.converterInput]!;
  return input > 0 ? 100 * (1 - ledger.joules[place.converterLoss]! / input) : null;
}

/** Chemical energy between two charges of a unit [J per A·s of capacity]: integral of the open-circuit voltage. */
function storedVolts(table: Float64Array, from: number, to: number): number {
  // Simpson on a grid fine enough for the tables; independent of the steps of the run.
  const pieces = 2000;
  const width = (from - to) / pieces;
  let sum = levelVoltage(table, to) + levelVoltage(table, from);
  for (let index = 1; index < pieces; index += 1) {
    sum += (index % 2 === 1 ? 4 : 2) * levelVoltage(table, to + index * width);
  }
  return (sum * width) / 3;
}

/** Closes the ledger: sums in watt-hours against the energy the blocks gave up by their change of charge. */
export function closeLedger(ledger: LedgerSums, circuit: Circuit): EnergyLedger {
  let given = 0;
  for (let string = 0; string < circuit.multiplicity.length; string += 1) {
    for (
      let unit = circuit.stringStart[string]!;
      unit < circuit.stringStart[string + 1]!;
      unit += 1
    ) {
      const many = circuit.multiplicity[string]! * circuit.count[unit]!;
      const start = circuit.units[unit]!.startCharge;
      given +=
        (many * storedVolts(circuit.restTables[unit]!, start, circuit.charge[unit]!)) /
        circuit.inverseChargePerAs[unit]!;
    }
  }
  const wh = (index: number) => ledger.joules[index]! / 3600;
  const sinks = {
    motorWh: wh(place.motor),
    controllerIdleWh: wh(place.idle),
    accessoriesWh: wh(place.accessories),
    converterLossWh: wh(place.converterLoss),
    harnessLossWh: wh(place.harness),
    linkLossWh: wh(place.link),
    resistanceLossWh: wh(place.resistance),
    polarisationLossWh: wh(place.polarisation),
    rateLossWh: wh(place.rate),
  };
  const givenUpWh = given / 3600;
  const sum = Object.values(sinks).reduce((total, value) => total + value, 0);
  return {
    givenUpWh,
    ...sinks,
    closurePercent: givenUpWh === 0 ? 0 : (100 * (sum - givenUpWh)) / givenUpWh,
  };
}

/** Ledger of a run of which only the figures were wanted. */
export const emptyLedger: EnergyLedger = {
  givenUpWh: 0,
  motorWh: 0,
  controllerIdleWh: 0,
  accessoriesWh: 0,
  converterLossWh: 0,
  harnessLossWh: 0,
  linkLossWh: 0,
  resistanceLossWh: 0,
  polarisationLossWh: 0,
  rateLossWh: 0,
  closurePercent: 0,
};
