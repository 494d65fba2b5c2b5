import { availableMin } from '../../week/outing-table.ts';
import { weekModel } from '../../week/week-model.ts';
import { weekStudyOf } from '../../week/week-study-of.ts';
import { clockText } from '../../week/clock.ts';
import { optionRule, type Rule } from '../rule.ts';

const noWeek = {
  missing: {
    en: 'use and charging over the week are not stated.',
    de: 'Nutzung und Laden über die Woche sind nicht angegeben.',
  },
  remedy: {
    en: 'Start the week in the place Charging.',
    de: 'Im Bereich Laden die Woche anlegen.',
  },
  fields: ['week'],
};

const storage: Rule = optionRule(
  {
    id: 'KEP-1',
    severity: 'warn',
    sourceClass: 'handbook',
    source:
      'Makers’ handbooks: self-discharge and storage of lead and lithium; the interval is a setting, makers state one to six months',
    about: {
      en: 'Stored discharged, or longer than the top-up interval.',
      de: 'Entladen gelagert oder länger als das Nachladeintervall.',
    },
  },
  ({ option }, voice, { plan }) => {
    if (option.charger === null) return [];
    if (plan.week === null) return [voice.notChecked({ optionId: option.id, ...noWeek })];
    const { storage: stored } = weekStudyOf(plan, option);
    const { care } = plan.thresholds;
    if (stored === null) return [];
    const lithium = stored.startPercent < 100;
    const limit = lithium ? care.lithiumStorageLowPercent : care.leadStoragePercent;
    const tooLong = !lithium && stored.days > care.leadTopUpDays;
    const tooLow = lithium ? stored.endPercentAlone < limit / 2 : stored.belowLimitDay !== null;
    if (!tooLong && !tooLow) return [];
    const left = voice.say(stored.endPercentAlone, '%', 2);
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `${stored.days} days in storage leave ${left}${stored.belowLimitDay === null ? '' : `; below ${limit} % from day ${stored.belowLimitDay}`}${stored.mayFreeze ? '; so flat, the acid can freeze' : ''}.`,
          de: `${stored.days} Tage Lagerung lassen ${left} übrig${stored.belowLimitDay === null ? '' : `; unter ${limit} % ab Tag ${stored.belowLimitDay}`}${stored.mayFreeze ? '; so leer kann die Säure gefrieren' : ''}.`,
        },
        consequence: lithium
          ? {
              en: 'Below its limit the BMS opens for good or the cells are damaged.',
              de: 'Unter der Grenze trennt das BMS endgültig oder die Zellen nehmen Schaden.',
            }
          : {
              en: 'Lead that stands discharged sulphates and does not get its capacity back.',
              de: 'Blei, das entladen steht, sulfatiert und bekommt seine Kapazität nicht zurück.',
            },
        remedy: {
          en: `Store at ${stored.startPercent} %, isolator open, and top up ${stored.topUpDays.length} times (every ${care.leadTopUpDays} days for lead).`,
          de: `Mit ${stored.startPercent} % und offenem Trennschalter lagern, ${stored.topUpDays.length}-mal nachladen (Blei alle ${care.leadTopUpDays} Tage).`,
        },
        facts: [
          [{ en: 'days in storage', de: 'Lagertage' }, stored.days, 'd'],
          [{ en: 'charge left', de: 'Restladung' }, stored.endPercentAlone, '%'],
        ],
        fields: ['week.season.weeks', 'week.isolatedWhenParked'],
        cures: plan.week.isolatedWhenParked
          ? []
          : [
              {
                does: {
                  en: 'Open the isolator while parked (now closed)',
                  de: 'Trennschalter beim Abstellen öffnen (jetzt geschlossen)',
                },
                changes: [{ path: 'week.isolatedWhenParked', value: true }],
              },
            ],
      }),
    ];
  },
);

const life: Rule = optionRule(
  {
    id: 'KEP-2',
    severity: 'note',
    sourceClass: 'derived',
    source:
      'Cycles at depth (from memory of makers’ curves) and calendar life halving each 10 K (published), added',
    about: {
      en: 'Depth of each outing against cycle life.',
      de: 'Entladetiefe je Fahrt gegen Zyklenlebensdauer.',
    },
  },
  ({ option }, voice, { plan }) => {
    if (option.charger === null) return [];
    if (plan.week === null) return [voice.notChecked({ optionId: option.id, ...noWeek })];
    const { own } = weekStudyOf(plan, option);
    if (own === null || own.outings === 0 || own.expectedSeasons >= plan.thresholds.care.seasons)
      return [];
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `${own.outings} outings a season, ${voice.say(own.meanDepthPercent, '%', 2)} deep on average, wear the pack out in about ${voice.say(own.expectedSeasons, 'seasons', 2)}.`,
          de: `${own.outings} Fahrten je Saison, im Mittel ${voice.say(own.meanDepthPercent, '%', 2)} tief, verschleißen den Akku in etwa ${voice.say(own.expectedSeasons, 'Saisons', 2)}.`,
        },
        consequence: {
          en: 'The run time shrinks by a fifth until then, faster towards the end.',
          de: 'Die Fahrzeit schrumpft bis dahin um ein Fünftel, zum Ende hin schneller.',
        },
        remedy: {
          en: 'A larger pack, a second one in rotation, or lithium.',
          de: 'Ein größerer Akku, ein zweiter im Wechsel, oder Lithium.',
        },
        facts: [
          [{ en: 'mean depth', de: 'mittlere Tiefe' }, own.meanDepthPercent, '%'],
          [{ en: 'full-depth equivalents', de: 'Vollzyklen' }, own.equivalentCycles, ''],
          [{ en: 'expected life', de: 'erwartete Lebensdauer' }, own.expectedSeasons, 'seasons'],
        ],
        fields: ['week.usage'],
      }),
    ];
  },
);

const refill: Rule = optionRule(
  {
    id: 'CHG-8',
    severity: 'note',
    sourceClass: 'derived',
    source: 'Simulated season of the plan’s week under its routine',
    about: {
      en: 'The charger cannot refill between the outings of the week.',
      de: 'Das Ladegerät füllt zwischen den Fahrten der Woche nicht nach.',
    },
  },
  ({ option, path }, voice, { plan }) => {
    if (option.charger === null) return [];
    if (plan.week === null) return [voice.notChecked({ optionId: option.id, ...noWeek })];
    const { own, proposal, week } = weekStudyOf(plan, option);
    if (own === null) return [];
    const { leadFullDays } = plan.thresholds.charge;
    const model = weekModel(plan, option, option.charger, week);
    // An outing too long even for a full pack is a matter of the run, not of the charger.
    const starved = own.failures.find((failure) => {
      const table = model.outing(failure.outingId, failure.temperatureC);
      return availableMin(table, 99) * week.packCount >= failure.wantedMin;
    });
    const undercharged =
      !model.lithium && own.outings > 0 && own.longestWithoutFullDays > leadFullDays;
    if (starved === undefined && !undercharged) return [];
    const better = proposal !== null && proposal.trigger !== own.trigger;
    return [
      voice.finding({
        optionId: option.id,
        what:
          starved === undefined
            ? {
                en: `Up to ${voice.say(own.longestWithoutFullDays, 'days', 2)} pass without a full charge.`,
                de: `Bis zu ${voice.say(own.longestWithoutFullDays, 'Tage', 2)} vergehen ohne volle Ladung.`,
              }
            : {
                en: `The outing on ${starved.day} at ${clockText(starved.startMin)} finds the pack part full: ${starved.failed} of ${starved.wanted} times it ends early, once after ${voice.say(starved.shortestMin, 'min', 2)} of ${voice.say(starved.wantedMin, 'min')}.`,
                de: `Die Fahrt am ${germanDays[starved.day]} um ${clockText(starved.startMin)} findet den Akku nur teils voll: ${starved.failed} von ${starved.wanted} Malen endet sie früher, einmal nach ${voice.say(starved.shortestMin, 'min', 2)} von ${voice.say(starved.wantedMin, 'min')}.`,
              },
        consequence: {
          en: 'The charge drifts down from outing to outing; lead kept part full loses capacity for good.',
          de: 'Die Ladung sinkt von Fahrt zu Fahrt; dauernd halb volles Blei verliert Kapazität für immer.',
        },
        remedy: better
          ? {
              en: 'Plug in oftener: the place Charging proposes a routine that does better.',
              de: 'Öfter anstecken: der Bereich Laden schlägt einen besseren Rhythmus vor.',
            }
          : {
              en: 'A longer charging window, a larger charger within the pack’s limits, or a second pack.',
              de: 'Eine längere Ladezeit, ein stärkeres Ladegerät in den Grenzen des Akkus, oder ein zweiter Akku.',
            },
        facts: [
          [{ en: 'outings cut short', de: 'verkürzte Fahrten' }, own.failedOutings, ''],
          [{ en: 'lowest charge', de: 'niedrigste Ladung' }, own.lowestPercent, '%'],
        ],
        fields: ['week.routine.trigger', 'week.windows', `${path}.charger.currentA`],
        cures: better
          ? [
              {
                does: {
                  en: 'Take over the proposed routine of charging',
                  de: 'Den vorgeschlagenen Laderhythmus übernehmen',
                },
                changes: [{ path: 'week.routine.trigger', value: proposal.trigger }],
              },
            ]
          : [],
      }),
    ];
  },
);

const germanDays = {
  mon: 'Montag',
  tue: 'Dienstag',
  wed: 'Mittwoch',
  thu: 'Donnerstag',
  fri: 'Freitag',
  sat: 'Samstag',
  sun: 'Sonntag',
} as const;

/** Rules that need the simulated week; dearer than the others, so they stand in a table of their own. */
export const keepingRules: readonly Rule[] = [storage, life, refill];
