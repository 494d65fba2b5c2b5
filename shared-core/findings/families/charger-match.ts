import { chemistryTraits } from '../../battery/chemistry.ts';
import { judgeCharger, type ChargerJudgement } from '../../charge/match-charger.ts';
import type { MatchAspect } from '../../charge/match-result.ts';
import type { Words } from '../../plan/language.ts';
import type { FindingContext, OptionContext } from '../context.ts';
import type { Finding, FindingId, Severity, SourceClass } from '../finding.ts';
import { chargerCure } from './charger-cure.ts';
import { currentSides, voltageSides } from './charger-sides.ts';
import { optionRule, type Rule } from '../rule.ts';

/** The match of an option's charger; worked out here where the option was not run. */
function matchOf(entry: OptionContext, context: FindingContext): ChargerJudgement | null {
  const { option, study } = entry;
  if (option.charger === null) return null;
  return judgeCharger(option, option.charger, {
    ambientC: context.outing.ambientC,
    remainingPercent: study?.run.remainingPercent ?? 0,
    thresholds: context.plan.thresholds,
    language: context.language,
  });
}

/** What a family of aspects means, and which fields cure it. */
interface MatchRule {
  readonly id: FindingId;
  readonly severity: Severity;
  readonly sourceClass: SourceClass;
  readonly source: string;
  readonly about: Words;
  readonly consequence: Words;
  readonly remedy: Words;
  /** What follows on one side of the wanted figure, where the side is known; beats `consequence`. */
  readonly bySide?: (
    aspect: MatchAspect['aspect'],
    side: 'above' | 'below',
    family: 'lead' | 'lithium',
  ) => Words;
  /** Field of the option that each aspect rests on. */
  readonly fields: Partial<Record<MatchAspect['aspect'], string>>;
}

/** A rule that turns the aspects of the charger match carrying its identifier into findings and questions. */
function matchRule(frame: MatchRule): Rule {
  return optionRule(frame, (entry, voice, context) => {
    const match = matchOf(entry, context);
    const { option, path } = entry;
    if (match === null) {
      if (frame.id !== 'CHG-1') return [];
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'no charger is entered for this option.',
            de: 'für diese Variante ist kein Ladegerät eingetragen.',
          },
          fields: [`${path}.charger`],
          cures: chargerCure(entry, context),
        }),
      ];
    }
    const { family } = chemistryTraits[option.pack.block.chemistry];
    return match.aspects
      .filter((aspect) => aspect.findingId === frame.id && aspect.verdict !== 'fits')
      .map((aspect): Finding => {
        const field = `${path}.${frame.fields[aspect.aspect] ?? 'charger'}`;
        const cures = curable.has(frame.id) ? chargerCure(entry, context) : [];
        const reason: Words = { en: aspect.reason, de: aspect.reason };
        if (aspect.verdict === 'unknown') {
          return voice.notChecked({
            optionId: option.id,
            missing: lowerFirst(reason),
            fields: [field],
          });
        }
        return voice.finding({
          optionId: option.id,
          what: {
            en: `${option.charger?.name ?? 'Charger'}: ${aspect.reason}`,
            de: `${option.charger?.name ?? 'Ladegerät'}: ${aspect.reason}`,
          },
          consequence:
            aspect.side === undefined
              ? frame.consequence
              : (frame.bySide?.(aspect.aspect, aspect.side, family) ?? frame.consequence),
          remedy: frame.remedy,
          facts: factsOf(aspect.aspect, match, aspect.verdict),
          fields: [field],
          cures,
        });
      });
  });
}

/** Another charger cures these; against the cold there is none. */
const curable: ReadonlySet<FindingId> = new Set(['CHG-1', 'CHG-2', 'CHG-3']);

/** A sentence that follows a colon starts small in English; German nouns keep their size. */
function lowerFirst(words: Words): Words {
  return { en: words.en.replace(/^[TW](he|hat) /, (start) => start.toLowerCase()), de: words.de };
}

function factsOf(
  aspect: MatchAspect['aspect'],
  match: ChargerJudgement,
  verdict: MatchAspect['verdict'],
): readonly (readonly [Words, number, string])[] {
  if (aspect !== 'end-voltage' || verdict === 'unknown' || match.givenEndVoltageV === null)
    return [];
  return [
    [{ en: 'end voltage given', de: 'gegebene Endspannung' }, match.givenEndVoltageV, 'V'],
    [{ en: 'end voltage wanted', de: 'gewünschte Endspannung' }, match.wantedEndVoltageV, 'V'],
  ];
}

const kind = matchRule({
  id: 'CHG-1',
  severity: 'stop',
  sourceClass: 'handbook',
  source:
    'Label of the charger against chemistry and cell count of the pack; equal volts are not enough',
  about: {
    en: 'Chemistry or cell count of charger and pack do not match.',
    de: 'Chemie oder Zellenzahl von Ladegerät und Akku passen nicht.',
  },
  consequence: {
    en: 'The pack is overcharged or never full; lithium charged by the wrong charger can burn.',
    de: 'Der Akku wird überladen oder nie voll; Lithium am falschen Ladegerät kann brennen.',
  },
  remedy: {
    en: 'Use a charger made for this chemistry and cell count.',
    de: 'Ein Ladegerät für diese Chemie und Zellenzahl verwenden.',
  },
  fields: { chemistry: 'charger.chemistries', 'cell-count': 'charger.cellGroups' },
});

const voltage = matchRule({
  id: 'CHG-2',
  severity: 'warn',
  sourceClass: 'handbook',
  source:
    "Makers' charge voltages at 25 °C with temperature compensation; no float and no pulses on lithium",
  about: {
    en: 'End or float voltage is off, lithium is floated, or pulses are sent.',
    de: 'End- oder Erhaltungsspannung liegt daneben, Lithium wird erhaltungsgeladen oder es werden Pulse gesendet.',
  },
  consequence: {
    en: 'Too high dries out or ages the cells, too low leaves them short of full and sulphated; either shortens their life.',
    de: 'Zu hoch trocknet oder altert die Zellen, zu niedrig lässt sie unvoll und sulfatiert; beides verkürzt ihr Leben.',
  },
  remedy: {
    en: 'Choose a charger (or its mode) for this battery, with temperature compensation where it is charged in the cold or heat.',
    de: 'Ein Ladegerät (oder dessen Betriebsart) für diese Batterie wählen, mit Temperaturausgleich, wo bei Kälte oder Hitze geladen wird.',
  },
  bySide: voltageSides,
  fields: {
    chemistry: 'charger.chemistries',
    'end-voltage': 'charger.endVoltageV',
    'float-voltage': 'charger.floatVoltageV',
    pulses: 'charger.equalises',
  },
});

const current = matchRule({
  id: 'CHG-3',
  severity: 'warn',
  sourceClass: 'handbook',
  source:
    'Lead 0.1 to 0.3 of its capacity in amperes, lithium by its sheet and BMS; limit of port and lead',
  about: {
    en: 'The charge current is outside what pack, port or lead take.',
    de: 'Der Ladestrom liegt außerhalb dessen, was Akku, Buchse oder Leitung vertragen.',
  },
  consequence: {
    en: 'Too much heats pack, plug or lead, or makes the BMS open; too little takes more than a night and leaves lead unstirred.',
    de: 'Zu viel erhitzt Akku, Stecker oder Leitung oder lässt das BMS öffnen; zu wenig dauert länger als eine Nacht und lässt Blei geschichtet.',
  },
  remedy: {
    en: 'Choose a charger within the limits, or a stronger port.',
    de: 'Ein Ladegerät innerhalb der Grenzen wählen oder eine stärkere Buchse.',
  },
  bySide: currentSides,
  fields: { current: 'charger.currentA', port: 'portLimitA' },
});

const cold = matchRule({
  id: 'CHG-4',
  severity: 'stop',
  sourceClass: 'handbook',
  source:
    'Cell makers: no charge of lithium below 0 °C; acid of a flat lead block freezes below about -10 °C',
  about: {
    en: 'Lithium is charged below 0 °C, or flat lead may be frozen.',
    de: 'Lithium wird unter 0 °C geladen, oder leeres Blei kann gefroren sein.',
  },
  consequence: {
    en: 'Lithium metal plates out and pierces the cell later; a frozen lead block bursts.',
    de: 'Metallisches Lithium scheidet sich ab und durchsticht später die Zelle; ein gefrorener Bleiblock platzt.',
  },
  remedy: {
    en: 'Warm pack and charger above 5 °C before plugging in.',
    de: 'Akku und Ladegerät vor dem Anstecken über 5 °C wärmen.',
  },
  fields: { temperature: 'charger' },
});

export const chargerMatchRules: readonly Rule[] = [kind, voltage, current, cold];
