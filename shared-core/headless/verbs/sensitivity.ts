import { planSensitivity } from '../../compare/sensitivity/sensitivity.ts';
import { formatFixed, formatSignificant } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { done, jsonOption, outingOption, refuse, type Verb } from '../verb.ts';

export const sensitivityVerb: Verb = {
  name: 'sensitivity',
  usage: 'FILE [options]',
  summary: 'print how many minutes each assumption moves the run time, and what to measure first',
  details: [],
  options: [jsonOption, outingOption],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const found = findOuting(loaded.plan, value('--outing'));
    if (!found.ok) return refuse(found.line);
    const options = planSensitivity(loaded.plan, found.outing.id);
    if (has('--json')) {
      host.out(jsonText({ outing: found.outing.id, options }));
      return done;
    }
    for (const { name, effects, measureFirst } of options) {
      host.out(`${name}\n`);
      host.out(
        alignedTable(
          ['Assumption', 'Unit', 'Low', 'High', 'Min at low', 'Min at high', 'Swing min'],
          effects.map((effect) => [
            effect.label.en,
            effect.unit,
            formatSignificant(effect.low, 4, 'en'),
            formatSignificant(effect.high, 4, 'en'),
            formatFixed(effect.atLowMin, 1, 'en'),
            formatFixed(effect.atHighMin, 1, 'en'),
            formatFixed(effect.swingMin, 1, 'en'),
          ]),
        ),
      );
      const first = effects.find(({ id }) => id === measureFirst?.id);
      host.out(
        first?.measure == null ? '\n' : `Measure first: ${first.label.en}. ${first.measure.en}\n\n`,
      );
    }
    return done;
  },
};
