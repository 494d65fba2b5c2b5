import type { Circuit } from '../pack/circuit.ts';
import { unitVoltageV } from '../pack/circuit-step.ts';
import type { PackUnit } from '../pack/pack-model.ts';
import type { RunSeries, UnitPlace } from './result.ts';

/** A column that grows by doubling. */
interface Column {
  values: Float64Array;
}

function push(column: Column, row: number, value: number): void {
  if (row === column.values.length) {
    const larger = new Float64Array(2 * row);
    larger.set(column.values);
    column.values = larger;
  }
  column.values[row] = value;
}

/** Collects the time series of a run, column by column. */
export interface Recorder {
  record(
    timeS: number,
    busV: number,
    packV: number,
    packA: number,
    motorA: number,
    converterA: number,
    chargePercent: number,
  ): void;
  finish(): RunSeries;
}

export function placeOf(strings: readonly number[], unit: PackUnit): UnitPlace {
  return { strings, positions: unit.positions, group: unit.group, name: unit.name };
}

const startRows = 512;

function cut({ values }: Column, rows: number): Float64Array {
  return values.slice(0, rows);
}

function newColumn(): Column {
  return { values: new Float64Array(startRows) };
}

export function createRecorder(circuit: Circuit): Recorder {
  const main = Array.from({ length: 7 }, newColumn);
  const strings = circuit.pack.strings.map(newColumn);
  const voltages = circuit.units.map(newColumn);
  const charges = circuit.units.map(newColumn);
  let rows = 0;
  return {
    record(...figures) {
      for (let index = 0; index < main.length; index += 1)
        push(main[index]!, rows, figures[index]!);
      for (let string = 0; string < strings.length; string += 1) {
        push(strings[string]!, rows, circuit.stringCurrentA[string]!);
        for (
          let unit = circuit.stringStart[string]!;
          unit < circuit.stringStart[string + 1]!;
          unit += 1
        ) {
          push(voltages[unit]!, rows, unitVoltageV(circuit, string, unit));
          push(charges[unit]!, rows, 100 * circuit.charge[unit]!);
        }
      }
      rows += 1;
    },
    finish() {
      const [
        timeS,
        busVoltageV,
        packVoltageV,
        packCurrentA,
        motorCurrentA,
        converterInputA,
        chargePercent,
      ] = main.map((column) => cut(column, rows));
      return {
        timeS: timeS!,
        busVoltageV: busVoltageV!,
        packVoltageV: packVoltageV!,
        packCurrentA: packCurrentA!,
        motorCurrentA: motorCurrentA!,
        converterInputA: converterInputA!,
        chargePercent: chargePercent!,
        strings: circuit.pack.strings.map((string, index) => ({
          strings: string.strings,
          currentA: cut(strings[index]!, rows),
        })),
        blocks: circuit.pack.strings.flatMap((string, index) =>
          string.units.map((unit, offset) => {
            const at = circuit.stringStart[index]! + offset;
            return {
              ...placeOf(string.strings, unit),
              voltageV: cut(voltages[at]!, rows),
              chargePercent: cut(charges[at]!, rows),
            };
          }),
        ),
      };
    },
  };
}

/** Series of a run whose time course nobody asked for. */
export const emptySeries: RunSeries = {
  timeS: new Float64Array(0),
  packVoltageV: new Float64Array(0),
  busVoltageV: new Float64Array(0),
  packCurrentA: new Float64Array(0),
  motorCurrentA: new Float64Array(0),
  converterInputA: new Float64Array(0),
  chargePercent: new Float64Array(0),
  blocks: [],
  strings: [],
};
