import { chemistryTraits } from '../../battery/chemistry.ts';
import { ventilationNeed } from '../../charge/ventilation-need.ts';
import type { CureStatement } from '../cure.ts';
import type { Finding } from '../finding.ts';
import { optionRule, type Rule, type RuleVoice } from '../rule.ts';
import type { OptionContext } from '../context.ts';
import type { Week } from '../../plan/schema/week.ts';

/** CHG-7: fresh air for lead, sight and a free way out for lithium, and no charging where people sleep. */
const chargingPlace: Rule = optionRule(
  {
    id: 'CHG-7',
    severity: 'warn',
    sourceClass: 'standard',
    source:
      'IEC 62485-2, ventilation of lead batteries, used as a guide; fire brigades’ advice on lithium (common practice)',
    about: {
      en: 'Charging in an enclosed or sleeping space, or lithium charged unwatched on the way out.',
      de: 'Laden in geschlossenen oder Schlafräumen, oder Lithium unbeaufsichtigt auf dem Fluchtweg.',
    },
  },
  (entry, voice, { plan }) => {
    const { option } = entry;
    if (plan.week === null) {
      if (option.charger === null) return [];
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'where the pack is charged is not stated.',
            de: 'wo der Akku geladen wird, ist nicht angegeben.',
          },
          remedy: {
            en: 'Start the week in the place Charging and state the room.',
            de: 'Im Bereich Laden die Woche anlegen und den Raum angeben.',
          },
          fields: ['week'],
        }),
      ];
    }
    const { place } = plan.week;
    if (place.kind === 'sleeping-room') return [sleeping(option.id, voice)];
    return chemistryTraits[option.pack.block.chemistry].family === 'lead'
      ? leadAir(entry, plan.week, voice)
      : lithiumWatch(option.id, plan.week, voice);
  },
);

const openAir: CureStatement = {
  does: { en: 'Plan charging in the open air', de: 'Laden im Freien einplanen' },
  changes: [{ path: 'week.place.kind', value: 'open-air' }],
};

function sleeping(optionId: string, voice: RuleVoice): Finding {
  return voice.finding({
    optionId,
    what: {
      en: 'The pack is charged in a room where people sleep.',
      de: 'Der Akku wird geladen, wo Menschen schlafen.',
    },
    consequence: {
      en: 'Hydrogen, acid mist or a lithium fire meets people who do not notice.',
      de: 'Wasserstoff, Säurenebel oder ein Lithiumbrand trifft Menschen, die es nicht merken.',
    },
    remedy: {
      en: 'Charge in the open, in a shed or in an aired garage.',
      de: 'Im Freien, im Schuppen oder in einer belüfteten Garage laden.',
    },
    fields: ['week.place.kind'],
    cures: [openAir],
  });
}

function leadAir({ option }: OptionContext, week: Week, voice: RuleVoice): Finding[] {
  const need = ventilationNeed(option.pack);
  const { place } = week;
  if (need === null || place.kind === 'open-air') return [];
  if (place.openingCm2 === null && place.kind === 'ventilated-room') {
    return [
      voice.notChecked({
        optionId: option.id,
        missing: {
          en: `the openings of the room are not stated; charging needs ${voice.say(need.openingCm2, 'cm²')} low and again high.`,
          de: `die Öffnungen des Raums sind nicht angegeben; das Laden braucht ${voice.say(need.openingCm2, 'cm²')} unten und noch einmal oben.`,
        },
        fields: ['week.place.openingCm2'],
      }),
    ];
  }
  const openCm2 = place.openingCm2 ?? 0;
  if (openCm2 >= need.openingCm2) return [];
  return [
    voice.finding({
      optionId: option.id,
      what: {
        en: `Charging needs ${voice.say(need.flowM3PerH, 'm³/h')} of fresh air, an opening of ${voice.say(need.openingCm2, 'cm²')} low and high; the room has ${voice.say(openCm2, 'cm²')}.`,
        de: `Das Laden braucht ${voice.say(need.flowM3PerH, 'm³/h')} Frischluft, eine Öffnung von ${voice.say(need.openingCm2, 'cm²')} unten und oben; der Raum hat ${voice.say(openCm2, 'cm²')}.`,
      },
      consequence: {
        en: 'Hydrogen gathers under the ceiling; from 4 % in air a spark is enough.',
        de: 'Wasserstoff sammelt sich unter der Decke; ab 4 % in der Luft genügt ein Funke.',
      },
      remedy: {
        en: 'Charge in the open or cut openings of that size at floor and ceiling; no flame, no switch beside the pack.',
        de: 'Im Freien laden oder Öffnungen dieser Größe an Boden und Decke schaffen; keine Flamme, kein Schalter neben dem Akku.',
      },
      facts: [
        [{ en: 'fresh air', de: 'Frischluft' }, need.flowM3PerH, 'm³/h'],
        [{ en: 'opening needed', de: 'nötige Öffnung' }, need.openingCm2, 'cm²'],
        [{ en: 'opening there', de: 'vorhandene Öffnung' }, openCm2, 'cm²'],
      ],
      fields: ['week.place.openingCm2', 'week.place.kind'],
      cures: [openAir],
    }),
  ];
}

function lithiumWatch(optionId: string, week: Week, voice: RuleVoice): Finding[] {
  const unwatched = week.windows.filter((window) => !window.attended);
  if (!week.place.onEscapeRoute && unwatched.length === 0) return [];
  const exit = week.place.onEscapeRoute;
  return [
    voice.finding({
      optionId,
      severity: exit ? 'warn' : 'note',
      what: exit
        ? {
            en: 'Lithium is charged on the way out of the building.',
            de: 'Lithium wird auf dem Fluchtweg geladen.',
          }
        : {
            en: `Lithium is charged with nobody near in ${unwatched.length} of ${week.windows.length} windows.`,
            de: `Lithium wird in ${unwatched.length} von ${week.windows.length} Ladezeiten unbeaufsichtigt geladen.`,
          },
      consequence: {
        en: 'A cell that fails on charge burns within minutes and fills the room with smoke; the way out must stay free.',
        de: 'Eine Zelle, die beim Laden versagt, brennt in Minuten und füllt den Raum mit Rauch; der Weg hinaus muss frei bleiben.',
      },
      remedy: {
        en: 'Charge outdoors or away from exits, on a surface that does not burn, near a smoke alarm, while someone is awake.',
        de: 'Im Freien oder abseits der Ausgänge laden, auf nicht brennbarer Fläche, mit Rauchmelder, solange jemand wach ist.',
      },
      fields: ['week.place.onEscapeRoute', 'week.windows'],
    }),
  ];
}

export const chargingPlaceRules: readonly Rule[] = [chargingPlace];
