import type { Language } from '../plan/language.ts';
import type { Fuse } from '../plan/schema/wiring-branch.ts';
import { formatSignificant } from '../units/index.ts';
import type { CoordinationReading, CurrentMark } from './coordination.ts';
import { fuseOpening } from './fuse-opening.ts';
import type { BranchStudy } from './wiring-study.ts';

interface CurrentRange {
  readonly fromA: number;
  readonly toA: number;
}

interface WordInputs {
  readonly fuse: Fuse;
  readonly wire: BranchStudy;
  /** Currents at which the insulation is destroyed before the fuse surely opens. */
  readonly wireExposedA: CurrentRange | null;
  /** Currents at which the wire passes its rated temperature before the fuse surely opens. */
  readonly wireWarmA: CurrentRange | null;
  readonly ratedC: number;
  readonly marks: readonly CurrentMark[];
  readonly language: Language;
}

/** What the chart says, in words: which curve lies left of which, and what follows. */
export function coordinationWords(inputs: WordInputs): CoordinationReading[] {
  return [
    wireWords(inputs),
    ...warmWords(inputs),
    ...inputs.marks.flatMap((mark) => markWords(mark, inputs)),
  ];
}

function wireWords({ fuse, wire, wireExposedA, language }: WordInputs): CoordinationReading {
  const say = (value: number) => formatSignificant(value, 3, language);
  if (wireExposedA !== null) {
    const { fromA, toA } = wireExposedA;
    return {
      verdict: 'stop',
      text: {
        en: `Between ${say(fromA)} and ${say(toA)} A the wire's harm lies left of the fuse: the insulation is destroyed before the ${say(fuse.ratedA)} A fuse surely opens.`,
        de: `Zwischen ${say(fromA)} und ${say(toA)} A liegt der Schaden der Leitung links von der Sicherung: die Isolierung ist zerstört, bevor die Sicherung ${say(fuse.ratedA)} A sicher öffnet.`,
      }[language],
    };
  }
  if (fuse.ratedA > wire.ampacityA) {
    return {
      verdict: 'warn',
      text: {
        en: `The fuse opens before the insulation is destroyed, but its ${say(fuse.ratedA)} A lie right of the ${say(wire.ampacityA)} A the wire carries without end: a lasting overload overheats the wire and the fuse holds.`,
        de: `Die Sicherung öffnet, bevor die Isolierung zerstört ist, doch ihre ${say(fuse.ratedA)} A liegen rechts der ${say(wire.ampacityA)} A, die die Leitung auf Dauer trägt: eine dauernde Überlast überhitzt die Leitung, und die Sicherung hält.`,
      }[language],
    };
  }
  return {
    verdict: 'good',
    text: {
      en: `The fuse lies left of the wire’s harm at every current: ${say(fuse.ratedA)} A rating, ${say(wire.ampacityA)} A wire.`,
      de: `Die Sicherung liegt bei jedem Strom links vom Schaden der Leitung: Nennstrom ${say(fuse.ratedA)} A, Leitung ${say(wire.ampacityA)} A.`,
    }[language],
  };
}

/** Between rating and harm lies a stretch in which a wire runs warmer than its rating for a while and stands it. */
function warmWords({
  wireExposedA,
  wireWarmA,
  ratedC,
  language,
}: WordInputs): CoordinationReading[] {
  if (wireExposedA !== null || wireWarmA === null) return [];
  const say = (value: number) => formatSignificant(value, 3, language);
  const { fromA, toA } = wireWarmA;
  return [
    {
      verdict: 'good',
      text: {
        en: `From ${say(fromA)} to ${say(toA)} A the wire may pass its ${ratedC} °C before the fuse surely opens; the insulation ages a little and stands it.`,
        de: `Von ${say(fromA)} bis ${say(toA)} A kann die Leitung ihre ${ratedC} °C überschreiten, bevor die Sicherung sicher öffnet; die Isolierung altert etwas und hält.`,
      }[language],
    },
  ];
}

function markWords(mark: CurrentMark, { fuse, wire, language }: WordInputs): CoordinationReading[] {
  const say = (value: number) => formatSignificant(value, 3, language);
  const { earliestS, latestS } = fuseOpening(fuse, mark.currentA);
  const reading = (
    verdict: CoordinationReading['verdict'],
    en: string,
    de: string,
  ): CoordinationReading[] => [{ verdict, text: { en, de }[language] }];
  switch (mark.kind) {
    case 'cruising':
    case 'charge': {
      const name =
        mark.kind === 'cruising'
          ? { en: 'Cruising', de: 'Fahrt' }
          : { en: 'Charging', de: 'Laden' };
      const percent = (100 * mark.currentA) / fuse.ratedA;
      return percent <= 80
        ? reading(
            'good',
            `${name.en} lies left of the fuse: ${say(mark.currentA)} A is ${say(percent)} % of its rating.`,
            `${name.de} liegt links der Sicherung: ${say(mark.currentA)} A sind ${say(percent)} % ihres Nennstroms.`,
          )
        : reading(
            'warn',
            `${name.en} presses on the fuse: ${say(mark.currentA)} A is ${say(percent)} % of its rating; it warms up and ages.`,
            `${name.de} drückt auf die Sicherung: ${say(mark.currentA)} A sind ${say(percent)} % ihres Nennstroms; sie wird warm und altert.`,
          );
    }
    case 'start': {
      const lasts = mark.timeS ?? 0;
      return earliestS > lasts
        ? reading(
            'good',
            `The start (${say(mark.currentA)} A for ${say(lasts)} s) lies left of the fuse: it holds.`,
            `Der Anlauf (${say(mark.currentA)} A für ${say(lasts)} s) liegt links der Sicherung: sie hält.`,
          )
        : latestS > lasts
          ? reading(
              'warn',
              `The start (${say(mark.currentA)} A for ${say(lasts)} s) lies inside the fuse's band: it may open.`,
              `Der Anlauf (${say(mark.currentA)} A für ${say(lasts)} s) liegt im Band der Sicherung: sie kann öffnen.`,
            )
          : reading(
              'warn',
              `The start (${say(mark.currentA)} A for ${say(lasts)} s) lies right of the fuse: it opens at every start.`,
              `Der Anlauf (${say(mark.currentA)} A für ${say(lasts)} s) liegt rechts der Sicherung: sie öffnet bei jedem Anlauf.`,
            );
    }
    case 'limit':
      return mark.currentA <= fuse.ratedA
        ? reading(
            'good',
            `The controller's limit of ${say(mark.currentA)} A lies left of the fuse: a long climb does not open it.`,
            `Die Grenze der Steuerung von ${say(mark.currentA)} A liegt links der Sicherung: eine lange Steigung öffnet sie nicht.`,
          )
        : reading(
            'warn',
            `The controller's limit of ${say(mark.currentA)} A lies right of the ${say(fuse.ratedA)} A rating: a long climb may open the fuse${Number.isFinite(earliestS) ? ` after ${say(earliestS)} s` : ''}.`,
            `Die Grenze der Steuerung von ${say(mark.currentA)} A liegt rechts der ${say(fuse.ratedA)} A: eine lange Steigung kann die Sicherung öffnen${Number.isFinite(earliestS) ? ` (nach ${say(earliestS)} s)` : ''}.`,
          );
    case 'stall':
      return Number.isFinite(latestS)
        ? reading(
            'good',
            `Motors held fast draw ${say(mark.currentA)} A here: the fuse opens after ${say(earliestS)} to ${say(latestS)} s.`,
            `Blockierte Motoren ziehen hier ${say(mark.currentA)} A: die Sicherung öffnet nach ${say(earliestS)} bis ${say(latestS)} s.`,
          )
        : reading(
            'warn',
            `Motors held fast draw ${say(mark.currentA)} A here, left of the fuse: it will not open, only a current limit saves the motor.`,
            `Blockierte Motoren ziehen hier ${say(mark.currentA)} A, links der Sicherung: sie öffnet nicht, nur eine Strombegrenzung rettet den Motor.`,
          );
    case 'runaway':
      return Number.isFinite(latestS)
        ? reading(
            'good',
            `A controller failed shorted with motors held fast drives ${say(mark.currentA)} A: the fuse opens within ${say(latestS)} s.`,
            `Eine durchlegierte Steuerung mit blockierten Motoren treibt ${say(mark.currentA)} A: die Sicherung öffnet binnen ${say(latestS)} s.`,
          )
        : reading(
            'warn',
            `A controller failed shorted drives ${say(mark.currentA)} A, which the fuse may carry for ever: only the isolator ends it.`,
            `Eine durchlegierte Steuerung treibt ${say(mark.currentA)} A, die die Sicherung dauernd tragen kann: nur der Trennschalter beendet das.`,
          );
    case 'fault':
      return Number.isFinite(latestS)
        ? reading(
            wire.areaMm2 * 1.01 >= wire.faultAreaMm2 ? 'good' : 'stop',
            `A short at the far end drives ${say(mark.currentA)} A: open within ${say(latestS)} s; that asks for ${say(wire.faultAreaMm2)} mm², the wire has ${say(wire.areaMm2)} mm².`,
            `Ein Kurzschluss am fernen Ende treibt ${say(mark.currentA)} A: offen binnen ${say(latestS)} s; das fordert ${say(wire.faultAreaMm2)} mm², die Leitung hat ${say(wire.areaMm2)} mm².`,
          )
        : reading(
            'stop',
            `A short at the far end drives only ${say(mark.currentA)} A: the fuse may never open.`,
            `Ein Kurzschluss am fernen Ende treibt nur ${say(mark.currentA)} A: die Sicherung öffnet vielleicht nie.`,
          );
  }
}
