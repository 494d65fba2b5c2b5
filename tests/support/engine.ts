import { noDemand } from '#core/accessories/converter-input.ts';
import type { BlockModel } from '#core/battery/block-model.ts';
import { sampleUniform } from '#core/battery/uniform-table.ts';
import type { PackModel, PackString, PackUnit } from '#core/pack/pack-model.ts';
import type { Load } from '#core/plan/schema/load.ts';
import type { LoadSource } from '#core/run/load-source.ts';
import type { RunSetup } from '#core/run/setup.ts';

/** Straight lines through points on a grid of hundredths, so that the engine's table holds them exactly. */
export function linesThrough(
  points: readonly (readonly [number, number])[],
): (x: number) => number {
  return (x) => {
    let index = 0;
    while (index < points.length - 2 && x > points[index + 1]![0]) index += 1;
    const [x0, y0] = points[index]!;
    const [x1, y1] = points[index + 1]!;
    return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  };
}

/** Rest curve of the test block, whole block of six cells. */
export const testCurve = [
  [0, 10.5],
  [0.1, 11.7],
  [0.3, 12.05],
  [0.7, 12.5],
  [1, 12.8],
] as const;

/** A block written down figure by figure: nothing fitted, nothing assumed, no warming. */
export function testModel(change: Partial<BlockModel> = {}): BlockModel {
  return {
    chemistry: 'agm',
    cellGroups: 6,
    capacityAh: 12,
    availableShare: 0.6,
    levellingPerS: 0.5 / 3600,
    resistanceOhm: 0.02,
    kneeOhm: 0.006,
    polarisationOhm: 0.015,
    polarisationS: 60,
    openCircuit: sampleUniform(linesThrough(testCurve), 1001),
    hysteresisV: 0,
    temperatureC: 25,
    resistanceColdRatePerK: 0,
    heatCapacityJPerK: 1e9,
    heatResistanceKPerW: 1,
    ...change,
  };
}

export function testUnit(model: BlockModel, change: Partial<PackUnit> = {}): PackUnit {
  return {
    model,
    count: 1,
    startCharge: 1,
    positions: [1],
    group: null,
    name: 'test block',
    bms: null,
    belowTap: false,
    ...change,
  };
}

export function testString(
  units: readonly PackUnit[],
  change: Partial<PackString> = {},
): PackString {
  return { units, strings: [1], linkOhm: 0.002, fuseA: null, ...change };
}

export function testPack(...strings: readonly PackString[]): PackModel {
  const capacityAh = strings.reduce(
    (sum, { units, strings: numbers }) =>
      sum + numbers.length * Math.min(...units.map((unit) => unit.model.capacityAh)),
    0,
  );
  return { strings, mainFuseA: null, capacityAh };
}

/** A load that never changes. */
export function steadyLoad(load: Load): LoadSource {
  return {
    terms(_timeS, _busVoltageV, into) {
      into.currentA = load.kind === 'current' ? load.currentA : 0;
      into.powerW = load.kind === 'power' ? load.powerW : 0;
      into.conductanceS = load.kind === 'resistance' ? 1 / load.resistanceOhm : 0;
    },
    longestStepS: () => Number.POSITIVE_INFINITY,
    advance: () => {},
    stop: () => {},
  };
}

export function testSetup(
  pack: PackModel,
  source: LoadSource,
  change: Partial<RunSetup> = {},
): RunSetup {
  return {
    pack,
    source,
    ambientC: 25,
    harnessOhm: 0,
    controllerIdleA: 0,
    cutoffV: null,
    cutoffDelayS: 0,
    restartV: 0,
    converter: null,
    converterDemand: noDemand,
    packDemand: noDemand,
    midPointDemand: noDemand,
    depthLimitPercent: null,
    longestS: 24 * 3600,
    restAfterS: 0,
    endWhenEmpty: false,
    stepping: { kind: 'adaptive', toleranceV: 0.015 },
    full: true,
    ...change,
  };
}
