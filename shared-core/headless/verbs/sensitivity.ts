import { planSensitivity } from '../../compare/sensitivity/sensitivity.ts';
import { formatFixed, formatSignificant } from '../../units/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { rangeOption, readRanges } from '../read-ranges.ts';
import { done, jsonOption, languageOption, outingOption, refuse, type Verb } from '../verb.ts';
import { isLanguage } from './findings.ts';

export const sensitivityVerb: Verb = {
  name: 'sensitivity',
  usage: 'FILE [options]',
  summary: 'print how many minutes each assumption moves the run time, and what to measure first',
  details: ['Each assumption goes from low to high by itself, the others stay as planned.'],
  options: [jsonOption, outingOption, rangeOption, languageOption],
  arguments: [1, 1],
  async run({ positional: [path], value, values, has, host }) {
    const language = value('--language') ?? 'en';
    if (!isLanguage(language)) return refuse(`--language: ${language} is not known. Use en or de.`);
    const read = readRanges(values('--range'));
    if (!read.ok) return refuse(read.line);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const found = findOuting(loaded.plan, value('--outing'));
    if (!found.ok) return refuse(found.line);
    const options = planSensitivity(loaded.plan, found.outing.id, read.ranges);
    if (has('--json')) {
      host.out(
        jsonText({
          outing: found.outing.id,
          options: options.map(({ effects, ...rest }) => ({
            ...rest,
            effects: effects.map(({ label, measure, ...effect }) => ({
              ...effect,
              label: label[language],
              measure: measure?.[language] ?? null,
            })),
          })),
        }),
      );
      return done;
    }
    for (const { name, plannedMin, effects, measureFirst } of options) {
      host.out(`${name}: ${formatFixed(plannedMin, 1, 'en')} min as planned\n`);
      host.out(
        alignedTable(
          [
            'Assumption',
            'Unit',
            'Low',
            'High',
            'Min at low',
            'Min at high',
            'Swing',
            'Min per unit',
          ],
          effects.map((effect) => [
            effect.label[language],
            effect.unit,
            formatSignificant(effect.low, 4, 'en'),
            formatSignificant(effect.high, 4, 'en'),
            formatFixed(effect.atLowMin, 1, 'en'),
            formatFixed(effect.atHighMin, 1, 'en'),
            formatFixed(effect.swingMin, 1, 'en'),
            effect.minutesPerUnit === null
              ? '–'
              : formatSignificant(effect.minutesPerUnit, 3, 'en'),
          ]),
        ),
      );
      const first = effects.find(({ id }) => id === measureFirst?.id);
      host.out(
        first?.measure == null
          ? '\n'
          : `Measure first: ${first.label[language]}. ${first.measure[language]}\n\n`,
      );
    }
    return done;
  },
};
