import { expectedPackVoltage, packVoltageStep } from '../../wiring/commissioning.ts';
import { planRule, type Rule } from '../rule.ts';

/** PCK-4: the pack is measured before its last connector is closed. */
export const lastConnector: Rule = planRule(
  {
    id: 'PCK-4',
    severity: 'stop',
    sourceClass: 'common-practice',
    source: 'Meter before the last connector. Common practice, no source',
    about: {
      en: 'Series and parallel mixed up, or poles reversed: found with a meter before the last connector closes.',
      de: 'Reihe und parallel verwechselt oder verpolt: mit dem Messgerät gefunden, bevor der letzte Stecker schließt.',
    },
  },
  ({ plan }, voice) => {
    const index = plan.wiring?.readings.findIndex((entry) => entry.step === packVoltageStep) ?? -1;
    const readV = index < 0 ? null : plan.wiring!.readings[index]!.value;
    const wanted = plan.options.map((option) => ({ option, ...expectedPackVoltage(option) }));
    const ranges = [
      ...new Set(wanted.map(({ min, max }) => `${voice.say(min, 'V')} – ${voice.say(max, 'V')}`)),
    ].join('; ');
    if (readV === null) {
      return [
        voice.notChecked({
          missing: {
            en: `the pack voltage at the last open connector has not been read; expected: ${ranges}.`,
            de: `die Akkuspannung am letzten offenen Stecker ist noch nicht gemessen; erwartet: ${ranges}.`,
          },
          fields: ['wiring.readings'],
        }),
      ];
    }
    if (wanted.some(({ min, max }) => readV >= min && readV <= max)) return [];
    const near = (share: number) =>
      wanted.some(({ min, max }) => readV >= share * min && readV <= share * max);
    const cause =
      readV < 0
        ? { en: 'The poles are reversed.', de: 'Die Pole sind vertauscht.' }
        : near(0.5)
          ? {
              en: 'That is half: blocks in parallel instead of in series, or one block missing.',
              de: 'Das ist die Hälfte: Blöcke parallel statt in Reihe, oder ein Block fehlt.',
            }
          : near(2)
            ? {
                en: 'That is double: blocks in series instead of in parallel.',
                de: 'Das ist das Doppelte: Blöcke in Reihe statt parallel.',
              }
            : {
                en: 'It is another pack, or it is deeply discharged.',
                de: 'Es ist ein anderer Akku, oder er ist tiefentladen.',
              };
    return [
      voice.finding({
        what: {
          en: `The meter reads ${voice.say(readV, 'V')} at the last connector; expected: ${ranges}. ${cause.en}`,
          de: `Das Messgerät zeigt ${voice.say(readV, 'V')} am letzten Stecker; erwartet: ${ranges}. ${cause.de}`,
        },
        consequence: {
          en: 'Closing it destroys controller, converter or charger at once, or makes them burn.',
          de: 'Das Schließen zerstört Steuerung, Wandler oder Ladegerät sofort oder setzt sie in Brand.',
        },
        remedy: {
          en: 'Do not close the connector. Follow the links from block to block and read again.',
          de: 'Den Stecker nicht schließen. Die Verbinder von Block zu Block verfolgen und neu messen.',
        },
        facts: [[{ en: 'reading', de: 'Messwert' }, readV, 'V']],
        fields: [`wiring.readings.${index}.value`],
      }),
    ];
  },
);
