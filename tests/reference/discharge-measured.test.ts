import { describe, expect, test } from 'vitest';
import { newBlock, newOption, newPack } from '#core/plan/defaults.ts';
import type { Block } from '#core/plan/schema/block.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { plainDischarge } from '#core/run/plain-discharge.ts';
import type { RunResult } from '#core/run/result.ts';
import { fitCurves } from '#core/battery/rating/fit-curves.ts';
import { checkAgainst } from '../support/check-against.ts';
import { measuredRows } from '../support/measured-data.ts';

interface Measured {
  readonly timeS: number;
  readonly voltageV: number;
  readonly currentA: number;
}

/** The loaded rows of one run, time counted from the first of them. */
function loadedRows(
  file: string,
  runColumn: string,
  run: string,
  voltage: string,
): Measured[] | null {
  const rows = measuredRows(file);
  if (rows === null) return null;
  const loaded = rows
    .filter((row) => row[runColumn] === run)
    .map((row) => ({
      timeS: Number(row['time_s']),
      voltageV: Number(row[voltage]),
      currentA: Number(row['current_A']),
    }))
    .filter((row) => row.timeS >= 0 && row.currentA > 0.2);
  const start = loaded[0]!.timeS;
  return loaded.map((row) => ({ ...row, timeS: row.timeS - start }));
}

function chargeAh(rows: readonly Measured[]): number {
  return rows.slice(1).reduce((sum, row, index) => {
    const before = rows[index]!;
    return sum + ((row.timeS - before.timeS) * (row.currentA + before.currentA)) / 7200;
  }, 0);
}

/** Root mean square distance of the simulated terminal voltage from the measured one [mV]. */
function rmsMv(run: RunResult, rows: readonly Measured[]): number {
  const { timeS, packVoltageV } = run.series;
  const endS = timeS.at(-1)!;
  const compared = rows.filter((row) => row.timeS > 60 && row.timeS <= endS);
  const sum = compared.reduce((total, row) => {
    const at = timeS.findIndex((time) => time >= row.timeS);
    return total + (packVoltageV[at]! - row.voltageV) ** 2;
  }, 0);
  return 1000 * Math.sqrt(sum / compared.length);
}

const agmSource =
  'Sulzer et al., J. Electrochem. Soc. 166 (2019) A2363: one 12 V 17 Ah AGM block, data of the authors';
const packSource =
  'repository batterysim/equiv-circ-model: 24 V pack of six 65 Ah groups, discharges';

/** Capacity from the slowest run, resistance from the voltage step, no rate loss: nothing from the run predicted. */
function agmOption(): Option {
  const block: Block = {
    ...newBlock(),
    capacityAh: 18.65,
    ratedHours: 18.08,
    rating: {
      kind: 'points',
      points: [
        { hours: 18.08, capacityAh: 18.65, endVoltageV: 10.8 },
        { hours: 12.33, capacityAh: 18.94, endVoltageV: 10.8 },
      ],
    },
    resistanceOhm: 0.045,
  };
  return newOption([], { ...newPack(block, 1), linkResistanceOhm: 0 }, 'measured AGM');
}

const agm = loadedRows('la_agm17_discharge.csv', 'run', '3.0A', 'voltage_V');

describe.skipIf(agm === null)('a measured 17 Ah AGM block', () => {
  test('runs at 3.04 A to 10.8 V as long as predicted from its two slowest runs, within 6 %', () => {
    const end = agm!.find((row) => row.voltageV < 10.8)!;
    const run = plainDischarge(agmOption(), {
      load: { kind: 'current', currentA: 3.04 },
      toVoltageV: 10.8,
      temperatureC: 20,
      longestH: 24,
    });
    const rms = rmsMv(run, agm!);
    console.log(`AGM 3.04 A: voltage differs by ${rms.toFixed(0)} mV rms`);
    checkAgainst({
      chapter: 'Measured discharges',
      quantity: `AGM 17 Ah, 3.04 A to 10.8 V, time (voltage ${rms.toFixed(0)} mV rms)`,
      unit: 'h',
      source: agmSource,
      class: 'measured',
      reference: end.timeS / 3600,
      ours: run.runTimeMin / 60,
      within: { share: 0.06 },
    });
    // A generic rest curve meets this block's own only roughly; a fit on the bench does better.
    expect(rms).toBeLessThan(350);
  });
});

/** A measured run as a maker would print it: thirty points of a discharge at constant current. */
function printedCurve(rows: readonly Measured[], endV: number) {
  const end = rows.findIndex((row) => row.voltageV < endV);
  const used = rows.slice(0, end < 0 ? rows.length : end + 1);
  const currentA = (3600 * chargeAh(used)) / used.at(-1)!.timeS;
  const points = Array.from({ length: 30 }, (_, index) => {
    const row = used[Math.round(((index + 1) * (used.length - 1)) / 30)]!;
    return { timeMin: row.timeS / 60, voltageV: row.voltageV };
  });
  return { currentA, points };
}

const otherRuns = [
  ...new Set((measuredRows('la_agm17_discharge.csv') ?? []).map((row) => row['run']!)),
].filter((run) => run !== '3.0A');

test.skipIf(agm === null)(
  'rated by its slower measured curves the AGM block is predicted at 3.04 A within 6 % of its time and 120 mV rms',
  () => {
    const curves = otherRuns.map((run) =>
      printedCurve(loadedRows('la_agm17_discharge.csv', 'run', run, 'voltage_V')!, 10.8),
    );
    const block: Block = {
      ...newBlock(),
      capacityAh: 17,
      ratedHours: 20,
      resistanceOhm: null,
      rating: { kind: 'curves', curves },
    };
    for (const { currentA, rmsMv: ours } of fitCurves(block, curves).curves) {
      checkAgainst({
        chapter: 'Measured discharges',
        quantity: `AGM 17 Ah, curve at ${currentA.toFixed(2)} A met by the fit to it, rms over the run`,
        unit: 'mV',
        source: agmSource,
        class: 'measured',
        reference: 0,
        ours,
        within: { absolute: 60 },
      });
    }
    const option = newOption([], { ...newPack(block, 1), linkResistanceOhm: 0 }, 'rated by curves');
    const run = plainDischarge(option, {
      load: { kind: 'current', currentA: 3.04 },
      toVoltageV: 10.8,
      temperatureC: 20,
      longestH: 24,
    });
    const end = agm!.find((row) => row.voltageV < 10.8)!;
    checkAgainst({
      chapter: 'Measured discharges',
      quantity: 'AGM 17 Ah rated by its slower curves, 3.04 A to 10.8 V, time',
      unit: 'h',
      source: agmSource,
      class: 'measured',
      reference: end.timeS / 3600,
      ours: run.runTimeMin / 60,
      within: { share: 0.06 },
    });
    checkAgainst({
      chapter: 'Measured discharges',
      quantity: 'AGM 17 Ah rated by its slower curves, 3.04 A, voltage rms over the run',
      unit: 'mV',
      source: agmSource,
      class: 'measured',
      reference: 0,
      ours: rmsMv(run, agm!),
      within: { absolute: 120 },
    });
  },
);

/** Rest voltages of the pack's own 33 Ah cell between pulses, per cell: charge in percent and volts. */
function restCurve(): { chargePercent: number; voltageV: number }[] {
  const rows = measuredRows('liLMO33_hppc_R_table.csv')!;
  const points = rows.map((row) => ({
    chargePercent: 100 * (1 - Number(row['Ah_discharged_from_full']) / 32.7),
    voltageV: Number(row['rest_V']),
  }));
  return [{ chargePercent: 0, voltageV: 3 }, ...points.toReversed()];
}

/**
 * Six groups of two such cells; the first is less full at the start, as its rest voltage shows. Capacity from a label of
 * 65 Ah aged to nine tenths, resistance from the cell's pulses and the links.
 */
function packOption(): Option {
  const block: Block = {
    ...newBlock(),
    name: '24 V, six groups of 65 Ah',
    chemistry: 'nmc',
    cellGroups: 6,
    capacityAh: 65,
    ratedHours: 3,
    fitted: {
      source: 'pulses of the cell',
      temperatureC: 25,
      ageYears: 0,
      cyclesDone: 0,
      capacityAh: 58,
      availableShare: 1,
      levellingPerMin: 0,
      resistanceOhm: 0.008,
      polarisationOhm: 0.003,
      polarisationS: 40,
      kneeOhm: 0,
      resistanceColdRatePerK: 0.02,
      heatCapacityJPerK: null,
      heatResistanceKPerW: null,
      openCircuit: restCurve().map((point) => ({ ...point, voltageV: 6 * point.voltageV })),
    },
    bms: {
      continuousDischargeA: 200,
      peakDischargeA: 400,
      peakSeconds: 2,
      continuousChargeA: null,
      groupLowV: 3,
      groupHighV: 4.25,
      reconnectV: null,
    },
  };
  const pack = newPack(block, 1);
  return newOption(
    [],
    {
      ...pack,
      linkResistanceOhm: 0,
      groupDifferences: [
        {
          string: 1,
          position: 1,
          group: 1,
          capacityPercent: 100,
          resistancePercent: 100,
          startPercent: 96,
        },
      ],
    },
    'measured 24 V pack',
  );
}

describe.each([
  ['0.3C', 19.5],
  ['1C', 65],
])('a measured 24 V pack at %s', (rate, currentA) => {
  const rows = loadedRows('li_pack24V_6S_65Ah_discharge.csv', 'rate', rate, 'pack_V');

  test.skipIf(rows === null)(
    'runs until its first cell group is empty as long as simulated, within 6 %',
    () => {
      const run = plainDischarge(packOption(), {
        load: { kind: 'current', currentA },
        toVoltageV: null,
        temperatureC: 23,
        longestH: 24,
      });
      expect(run.endedBy).toBe('bms-group-low');
      expect(run.events.at(-1)!.group).toBe(1);
      const rms = rmsMv(run, rows!);
      console.log(
        `24 V pack ${rate}: voltage differs by ${rms.toFixed(0)} mV rms, ${chargeAh(rows!).toFixed(2)} Ah measured`,
      );
      checkAgainst({
        chapter: 'Measured discharges',
        quantity: `24 V pack of six 65 Ah groups at ${rate}, time to the first group at 3.0 V (voltage ${rms.toFixed(0)} mV rms)`,
        unit: 'min',
        source: packSource,
        class: 'measured',
        reference: rows!.at(-1)!.timeS / 60,
        ours: run.runTimeMin,
        within: { share: 0.06 },
      });
      expect(rms).toBeLessThan(400);
    },
  );
});
