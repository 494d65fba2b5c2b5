import { chemistryTraits } from '../../battery/chemistry.ts';
import { packGroups } from '../../charge/charge-wishes.ts';
import { planRule, type Rule } from '../rule.ts';

const riderCare: Rule = planRule(
  {
    id: 'RID-1',
    severity: 'note',
    sourceClass: 'common-practice',
    source: 'Usual care with small machines. Common practice, no source',
    about: {
      en: 'Hold-down, roll-over, supervision, protective gear, first drive.',
      de: 'Befestigung, Kippen, Aufsicht, Schutz, erste Fahrt.',
    },
  },
  ({ options }, voice) => {
    const masses = options
      .map(
        ({ option }) =>
          (option.pack.block.massKg ?? 0) * option.pack.seriesCount * option.pack.parallelCount,
      )
      .filter((mass) => mass > 0);
    const heaviest = Math.max(0, ...masses);
    const shown =
      heaviest > 0
        ? { en: ` (up to ${voice.say(heaviest, 'kg')})`, de: ` (bis ${voice.say(heaviest, 'kg')})` }
        : { en: '', de: '' };
    return [
      voice.finding({
        what: {
          en: `Strap the pack${shown.en} down so that it stays in place when the machine tips.`,
          de: `Den Akku${shown.de} so festzurren, dass er beim Kippen an seinem Platz bleibt.`,
        },
        consequence: {
          en: 'A loose pack shifts the balance, tears its cables and shorts on the frame.',
          de: 'Ein loser Akku verschiebt das Gleichgewicht, reißt Kabel ab und schließt am Rahmen kurz.',
        },
        remedy: {
          en: 'Try it first with dead weight and wheels up; helmet, shoes and an adult beside a young rider; keep hands off moving wheels.',
          de: 'Erst mit totem Gewicht und freien Rädern probieren; Helm, Schuhe und bei jungen Fahrern ein Erwachsener daneben; Hände weg von drehenden Rädern.',
        },
        fields: ['machine.bay'],
      }),
    ];
  },
);

/** Supply limit of electric toys in the European Union [V]: directive 2009/48/EC, annex II, part IV, point 1. */
const toyLimitV = 24;

const lawNote: Rule = planRule(
  {
    id: 'LAW-1',
    severity: 'note',
    sourceClass: 'standard',
    source:
      'EU directive 2009/48/EC, annex II part IV: electric toys at most 24 V direct current nominal; other rules differ by place',
    about: {
      en: 'Toy, mobility and road rules may apply.',
      de: 'Regeln für Spielzeug, Mobilität und Straße können gelten.',
    },
  },
  ({ options }, voice) => {
    const above = options.flatMap(({ option }) => {
      const nominalV =
        packGroups(option.pack) * chemistryTraits[option.pack.block.chemistry].nominalV;
      // A pack of the 24 V class (25.6 V LFP) is sold as 24 V; only the next class is plainly above.
      return nominalV > toyLimitV + 2 ? [{ option, nominalV }] : [];
    });
    const highest = above.toSorted((a, b) => b.nominalV - a.nominalV)[0];
    return [
      voice.finding({
        ...(highest === undefined ? {} : { optionId: highest.option.id }),
        what:
          highest === undefined
            ? {
                en: `Rules for toys, mobility aids or road use may apply to this machine; for toys in the EU the supply limit is ${toyLimitV} V nominal.`,
                de: `Für diese Maschine können Regeln für Spielzeug, Hilfsmittel oder Straße gelten; bei Spielzeug liegt die Versorgungsgrenze in der EU bei ${toyLimitV} V nominal.`,
              }
            : {
                en: `${voice.say(highest.nominalV, 'V')} nominal is above the ${toyLimitV} V that EU rules allow a toy.`,
                de: `${voice.say(highest.nominalV, 'V')} nominal liegen über den ${toyLimitV} V, die EU-Regeln einem Spielzeug erlauben.`,
              },
        consequence: {
          en: 'A rebuilt machine may lose its conformity, its insurance cover or its leave to be used in public.',
          de: 'Eine umgebaute Maschine kann Konformität, Versicherungsschutz oder Zulassung verlieren.',
        },
        remedy: {
          en: "Ask locally before use in public. Local codes, makers' instructions and licensed practice come first.",
          de: 'Vor Nutzung im öffentlichen Raum vor Ort nachfragen. Örtliche Vorschriften, Herstellerangaben und Fachleute gehen vor.',
        },
        facts:
          highest === undefined
            ? []
            : [[{ en: 'nominal voltage', de: 'Nennspannung' }, highest.nominalV, 'V']],
        fields: ['machine.note'],
      }),
    ];
  },
);

export const careRules: readonly Rule[] = [riderCare, lawNote];
