import { describe, expect, test } from 'vitest';
import { libraryBlock } from '#core/library/index.ts';
import { newDifference } from '#core/plan/defaults.ts';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

function cutoffAt(optionId: string, cutoffVoltageV: number | null) {
  return planWith('orchard-cart', optionId, (_option, { machine }) => {
    machine.controller.cutoffVoltageV = cutoffVoltageV;
    machine.controller.restartVoltageV = null;
  });
}

describe('CUT-1: no cutoff', () => {
  test('lead without a controller cutoff warns, with one it passes', () => {
    expect(severitiesOf('CUT-1', cutoffAt('agm-series', null))).toEqual(['warn']);
    expect(findingsOf('CUT-1', cutoffAt('agm-series', 20.5))).toEqual([]);
  });

  test('lithium watched only as a whole warns, with a BMS it passes', () => {
    const bare = planWith('orchard-cart', 'lfp-pack', (option) => {
      option.pack.block = libraryBlock('lfp-cell-20ah');
      option.pack.seriesCount = 8;
    });
    expect(severitiesOf('CUT-1', bare)).toEqual(['warn']);
    expect(findingsOf('CUT-1', planWith('orchard-cart', 'lfp-pack'))).toEqual([]);
  });
});

describe('CUT-2: cutoff by sag', () => {
  const plan = planWith('orchard-cart', 'agm-series');
  const endedWith = (remainingPercent: number, endedBy: 'controller-cutoff' | 'time-limit') =>
    severitiesOf('CUT-2', plan, studiesWith(plan, { remainingPercent, endedBy }));

  test('more than 20 % left at the cutoff warns', () => {
    expect(endedWith(20.5, 'controller-cutoff')).toEqual(['warn']);
  });

  test('20 % left passes, and so does a run that ended by the clock', () => {
    expect(endedWith(20, 'controller-cutoff')).toEqual([]);
    expect(endedWith(80, 'time-limit')).toEqual([]);
  });

  test('it names the element that costs most volts', () => {
    const [study] = studiesWith(plan, { remainingPercent: 50, endedBy: 'controller-cutoff' });
    const ledger = { ...study!.run.ledger, harnessLossWh: 1000 };
    const found = findingsOf('CUT-2', plan, [{ ...study!, run: { ...study!.run, ledger } }]);
    expect(found[0]!.what).toContain('the cable to the controller');
  });

  test('a block emptied far before the others is named as the cause', () => {
    const weak = planWith('market-scooter', 'tired-pair');
    const found = findingsOf('CUT-2', weak, studiesWith(weak, {}));
    const [study] = studiesWith(weak, {});
    const left = study!.run.blocks.map((block) => block.remainingPercent);
    expect(found).toHaveLength(1);
    expect(Math.max(...left) - Math.min(...left)).toBeGreaterThan(8);
    expect(found[0]!.what).toContain('weak block');
    expect(found[0]!.remedy).toContain('Measure that block alone');
  });

  test('a block 27 % weaker than its neighbour is the cause, not the rate', () => {
    const weak = planWith('orchard-cart', 'agm-series', (option) => {
      option.pack.differences = [{ ...newDifference(1, 2), capacityPercent: 73 }];
    });
    const found = findingsOf('CUT-2', weak, studiesWith(weak, {}));
    expect(found[0]!.what).toContain('a weak block (string 1, block 2)');
  });
});

describe('CUT-3: order of the cutoffs', () => {
  // Eight groups that open at 2.5 V: 20.0 V.
  test('a controller that stops at the BMS limit warns, above it passes', () => {
    const at = (volts: number | null) => {
      const plan = cutoffAt('lfp-pack', volts);
      return severitiesOf('CUT-3', plan, studiesWith(plan, { endedBy: 'controller-cutoff' }));
    };
    expect(at(20)).toEqual(['warn']);
    expect(at(20.1)).toEqual([]);
    expect(at(null)).toEqual(['warn']);
  });

  test('a run that the BMS ends warns whatever the figures say', () => {
    const plan = cutoffAt('lfp-pack', 22);
    expect(severitiesOf('CUT-3', plan, studiesWith(plan, { endedBy: 'bms-group-low' }))).toEqual([
      'warn',
    ]);
  });

  test('a pack without BMS has no order to get wrong', () => {
    expect(findingsOf('CUT-3', cutoffAt('agm-series', null))).toEqual([]);
  });
});
