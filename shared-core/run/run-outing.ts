import { accessoryDemands, isIdle } from '../accessories/demands.ts';
import { expandPack } from '../pack/expand-pack.ts';
import type { PackModel } from '../pack/pack-model.ts';
import type { Machine } from '../plan/schema/machine.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import { needsOutingSource } from '../drive/outing-source.ts';
import { outingLoads } from './outing-loads.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import type { OutingLoads } from './outing-loads.ts';
import type { RunResult } from './result.ts';
import type { RunSetup, Stepping } from './setup.ts';
import { simulate } from './simulate.ts';

/** Bus movement allowed per step, per volt of nominal pack voltage: 10 mV at 24 V. */
const toleranceShare = 0.01 / 24;
/** Driven legs bring their own short steps through each start; more is allowed there. */
const drivenToleranceShare = 0.06 / 24;

export interface RunChoices {
  /** False switches every accessory off, and with them the converter. */
  readonly accessories?: boolean;
  /** False leaves out series, ledger and per-block extremes: for thousands of runs of which only the figures count. */
  readonly full?: boolean;
  readonly stepping?: Stepping;
  /** A pack already laid out, where the caller runs it more than once. */
  readonly pack?: PackModel;
}

/** Everything a run of an option on an outing needs, taken from the plan. */
export function runSetup(
  option: Option,
  machine: Machine,
  outing: Outing,
  choices: RunChoices = {},
): RunSetup & { readonly loads: OutingLoads } {
  const demands = accessoryDemands(
    choices.accessories === false ? { ...machine, accessories: [] } : machine,
  );
  const controller = option.controller ?? machine.controller;
  const nominalV = nominalVoltageV(option);
  const cutoffV = controller.cutoffVoltageV;
  const loads = outingLoads(machine, controller, outing, option, nominalV);
  return {
    loads,
    pack: choices.pack ?? expandPack(option, outing.ambientC, !isIdle(demands['mid-point'])),
    source: loads.source,
    ambientC: outing.ambientC,
    harnessOhm: machine.harnessResistanceOhm,
    controllerIdleA: controller.idleCurrentA,
    cutoffV,
    cutoffDelayS: controller.cutoffDelayS,
    restartV: controller.restartVoltageV ?? (cutoffV ?? 0) + nominalV / 12,
    converter: machine.converter,
    converterDemand: demands.converter,
    packDemand: demands.pack,
    midPointDemand: demands['mid-point'],
    depthLimitPercent: option.depthLimitPercent,
    longestS: loads.problem === null ? outing.longestMin * 60 : 0,
    restAfterS: outing.restAfterMin * 60,
    endWhenEmpty: false,
    stepping: choices.stepping ?? stepping(outing, nominalV),
    full: choices.full ?? true,
  };
}

function stepping(outing: Outing, nominalV: number): Stepping {
  return needsOutingSource(outing)
    ? { kind: 'adaptive', toleranceV: drivenToleranceShare * nominalV, loadsSetSteps: true }
    : { kind: 'adaptive', toleranceV: toleranceShare * nominalV };
}

/** Runs an outing on an option: the function behind every run time on screen, on paper and on the command line. */
export function runOuting(
  option: Option,
  machine: Machine,
  outing: Outing,
  choices: RunChoices = {},
): RunResult {
  const { loads, ...setup } = runSetup(option, machine, outing, choices);
  const result = simulate(setup, loads.driveResult);
  return loads.problem === null
    ? result
    : { ...result, endedBy: 'not-computable', problem: loads.problem };
}
