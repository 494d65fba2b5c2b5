import type { Language } from '../../plan/language.ts';
import { formatFixed, formatSignificant } from '../../units/index.ts';
import type { CurveParameterName } from './curve-parameters.ts';

/** What the rating of a block leaves open or contradicts. */
export type RatingRemark =
  | { readonly kind: 'point-missed'; readonly hours: number; readonly percent: number }
  | { readonly kind: 'curve-missed'; readonly currentA: number; readonly rmsMv: number }
  | { readonly kind: 'not-told'; readonly value: CurveParameterName }
  | { readonly kind: 'rest-assumed-below'; readonly chargePercent: number }
  | {
      readonly kind: 'label-contradicted';
      readonly labelAh: number;
      readonly shownAh: number;
      readonly hours: number;
    }
  | {
      readonly kind: 'exponent-assumed';
      readonly low: number;
      readonly likely: number;
      readonly high: number;
    }
  | { readonly kind: 'resistance-assumed' }
  | { readonly kind: 'shape-assumed' };

const values: Readonly<Record<Language, Readonly<Record<CurveParameterName, string>>>> = {
  en: {
    capacity: 'the full charge',
    rateLoss: 'the rate loss',
    levelling: 'how fast charge flows after',
    resistance: 'the inner resistance',
    polarisation: 'the polarisation',
    polarisationTime: 'the time of the polarisation',
    knee: 'the knee at the end',
  },
  de: {
    capacity: 'die volle Ladung',
    rateLoss: 'den Ratenverlust',
    levelling: 'das Nachfließen der Ladung',
    resistance: 'den Innenwiderstand',
    polarisation: 'die Polarisation',
    polarisationTime: 'die Zeit der Polarisation',
    knee: 'das Knie am Ende',
  },
};

/** The remark as a sentence. */
export function ratingRemarkText(remark: RatingRemark, language: Language): string {
  const en = language === 'en';
  const figure = (value: number, digits = 3) => formatSignificant(value, digits, language);
  switch (remark.kind) {
    case 'point-missed': {
      const percent = formatFixed(Math.abs(remark.percent), 1, language);
      const more = remark.percent > 0;
      return en
        ? `The model gives ${percent} % ${more ? 'more' : 'less'} than rated over ${figure(remark.hours)} h: the ratings contradict each other or the resistance.`
        : `Das Modell gibt über ${figure(remark.hours)} h ${percent} % ${more ? 'mehr' : 'weniger'} als angegeben: Die Angaben widersprechen einander oder dem Widerstand.`;
    }
    case 'curve-missed':
      return en
        ? `The curve at ${figure(remark.currentA)} A is missed by ${figure(remark.rmsMv, 2)} mV rms: check its readings and the cell count.`
        : `Die Kurve bei ${figure(remark.currentA)} A wird um ${figure(remark.rmsMv, 2)} mV (Effektivwert) verfehlt: Ablesung und Zellenzahl prüfen.`;
    case 'not-told':
      return en
        ? `The rating does not tell ${values.en[remark.value]}; the usual value stands.`
        : `Die Angaben sagen nichts über ${values.de[remark.value]}; der übliche Wert bleibt.`;
    case 'rest-assumed-below':
      return en
        ? `Below ${figure(remark.chargePercent, 2)} % charge the curves tell nothing; the usual shape is carried on.`
        : `Unter ${figure(remark.chargePercent, 2)} % Ladung sagen die Kurven nichts; die übliche Form ist fortgesetzt.`;
    case 'label-contradicted':
      return en
        ? `The curves show ${figure(remark.shownAh)} A·h over ${figure(remark.hours)} h where the label says ${figure(remark.labelAh)}: the curves count.`
        : `Die Kurven zeigen ${figure(remark.shownAh)} A·h über ${figure(remark.hours)} h, das Etikett sagt ${figure(remark.labelAh)}: Es gelten die Kurven.`;
    case 'exponent-assumed':
      return en
        ? `No rating at a second rate: the exponent ${figure(remark.likely)} is assumed, ${figure(remark.low)} to ${figure(remark.high)} is likely.`
        : `Keine Angabe bei einer zweiten Rate: Der Exponent ${figure(remark.likely)} ist angenommen, wahrscheinlich sind ${figure(remark.low)} bis ${figure(remark.high)}.`;
    case 'resistance-assumed':
      return en
        ? 'The inner resistance is not stated; the usual value for this capacity stands.'
        : 'Der Innenwiderstand ist nicht angegeben; es gilt der übliche Wert dieser Kapazität.';
    case 'shape-assumed':
      return en
        ? 'Capacities alone do not tell polarisation, knee and rest voltages; usual values of the chemistry stand.'
        : 'Kapazitäten allein sagen nichts über Polarisation, Knie und Ruhespannungen; es gelten übliche Werte der Chemie.';
  }
}
