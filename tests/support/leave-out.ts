import { applyFit, fitBlock, planFitRequest, type LoggedRun } from '#core/bench/index.ts';
import { newBlock, newOption, newPack, newPlan } from '#core/plan/defaults.ts';
import type { Block } from '#core/plan/schema/block.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { plainDischarge } from '#core/run/plain-discharge.ts';
import type { RunResult } from '#core/run/result.ts';
import { readRuns } from './bench-log.ts';
import { measuredText } from './measured-data.ts';

/** Blocks of the measured files as a user would enter them from the label. */
export const measuredBlocks = [
  {
    name: 'AGM 12 V 17 Ah',
    file: 'la_agm17_discharge.csv',
    // Volts at which each discharge is compared; the runs reach them all.
    toVoltageV: [10.8],
    block: label({ chemistry: 'agm', cellGroups: 6, capacityAh: 17, ratedHours: 20 }),
  },
  {
    name: 'Ni-rich cell 3 Ah',
    file: 'nca30Q_discharge_rates.csv',
    toVoltageV: [3, 2.5],
    block: label({ chemistry: 'nmc', cellGroups: 1, capacityAh: 3, ratedHours: 5 }),
  },
  {
    name: '24 V pack 65 Ah',
    file: 'li_pack24V_6S_65Ah_discharge.csv',
    toVoltageV: [null],
    block: label({
      chemistry: 'nmc',
      cellGroups: 6,
      capacityAh: 65,
      ratedHours: 1,
      bms: {
        continuousDischargeA: 260,
        peakDischargeA: null,
        peakSeconds: 1,
        continuousChargeA: null,
        groupLowV: 3,
        groupHighV: 4.2,
        reconnectV: null,
      },
    }),
  },
] as const;

function label(changes: Partial<Block>): Block {
  return { ...newBlock(), ...changes };
}

/** One prediction of the matrix: fitted on some runs, tried on another. */
export interface LeftOut {
  readonly block: string;
  readonly fitted: readonly string[];
  readonly tried: string;
  readonly toVoltageV: number | null;
  readonly timePercent: number;
  readonly rmsMv: number;
}

/** Predicts every run of every measured file from each proper subset of the others, through the plan and the engine. */
export function leaveOutMatrix(alter: (run: LoggedRun) => LoggedRun = (run) => run): LeftOut[] {
  return measuredBlocks.flatMap(({ name, file, toVoltageV, block }) => {
    const text = measuredText(file);
    if (text === null) return [];
    const runs = readRuns(text);
    return subsets(runs).flatMap((chosen) => {
      const option = fittedOption(block, chosen.map(alter));
      return runs
        .filter((run) => !chosen.includes(run))
        .flatMap((run) =>
          toVoltageV.map((toV) => ({
            block: name,
            fitted: chosen.map((one) => one.name),
            tried: run.name,
            toVoltageV: toV,
            ...tryOn(option, run, toV),
          })),
        );
    });
  });
}

function subsets(runs: readonly LoggedRun[]): LoggedRun[][] {
  const all = Array.from({ length: 2 ** runs.length - 2 }, (_, index) =>
    runs.filter((__, bit) => ((index + 1) >> bit) & 1),
  );
  return all.toSorted((a, b) => a.length - b.length);
}

/** The option of a plan after runs were fitted and taken in. */
export function fittedOption(block: Block, runs: readonly LoggedRun[]): Option {
  const option = { ...newOption(), pack: { ...newPack(block, 1), linkResistanceOhm: 0 } };
  const plan = { ...newPlan(), options: [option] };
  const request = planFitRequest(plan, runs, { optionId: null, temperatureC: 20, source: 'test' });
  if (!request.ok) throw new Error(`${request.problem.field} ${request.problem.problem}`);
  const outcome = fitBlock(request.value.request);
  if (!outcome.ok) throw new Error(`${outcome.field} ${outcome.problem}`);
  const { layout } = request.value.request;
  const taken = {
    optionId: option.id,
    fit: outcome.fit,
    layout,
    date: '2026-01-01',
    logs: ['test'],
  };
  return applyFit(plan, taken).options[0]!;
}

function tryOn(option: Option, real: LoggedRun, toVoltageV: number | null) {
  const end = measuredEnd(real, toVoltageV);
  const run = plainDischarge(option, {
    load: { kind: 'current', currentA: end.currentA },
    toVoltageV,
    temperatureC: real.temperatureC?.[end.start] ?? null,
    longestH: 100,
  });
  return {
    timePercent: 100 * ((run.runTimeMin * 60) / end.timeS - 1),
    rmsMv: rmsMv(run, real, end.start),
  };
}

/** Charge, time and mean current of a logged run until its volts pass a voltage for good; of the whole run for null. */
export function measuredEnd(run: LoggedRun, toVoltageV: number | null) {
  const volts = run.voltageV!;
  const floorV = toVoltageV ?? Number.NEGATIVE_INFINITY;
  const largest = Math.max(...run.currentA);
  const start = run.currentA.findIndex((current) => current > 0.5 * largest);
  const last = run.currentA.findLastIndex((current) => current > 0.5 * largest);
  let [chargeAs, row] = [0, start];
  while (
    row < last &&
    !(volts[row + 1]! <= floorV && run.timeS[row + 1]! - run.timeS[start]! > 120)
  ) {
    row += 1;
    chargeAs +=
      ((run.currentA[row]! + run.currentA[row - 1]!) / 2) * (run.timeS[row]! - run.timeS[row - 1]!);
  }
  const timeS = run.timeS[row]! - run.timeS[start]!;
  return { ampHours: chargeAs / 3600, timeS, currentA: chargeAs / timeS, start };
}

/** Distance of the engine's pack volts from the logged pack volts, weighted by time [mV]. */
export function rmsMv(run: RunResult, real: LoggedRun, start: number): number {
  const { timeS, packVoltageV } = run.series;
  let [squares, duration, at] = [0, 0, 0];
  for (let row = start + 1; row < real.timeS.length; row += 1) {
    const time = real.timeS[row]! - real.timeS[start]!;
    if (time > timeS.at(-1)!) break;
    while (timeS[at + 1]! < time) at += 1;
    const share = (time - timeS[at]!) / Math.max(1e-9, timeS[at + 1]! - timeS[at]!);
    const volts = packVoltageV[at]! + share * (packVoltageV[at + 1]! - packVoltageV[at]!);
    const step = real.timeS[row]! - real.timeS[row - 1]!;
    squares += step * (volts - real.voltageV![row]!) ** 2;
    duration += step;
  }
  return 1000 * Math.sqrt(squares / duration);
}
