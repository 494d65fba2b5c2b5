import type { StringState } from './charge-circuit.ts';
import { hoursOnCharger } from './hours-on-charger.ts';
import {
  chargeStages,
  fullPercent,
  type ChargedUnit,
  type ChargeEnd,
  type ChargeResult,
  type ChargeStage,
} from './charge-result.ts';
import type { ChargerProgram } from './charger-program.ts';

/** One step as booked: state at its end, means over it. */
export interface ChargeStep {
  readonly timeH: number;
  readonly stepH: number;
  readonly stage: ChargeStage;
  readonly storedAh: number;
  readonly voltageV: number;
  readonly currentA: number;
  readonly meanV: number;
  readonly meanA: number;
}

/** Gathers the columns and the sums of a charge. */
export class ChargeRecorder {
  readonly capacityAh: number;
  bulkHours: number | null = null;
  voltageV: number;
  currentA = 0;
  chargePercent: number;
  readonly #strings: readonly StringState[];
  readonly #program: ChargerProgram;
  readonly #startPercent: number;
  readonly #columns = {
    timeH: [] as number[],
    voltageV: [] as number[],
    currentA: [] as number[],
    chargePercent: [] as number[],
    stage: [] as number[],
    highestCellV: [] as number[],
    lowestCellV: [] as number[],
  };
  #hoursTo80: number | null;
  #hoursTo98: number | null;
  #endedBy: ChargeEnd = 'unplugged';
  #hours = 0;
  #endPercent: number;
  #endShares: readonly (readonly number[])[] = [];
  #inAh = 0;
  #inWh = 0;
  #storedAh = 0;
  #peakW = 0;
  #highestV: number;

  constructor(strings: readonly StringState[], program: ChargerProgram) {
    this.#strings = strings;
    this.#program = program;
    let capacityAh = 0;
    for (const string of strings)
      capacityAh += string.count * stringMean(string, (state) => state.unit.capacityAh);
    this.capacityAh = capacityAh;
    this.voltageV = restVoltage(strings);
    this.#highestV = this.voltageV;
    this.chargePercent = packPercent(strings);
    this.#startPercent = this.chargePercent;
    this.#endPercent = this.chargePercent;
    this.#hoursTo80 = this.chargePercent >= 80 ? 0 : null;
    this.#hoursTo98 = this.chargePercent >= fullPercent ? 0 : null;
    this.#row(0, this.voltageV, 0, 'bulk');
  }

  record(step: ChargeStep): void {
    const { timeH, stepH, voltageV, currentA, meanV, meanA } = step;
    const before = this.chargePercent;
    this.chargePercent = packPercent(this.#strings);
    this.#hoursTo80 ??= crossing(80, before, this.chargePercent, timeH, stepH);
    this.#hoursTo98 ??= crossing(fullPercent, before, this.chargePercent, timeH, stepH);
    this.voltageV = voltageV;
    this.currentA = currentA;
    this.#inAh += meanA * stepH;
    this.#inWh += meanA * meanV * stepH;
    this.#storedAh += step.storedAh;
    if (currentA * voltageV > this.#peakW) this.#peakW = currentA * voltageV;
    if (voltageV > this.#highestV) this.#highestV = voltageV;
    this.#row(timeH, voltageV, currentA, step.stage);
  }

  /** A row after the charge proper; it counts in no sum. */
  trail(timeH: number, voltageV: number, currentA: number, stage: ChargeStage): void {
    this.chargePercent = packPercent(this.#strings);
    this.#row(timeH, voltageV, currentA, stage);
  }

  finish(endedBy: ChargeEnd, hours: number, stage: ChargeStage): void {
    this.#endedBy = endedBy;
    this.#hours = hours;
    if (stage === 'bulk') this.bulkHours = hours;
    this.#endPercent = this.chargePercent;
    this.#endShares = this.#strings.map((string) => string.units.map((state) => state.share));
  }

  result(): ChargeResult {
    const columns = this.#columns;
    return {
      endedBy: this.#endedBy,
      hours: this.#hours,
      bulkHours: this.bulkHours ?? this.#hours,
      hoursTo80: this.#hoursTo80,
      hoursTo98: this.#hoursTo98,
      hoursToFull: hoursOnCharger(this.#endedBy, this.#hours, this.#hoursTo98),
      startPercent: this.#startPercent,
      endPercent: this.#endPercent,
      inAh: this.#inAh,
      inWh: this.#inWh,
      chargeEfficiencyPercent:
        this.#inAh > 0 ? Math.max(0, (100 * this.#storedAh) / this.#inAh) : null,
      mainsWh: this.#inWh / this.#program.efficiency,
      peakMainsW: this.#peakW / this.#program.efficiency,
      highestPackV: this.#highestV,
      units: this.#units(),
      assumed: this.#program.assumed,
      series: {
        timeH: Float64Array.from(columns.timeH),
        voltageV: Float64Array.from(columns.voltageV),
        currentA: Float64Array.from(columns.currentA),
        chargePercent: Float64Array.from(columns.chargePercent),
        stage: Uint8Array.from(columns.stage),
        highestCellV: Float64Array.from(columns.highestCellV),
        lowestCellV: Float64Array.from(columns.lowestCellV),
      },
    };
  }

  #units(): ChargedUnit[] {
    return this.#strings.flatMap((string, stringIndex) =>
      string.units.map((state, unitIndex) => ({
        label: state.unit.label,
        string: stringIndex + 1,
        position: state.unit.position,
        group: state.unit.group,
        count: state.unit.count,
        startPercent: 100 * state.unit.startShare,
        endPercent: 100 * (this.#endShares[stringIndex]?.[unitIndex] ?? state.share),
        highestV: state.highestV,
        gassedAh: state.gassedAh,
        bledAh: state.bledAh,
      })),
    );
  }

  #row(timeH: number, voltageV: number, currentA: number, stage: ChargeStage): void {
    const columns = this.#columns;
    let highest = -Infinity;
    let lowest = Infinity;
    for (const string of this.#strings) {
      for (const state of string.units) {
        const cellV = state.voltageV / state.unit.cellGroups;
        if (cellV > highest) highest = cellV;
        if (cellV < lowest) lowest = cellV;
      }
    }
    columns.timeH.push(timeH);
    columns.voltageV.push(voltageV);
    columns.currentA.push(currentA);
    columns.chargePercent.push(this.chargePercent);
    columns.stage.push(chargeStages.indexOf(stage));
    columns.highestCellV.push(highest);
    columns.lowestCellV.push(lowest);
  }
}

function stringMean(
  string: StringState,
  read: (state: StringState['units'][number]) => number,
): number {
  let sum = 0;
  let units = 0;
  for (const state of string.units) {
    sum += state.unit.count * read(state);
    units += state.unit.count;
  }
  return sum / units;
}

/** Charge of the pack [%]: stored over storable, all units together. */
function packPercent(strings: readonly StringState[]): number {
  let stored = 0;
  let storable = 0;
  for (const string of strings) {
    for (const state of string.units) {
      const weight = string.count * state.unit.count * state.unit.capacityAh;
      stored += weight * Math.min(1, state.share);
      storable += weight;
    }
  }
  return (100 * stored) / storable;
}

function restVoltage(strings: readonly StringState[]): number {
  const first = strings[0];
  if (first === undefined) return 0;
  return first.units.reduce((sum, state) => sum + state.unit.count * state.voltageV, 0);
}

/** Hour at which the charge passed a mark within the last step. */
function crossing(
  mark: number,
  before: number,
  after: number,
  timeH: number,
  stepH: number,
): number | null {
  if (after < mark) return null;
  return timeH - (after > before ? ((after - mark) / (after - before)) * stepH : 0);
}
