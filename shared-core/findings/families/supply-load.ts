import type { Finding } from '../finding.ts';
import { optionRule, planRule, type Rule } from '../rule.ts';
import { converterOutputA, converterPeakA, onConverter } from './converter-load.ts';

const converterLoad: Rule = planRule(
  {
    id: 'SUP-3',
    severity: 'warn',
    sourceClass: 'common-practice',
    source:
      'Continuous load of a small converter at most three quarters of its label. Common practice, no source',
    about: {
      en: 'The accessories ask more of the converter than it gives for long, or at their start.',
      de: 'Das Zubehör fordert vom Wandler mehr, als er auf Dauer oder beim Einschalten gibt.',
    },
  },
  ({ plan }, voice) => {
    const { converter } = plan.machine;
    if (converter === null) return [];
    const found: Finding[] = [];
    const lastingA = converterOutputA(plan.machine);
    const allowedA = (plan.thresholds.converterLoadPercent / 100) * converter.ratedCurrentA;
    if (lastingA > allowedA) {
      const percent = (100 * lastingA) / converter.ratedCurrentA;
      found.push(
        voice.finding({
          what: {
            en: `The accessories draw ${voice.say(lastingA, 'A')}, ${voice.say(percent, '%', 2)} of the converter's ${voice.say(converter.ratedCurrentA, 'A')}; wanted at most ${voice.say(plan.thresholds.converterLoadPercent, '%')}.`,
            de: `Das Zubehör zieht ${voice.say(lastingA, 'A')}, ${voice.say(percent, '%', 2)} der ${voice.say(converter.ratedCurrentA, 'A')} des Wandlers; gewünscht höchstens ${voice.say(plan.thresholds.converterLoadPercent, '%')}.`,
          },
          consequence: {
            en: 'It runs hot in a closed box, shuts off or fails early.',
            de: 'Er wird in einem geschlossenen Kasten heiß, schaltet ab oder fällt früh aus.',
          },
          remedy: {
            en: 'Take a larger converter or switch loads off.',
            de: 'Einen größeren Wandler nehmen oder Lasten abschalten.',
          },
          facts: [
            [{ en: 'load', de: 'Last' }, lastingA, 'A'],
            [{ en: 'rating', de: 'Nennstrom' }, converter.ratedCurrentA, 'A'],
          ],
          fields: ['machine.converter.ratedCurrentA', 'machine.accessories'],
        }),
      );
    }
    const startsHard = onConverter(plan.machine).some(
      (accessory) => accessory.startupCurrentA !== null,
    );
    const peakA = converterPeakA(plan.machine);
    if (converter.peakCurrentA === null) {
      if (startsHard) {
        found.push(
          voice.notChecked({
            missing: {
              en: `the start-up current the converter gives is missing; the accessories ask ${voice.say(peakA, 'A')}.`,
              de: `der Anlaufstrom, den der Wandler gibt, fehlt; das Zubehör fordert ${voice.say(peakA, 'A')}.`,
            },
            fields: ['machine.converter.peakCurrentA'],
          }),
        );
      }
    } else if (peakA > converter.peakCurrentA) {
      found.push(
        voice.finding({
          what: {
            en: `At a start the accessories ask ${voice.say(peakA, 'A')}; the converter gives ${voice.say(converter.peakCurrentA, 'A')} for a moment.`,
            de: `Beim Einschalten fordert das Zubehör ${voice.say(peakA, 'A')}; der Wandler gibt kurz ${voice.say(converter.peakCurrentA, 'A')}.`,
          },
          consequence: {
            en: 'The output folds back: nothing starts, or everything restarts.',
            de: 'Der Ausgang bricht ein: nichts läuft an, oder alles startet neu.',
          },
          remedy: {
            en: 'Take a converter with more reserve, or feed the hard-starting load from the pack.',
            de: 'Einen Wandler mit mehr Reserve nehmen oder die schwer anlaufende Last vom Akku speisen.',
          },
          facts: [
            [{ en: 'asked at start', de: 'beim Start gefordert' }, peakA, 'A'],
            [{ en: 'given', de: 'gegeben' }, converter.peakCurrentA, 'A'],
          ],
          fields: ['machine.converter.peakCurrentA', 'machine.accessories'],
        }),
      );
    }
    return found;
  },
);

const midPoint: Rule = optionRule(
  {
    id: 'SUP-4',
    severity: 'warn',
    sourceClass: 'handbook',
    source: "Battery makers' installation notes: draw from whole strings only",
    about: {
      en: 'An accessory is tapped between the blocks of a series string.',
      de: 'Ein Zubehör ist zwischen den Blöcken eines Strangs angezapft.',
    },
  },
  ({ option }, voice, { plan }) => {
    if (option.pack.seriesCount < 2) return [];
    return plan.machine.accessories.flatMap((accessory, index) =>
      accessory.supply === 'mid-point' && (accessory.on || accessory.standbyA > 0)
        ? [
            voice.finding({
              optionId: option.id,
              what: {
                en: `${accessory.name} draws from one of ${option.pack.seriesCount} blocks in series.`,
                de: `${accessory.name} zieht aus einem von ${option.pack.seriesCount} Blöcken in Reihe.`,
              },
              consequence: {
                en: 'That block cycles deeper, is never filled by the common charger and dies first; the others are overcharged.',
                de: 'Dieser Block wird tiefer entladen, vom gemeinsamen Ladegerät nie voll und stirbt zuerst; die anderen werden überladen.',
              },
              remedy: {
                en: 'Feed it through a converter on the whole pack, or fit a balancer.',
                de: 'Über einen Wandler am ganzen Akku speisen oder einen Ausgleicher einbauen.',
              },
              facts: [
                [{ en: 'blocks in series', de: 'Blöcke in Reihe' }, option.pack.seriesCount, ''],
              ],
              fields: [`machine.accessories.${index}.supply`],
              cures:
                plan.machine.converter === null
                  ? []
                  : [
                      {
                        does: {
                          en: `Feed ${accessory.name} from the converter (now from the mid-point)`,
                          de: `${accessory.name} vom Wandler speisen (jetzt von der Mitte)`,
                        },
                        changes: [
                          { path: `machine.accessories.${index}.supply`, value: 'converter' },
                        ],
                      },
                    ],
            }),
          ]
        : [],
    );
  },
);

const standby: Rule = optionRule(
  {
    id: 'SUP-5',
    severity: 'note',
    sourceClass: 'derived',
    source: 'Standby currents and self-discharge against half the capacity',
    about: {
      en: 'Standby drain flattens the pack while nobody uses it.',
      de: 'Ruheströme leeren den Akku, während niemand ihn benutzt.',
    },
  },
  ({ option, study }, voice, { plan }) => {
    const days = study?.standbyDaysToHalf ?? null;
    if (days === null || days >= plan.thresholds.standbyDays) return [];
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `Standing still, half the pack is gone in ${voice.say(days, 'days', 2)}.`,
          de: `Im Stand ist der halbe Akku in ${voice.say(days, 'Tagen', 2)} leer.`,
        },
        consequence: {
          en: 'After a holiday the pack is flat; lead sulphates, and a lithium BMS may stay open.',
          de: 'Nach den Ferien ist der Akku leer; Blei sulfatiert, und ein Lithium-BMS bleibt womöglich offen.',
        },
        remedy: {
          en: 'Switch everything off with the isolator, or plan a top-up charge in between.',
          de: 'Alles mit dem Trennschalter abschalten oder eine Zwischenladung einplanen.',
        },
        facts: [
          [{ en: 'days to half', de: 'Tage bis halb leer' }, days, 'days'],
          [{ en: 'limit', de: 'Grenze' }, plan.thresholds.standbyDays, 'days'],
        ],
        fields: ['machine.accessories', 'machine.converter.alwaysOn'],
      }),
    ];
  },
);

export const supplyLoadRules: readonly Rule[] = [converterLoad, midPoint, standby];
