import { beforeAll, describe, expect, test } from 'vitest';
import type { LoggedRun } from '#core/bench/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { plainDischarge } from '#core/run/plain-discharge.ts';
import { readRuns } from '../support/bench-log.ts';
import { checkAgainst } from '../support/check-against.ts';
import {
  fittedOption,
  leaveOutMatrix,
  measuredBlocks,
  measuredEnd,
  rmsMv,
  type LeftOut,
} from '../support/leave-out.ts';
import { measuredText } from '../support/measured-data.ts';

/*
 * Measured discharges, each predicted by the engine from a plan fitted to other runs of the same pack: the way a user
 * goes. Tolerances are the project's own aims; every comparison is with the logged rows, never with a fit.
 */

const chapter = 'Bench: runs predicted from other runs';
const sources = {
  agm: 'logged: Sulzer et al., J. Electrochem. Soc. 166 (2019) A2363',
  nickelRich:
    'logged: ARTS-Laboratory/dataset-electrothermal-deformation-characterization-for-samsung-30Q-cell',
  sixGroups: 'logged: batterysim/equiv-circ-model',
} as const;
const [agm, nickelRich, sixGroups] = measuredBlocks;

const find = (runs: readonly LoggedRun[], name: string) => runs.find((run) => run.name === name)!;
const named = (runs: readonly LoggedRun[], names: readonly string[]) =>
  names.map((name) => find(runs, name));

function discharge(option: Option, currentA: number, toVoltageV: number | null) {
  return plainDischarge(option, {
    load: { kind: 'current', currentA },
    toVoltageV,
    temperatureC: null,
    longestH: 100,
  });
}

describe('an AGM block fitted at 3.0 and 1.0 A', () => {
  const text = measuredText(agm.file);
  for (const name of ['1.5A', '2.5A', '3.0A', '1.0A_a']) {
    test.skipIf(text === null)(
      `its run ${name} to 10.8 V is met within 6 % of the logged time`,
      () => {
        const runs = readRuns(text!);
        const option = fittedOption(agm.block, named(runs, ['3.0A', '1.0A_a']));
        const real = measuredEnd(find(runs, name), 10.8);
        checkAgainst({
          chapter,
          quantity: `AGM 17 A·h fitted at 3.0 and 1.0 A: run ${name} to 10.8 V`,
          unit: 'min',
          source: sources.agm,
          class: 'measured',
          reference: real.timeS / 60,
          ours: discharge(option, real.currentA, 10.8).runTimeMin,
          within: { share: 0.06 },
        });
      },
    );
  }
  test.skipIf(text === null)('the exponent is gone: the data show no rate loss', () => {
    const option = fittedOption(agm.block, named(readRuns(text!), ['3.0A', '1.0A_a']));
    expect(option.pack.block.fitted!.availableShare).toBeGreaterThan(0.9);
  });
});

describe('a 3 Ah Ni-rich cell fitted at C/10 and 1C', () => {
  const text = measuredText(nickelRich.file);
  for (const [toV, share] of [
    [2.5, 0.02],
    [3, 0.05],
  ] as const) {
    test.skipIf(text === null)(
      `delivers at 2C within ${share * 100} % of the measured charge to ${toV} V`,
      () => {
        const runs = readRuns(text!);
        const option = fittedOption(nickelRich.block, named(runs, ['C10', '1C']));
        const real = measuredEnd(find(runs, '2C'), toV);
        checkAgainst({
          chapter,
          quantity: `Ni-rich 3 A·h fitted at C/10 and 1C: charge at 2C to ${toV} V`,
          unit: 'A·h',
          source: sources.nickelRich,
          class: 'measured',
          reference: real.ampHours,
          ours: discharge(option, real.currentA, toV).deliveredAh,
          within: { share },
        });
      },
    );
  }
  test.skipIf(text === null)(
    'warms at 2C by the measured 21 K within 5 K, though only cooler runs were fitted',
    () => {
      const runs = readRuns(text!);
      const option = fittedOption(nickelRich.block, named(runs, ['C10', '1C']));
      const { temperatureC } = find(runs, '2C');
      const run = discharge(option, 6, 2.5);
      checkAgainst({
        chapter,
        quantity: 'Ni-rich 3 A·h fitted at C/10 and 1C: warming at 2C',
        unit: 'K',
        source: sources.nickelRich,
        class: 'measured',
        reference: Math.max(...temperatureC!) - temperatureC![0]!,
        ours: run.blocks[0]!.temperatureC - option.pack.block.fitted!.temperatureC,
        within: { absolute: 5 },
      });
    },
  );
});

describe('a 24 V pack of six groups fitted on one run', () => {
  const text = measuredText(sixGroups.file);
  for (const [fitted, other] of [
    ['0.3C', '1C'],
    ['1C', '0.3C'],
  ] as const) {
    test.skipIf(text === null)(
      `fitted at ${fitted}, it ends the ${other} run at the first group's 3.0 V within 2 % and keeps the pack volts within 150 mV rms`,
      () => {
        const runs = readRuns(text!);
        const option = fittedOption(sixGroups.block, named(runs, [fitted]));
        const real = find(runs, other);
        const end = measuredEnd(real, null);
        const run = discharge(option, Math.max(...real.currentA), null);
        expect(run.endedBy).toBe('bms-group-low');
        expect(run.events.find((event) => event.kind === 'bms-group-low')?.group).toBe(1);
        const about = `24 V 65 A·h pack fitted at ${fitted}: ${other} run`;
        const common = { chapter, source: sources.sixGroups, class: 'measured' } as const;
        checkAgainst({
          ...common,
          quantity: `${about} until the first group stands at 3.0 V`,
          unit: 'min',
          reference: end.timeS / 60,
          ours: run.runTimeMin,
          within: { share: 0.02 },
        });
        checkAgainst({
          ...common,
          quantity: `${about}, pack volts off the log, rms`,
          unit: 'mV',
          reference: 0,
          ours: rmsMv(run, real, end.start),
          within: { absolute: 150 },
        });
      },
    );
  }
});

describe('every subset of the measured runs, tried on every run left out', () => {
  let matrix: readonly LeftOut[] = [];
  beforeAll(() => {
    matrix = leaveOutMatrix();
  }, 120_000);
  const worst = (block: string, isSingle: boolean) =>
    matrix
      .filter((row) => row.block === block && (row.fitted.length === 1) === isSingle)
      .toSorted((a, b) => Math.abs(b.timePercent) - Math.abs(a.timePercent))[0];
  // The rig that logged the AGM block repeats within 3.6 %; one run at a third of the other's current says least.
  test.skipIf(measuredText(agm.file) === null).each([
    [agm.name, true, 14, sources.agm],
    [agm.name, false, 6, sources.agm],
    [nickelRich.name, true, 2.5, sources.nickelRich],
    [nickelRich.name, false, 1, sources.nickelRich],
    [sixGroups.name, true, 2, sources.sixGroups],
  ] as const)(
    '%s, one run alone %s: the worst run time is off by no more than %d %%',
    (block, isSingle, percent, source) => {
      const row = worst(block, isSingle)!;
      checkAgainst({
        chapter,
        quantity: `${block}: worst of all pairs, fitted on ${isSingle ? 'one run' : 'several runs'} (${row.fitted.join(', ')} for ${row.tried})`,
        unit: '% of the run time',
        source,
        class: 'measured',
        reference: 0,
        ours: row.timePercent,
        within: { absolute: percent },
      });
    },
  );
});
