import { noDemand } from '../accessories/converter-input.ts';
import { expandPack } from '../pack/expand-pack.ts';
import type { LoadTerms } from './load-source.ts';
import type { Load } from '../plan/schema/load.ts';
import type { Option } from '../plan/schema/option.ts';
import type { RunResult } from './result.ts';
import type { RunSetup } from './setup.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import { simulate } from './simulate.ts';

/** A discharge on the test bench: one steady load, nothing else connected. */
export interface PlainDischarge {
  readonly load: Load;
  /** Terminal voltage of the pack at which the discharge stops [V]; null leaves it to BMS and fuses. */
  readonly toVoltageV: number | null;
  /** Temperature of blocks and air [°C]; null: of the fit where the block was fitted, else 25 °C. */
  readonly temperatureC: number | null;
  readonly longestH: number;
}

/** Discharges an option's pack with one steady load: what a capacity test or a maker's curve shows. */
export function plainDischarge(option: Option, discharge: PlainDischarge): RunResult {
  const ambientC = discharge.temperatureC ?? option.pack.block.fitted?.temperatureC ?? 25;
  const { load } = discharge;
  const setup: RunSetup = {
    pack: expandPack(option, ambientC),
    source: {
      terms(_timeS: number, _busVoltageV: number, into: LoadTerms) {
        into.currentA = load.kind === 'current' ? load.currentA : 0;
        into.powerW = load.kind === 'power' ? load.powerW : 0;
        into.conductanceS = load.kind === 'resistance' ? 1 / load.resistanceOhm : 0;
      },
      longestStepS: () => Number.POSITIVE_INFINITY,
      advance: () => {},
      stop: () => {},
    },
    ambientC,
    harnessOhm: 0,
    controllerIdleA: 0,
    cutoffV: discharge.toVoltageV,
    cutoffDelayS: 0,
    restartV: 0,
    converter: null,
    converterDemand: noDemand,
    packDemand: noDemand,
    midPointDemand: noDemand,
    depthLimitPercent: null,
    longestS: discharge.longestH * 3600,
    restAfterS: 0,
    endWhenEmpty: false,
    stepping: { kind: 'adaptive', toleranceV: (0.01 / 24) * nominalVoltageV(option) },
    full: true,
  };
  return simulate(setup, () => null);
}
