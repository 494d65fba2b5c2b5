import type { Language } from '#core/plan/language.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { OptionStudy } from '#core/study/study.ts';
import type { UnitSystem } from '#core/units/display.ts';
import type { Working } from '../controls/working.ts';
import type { CompareRow } from '../state/compare-rows.ts';
import { figureWorkingTexts } from '../text/figure-workings.ts';
import { packsTexts } from '../text/packs.ts';
import { workingTexts } from '../text/workings.ts';
import { accessoryWorking } from './accessory-working.ts';
import { chargeWorking } from './charge-working.ts';
import { energyWorking } from './energy-working.ts';
import { figureWriter } from './figure-writer.ts';
import { runFigureWorking, standbyWorking } from './run-figure-workings.ts';
import { runTimeWorking } from './run-time-working.ts';
import { massWorking, priceWorking } from './sum-workings.ts';

/** The working behind a figure of the table that compares options. */
export function compareWorking(
  row: CompareRow['id'],
  study: OptionStudy,
  plan: Plan,
  language: Language,
  units: UnitSystem,
): Working {
  const index = Math.max(
    0,
    plan.options.findIndex(({ id }) => id === study.id),
  );
  const option = plan.options[index];
  const outingAt = Math.max(
    0,
    plan.outings.findIndex(({ id }) => id === plan.headlineOuting),
  );
  const outing = plan.outings[outingAt];
  const text = figureWorkingTexts[language];
  const common = workingTexts[language];
  const name = packsTexts[language].rows[row];
  const write = figureWriter(language);
  const runTime = { label: common.runTime, value: write.minutes(study.run.runTimeMin) };
  const block = `options.${index}.pack.block`;
  switch (row) {
    case 'runTime':
      return runTimeWorking(study, index, language);
    case 'delivered':
      return energyWorking(study, language);
    case 'accessories':
      return accessoryWorking(study, language);
    case 'chargeHours':
      return chargeWorking(study, language);
    case 'lowestBus':
      return runFigureWorking(
        'lowest',
        study,
        index,
        { minutes: outing?.restAfterMin ?? 0, field: `outings.${outingAt}.restAfterMin` },
        language,
      );
    case 'standby':
      return standbyWorking(study, index, language);
    case 'goalShare': {
      const goalMin = outing?.goalMin ?? 0;
      return {
        formula: [text.goalFormula],
        inputs: [
          runTime,
          { label: text.goal, value: write.minutes(goalMin), field: `outings.${outingAt}.goalMin` },
        ],
        result: {
          label: name,
          value: write.as(goalMin > 0 ? (100 * study.run.runTimeMin) / goalMin : 0, '%'),
        },
        source: text.ofRun,
      };
    }
    case 'energy':
      return {
        formula: [text.energy],
        inputs: [
          {
            label: common.fullCharge,
            value: write.as(study.capacityAh, 'A·h'),
            field: `${block}.capacityAh`,
          },
          {
            label: text.nominal,
            value: write.as(study.nominalVoltageV, 'V'),
            field: `${block}.chemistry`,
          },
        ],
        exact: { value: study.energyWh, unit: 'W·h' },
        result: { label: name, value: write.as(study.energyWh, 'W·h') },
        source: common.sumSource,
      };
    case 'mass':
    case 'price':
    case 'pricePerMin':
      break;
  }
  if (option === undefined) throw new Error('A figure belongs to an option of the plan');
  if (row === 'mass') return massWorking(option, index, language, units);
  const price = priceWorking(option, index, language, plan.currency);
  if (row === 'price') return price;
  return {
    ...price,
    formula: [...price.formula, text.perMinute],
    steps: [price.result, runTime],
    result: {
      label: name,
      value: write.as(
        study.run.runTimeMin > 0 ? (study.price ?? 0) / study.run.runTimeMin : 0,
        plan.currency,
      ),
    },
  };
}
