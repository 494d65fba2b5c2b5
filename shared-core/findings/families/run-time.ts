import { minutes } from '../amount.ts';
import { optionRule, type Rule } from '../rule.ts';

const shortRunFrame = {
  id: 'RUN-1',
  severity: 'warn',
  sourceClass: 'derived',
  source: 'Simulated run against the minutes wanted in the outing',
  about: { en: 'It runs shorter than wanted.', de: 'Sie läuft kürzer als gewünscht.' },
} as const;

const shortRun: Rule = optionRule(
  shortRunFrame,
  ({ option, path, study }, voice, { outing, plan }) => {
    if (
      study === null ||
      study.run.endedBy === 'time-limit' ||
      study.run.runTimeMin >= outing.goalMin
    )
      return [];
    const { runTimeMin } = study.run;
    const shortMin = outing.goalMin - runTimeMin;
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `It runs ${minutes(runTimeMin, 'en')} of the ${minutes(outing.goalMin, 'en')} wanted: ${minutes(shortMin, 'en')} short.`,
          de: `Sie läuft ${minutes(runTimeMin, 'de')} von gewünschten ${minutes(outing.goalMin, 'de')}: ${minutes(shortMin, 'de')} zu kurz.`,
        },
        consequence: {
          en: 'The machine stops on the way, and each outing drains the pack to its end.',
          de: 'Die Maschine bleibt unterwegs stehen, und jede Fahrt leert den Akku bis zum Ende.',
        },
        remedy: {
          en: 'Take more capacity, switch accessories off, go slower, or charge in between.',
          de: 'Mehr Kapazität nehmen, Zubehör abschalten, langsamer fahren oder zwischendurch laden.',
        },
        facts: [
          [{ en: 'run time', de: 'Laufzeit' }, runTimeMin, 'min'],
          [{ en: 'wanted', de: 'gewünscht' }, outing.goalMin, 'min'],
        ],
        fields: [
          `outings.${plan.outings.indexOf(outing)}.goalMin`,
          `${path}.pack.block.capacityAh`,
        ],
      }),
    ];
  },
);

/** Low end of the spread of an option and the chance that it meets the goal. */
export interface LowEnd {
  readonly lowMin: number;
  readonly goalPercent: number;
}

/**
 * The same rule where a spread is known: the likely run reaches the goal, one in ten does not.
 *
 * @param lowEnds by option
 */
export const shortLowEnd = (lowEnds: ReadonlyMap<string, LowEnd>): Rule =>
  optionRule(shortRunFrame, ({ option, path, study }, voice, { outing, plan }) => {
    const low = lowEnds.get(option.id);
    const reaches = study !== null && study.run.runTimeMin >= outing.goalMin;
    if (low === undefined || !reaches || low.lowMin >= outing.goalMin) return [];
    return [
      voice.finding({
        optionId: option.id,
        severity: 'note',
        what: {
          en: `It likely runs the ${minutes(outing.goalMin, 'en')} wanted, but one time in ten only ${minutes(low.lowMin, 'en')} or less.`,
          de: `Die gewünschten ${minutes(outing.goalMin, 'de')} läuft sie wahrscheinlich, in einem von zehn Fällen aber nur ${minutes(low.lowMin, 'de')} oder weniger.`,
        },
        consequence: {
          en: 'On a cold day, with a tired block or a heavy load, it stops short.',
          de: 'An einem kalten Tag, mit einem müden Block oder schwerer Last bleibt sie vorher stehen.',
        },
        remedy: {
          en: 'Measure what matters most first (see the place Run), or take some capacity in reserve.',
          de: 'Zuerst messen, was am meisten ausmacht (siehe Fahrt), oder etwas Kapazität in Reserve nehmen.',
        },
        facts: [
          [{ en: 'low run time', de: 'niedrige Laufzeit' }, low.lowMin, 'min'],
          [{ en: 'chance of the goal', de: 'Chance auf das Ziel' }, low.goalPercent, '%'],
          [{ en: 'wanted', de: 'gewünscht' }, outing.goalMin, 'min'],
        ],
        fields: [
          `outings.${plan.outings.indexOf(outing)}.goalMin`,
          `${path}.pack.block.capacityAh`,
        ],
      }),
    ];
  });

const naivePromise: Rule = optionRule(
  {
    id: 'RUN-2',
    severity: 'note',
    sourceClass: 'derived',
    source: 'Rated ampere-hours over average current against the simulated run',
    about: {
      en: 'Ampere-hours over amperes promise more than it runs.',
      de: 'Amperestunden durch Ampere versprechen mehr, als sie läuft.',
    },
  },
  ({ option, path, study }, voice, { plan }) => {
    if (study === null || study.run.endedBy === 'time-limit') return [];
    const { run, plainMin } = study;
    if (
      run.runTimeMin <= 0 ||
      plainMin === null ||
      plainMin <= run.runTimeMin * (1 + plan.thresholds.promisePercent / 100)
    )
      return [];
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `${voice.say(study.capacityAh, 'A·h')} over ${voice.say(run.averageCurrentA, 'A')} would promise ${minutes(plainMin, 'en')}; it runs ${minutes(run.runTimeMin, 'en')}.`,
          de: `${voice.say(study.capacityAh, 'A·h')} durch ${voice.say(run.averageCurrentA, 'A')} verspräche ${minutes(plainMin, 'de')}; sie läuft ${minutes(run.runTimeMin, 'de')}.`,
        },
        consequence: {
          en: 'The label counts a slow discharge; rate, temperature, age and the cutoff take their share.',
          de: 'Das Schild zählt langsames Entladen; Strom, Temperatur, Alter und Abschaltung nehmen ihren Teil.',
        },
        remedy: {
          en: 'Compare packs by the run, not by the label.',
          de: 'Akkus nach der Fahrt vergleichen, nicht nach dem Schild.',
        },
        facts: [
          [{ en: 'promised by the label', de: 'laut Schild' }, plainMin, 'min'],
          [{ en: 'run time', de: 'Laufzeit' }, run.runTimeMin, 'min'],
        ],
        fields: [`${path}.pack.block.capacityAh`],
      }),
    ];
  },
);

export const runTimeRules: readonly Rule[] = [shortRun, naivePromise];
