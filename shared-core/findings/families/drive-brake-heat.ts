import { resistorHeat } from '../../drive/resistor-heat.ts';
import type { OptionContext } from '../context.ts';
import type { Rule } from '../rule.ts';
import { optionRule } from '../rule.ts';
import { downhill, hardestStop } from './brake-facts.ts';
import { driveFacts } from './drive-facts.ts';

/** Stops an hour where the run says nothing. Common practice, no source. */
const usualStopsPerHour = 30;

function stopsPerHour({ study }: OptionContext): number {
  const drive = study?.run.drive ?? null;
  return drive === null || study === null || study.run.runTimeMin < 1
    ? usualStopsPerHour
    : (drive.startsDone * 60) / study.run.runTimeMin;
}

const resistorRating: Rule = optionRule(
  {
    id: 'BRK-3',
    severity: 'warn',
    sourceClass: 'handbook',
    source:
      'Short overload of metal-element power resistors: 5 times rated for 5 s, from memory of MIL-PRF-49465',
    about: {
      en: 'Brake resistor against one stop, repeated stops and the descent',
      de: 'Bremswiderstand gegen einen Halt, viele Halte und die Talfahrt',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    const resistor =
      facts?.drive.brakes.onRelease === 'resistor' ? facts.drive.brakes.resistor : null;
    if (facts === null || resistor === null) return [];
    const hardest = hardestStop(facts);
    if (hardest === null) return [];
    const { stop } = hardest;
    const heat = resistorHeat(resistor, stop.resistorJ, stopsPerHour(entry));
    if (heat === null || resistor.ratedPowerW === null) {
      return [
        voice.notChecked({
          optionId: entry.option.id,
          missing: {
            en: "the brake resistor's rated power is missing.",
            de: 'die Nennleistung des Bremswiderstands fehlt.',
          },
          fields: ['machine.drive.brakes.resistor.ratedPowerW'],
        }),
      ];
    }
    const descentW = downhill(facts, context)?.roll.resistorW ?? 0;
    const asks = [
      {
        asked: stop.resistorPeakW,
        allowed: heat.overloadLimitW,
        unit: 'W',
        name: { en: 'the first moment of a stop', de: 'der erste Augenblick eines Halts' },
      },
      {
        asked: stop.resistorJ,
        allowed: heat.pulseLimitJ,
        unit: 'J',
        name: { en: 'one stop', de: 'ein Halt' },
      },
      {
        asked: Math.max(heat.averageW, descentW),
        allowed: resistor.ratedPowerW,
        unit: 'W',
        name: { en: 'the descent or many stops', de: 'Talfahrt oder viele Halte' },
      },
    ];
    return asks
      .filter(({ asked, allowed }) => asked > allowed)
      .map(({ asked, allowed, unit, name }) =>
        voice.finding({
          optionId: entry.option.id,
          what: {
            en: `For ${name.en} the resistor takes ${voice.say(asked, unit)}; it stands ${voice.say(allowed, unit)}.`,
            de: `Der Widerstand nimmt ${voice.say(asked, unit)} auf (${name.de}); er verträgt ${voice.say(allowed, unit)}.`,
          },
          consequence: {
            en: 'It glows, opens, and the brake is gone; what lies beside it can catch fire.',
            de: 'Er glüht, unterbricht, und die Bremse ist weg; was daneben liegt, kann Feuer fangen.',
          },
          remedy: {
            en: 'Take a resistor of higher rating, on metal, away from cables and plastic.',
            de: 'Einen Widerstand höherer Leistung nehmen, auf Metall, fern von Kabeln und Kunststoff.',
          },
          facts: [
            [{ en: 'Asked', de: 'Verlangt' }, asked, unit],
            [{ en: 'Allowed', de: 'Zulässig' }, allowed, unit],
          ],
          fields: ['machine.drive.brakes.resistor.ratedPowerW'],
        }),
      );
  },
);

const regeneration: Rule = optionRule(
  {
    id: 'BRK-4',
    severity: 'warn',
    sourceClass: 'handbook',
    source:
      "Battery and controller makers' sheets: no charge into a full pack, a BMS may open at any time",
    about: {
      en: 'Regeneration into a full pack or one that can open',
      de: 'Rückspeisung in einen vollen Akku oder einen, der trennen kann',
    },
  },
  (entry, voice, { plan }) => {
    const { drive } = plan.machine;
    if (drive === null || drive.brakes.onRelease !== 'regeneration') return [];
    const { option } = entry;
    const opens = option.pack.block.bms !== null;
    const full = option.startPercent > plan.thresholds.drive.nearlyFullPercent;
    if (!opens && !full) return [];
    return [
      voice.finding({
        optionId: option.id,
        what: opens
          ? {
              en: 'Braking feeds the pack, and its BMS can open while it does.',
              de: 'Beim Bremsen wird in den Akku gespeist, und sein BMS kann dabei trennen.',
            }
          : {
              en: `Braking feeds a pack that starts at ${voice.say(option.startPercent, '%')}.`,
              de: `Beim Bremsen wird in einen Akku gespeist, der mit ${voice.say(option.startPercent, '%')} startet.`,
            },
        consequence: opens
          ? {
              en: 'The brake is gone at once and the voltage jumps: the controller can be destroyed.',
              de: 'Die Bremse ist schlagartig weg, und die Spannung springt: Die Steuerung kann zerstört werden.',
            }
          : {
              en: 'The voltage rises above the charge end voltage; the first descent brakes poorly.',
              de: 'Die Spannung steigt über die Ladeschlussspannung; die erste Talfahrt bremst schlecht.',
            },
        remedy: {
          en: 'Keep a mechanical brake that suffices alone; use a controller that moves over to a resistor; charge to 90 % before a descent.',
          de: 'Eine mechanische Bremse behalten, die allein genügt; eine Steuerung verwenden, die auf einen Widerstand ausweicht; vor Talfahrten nur auf 90 % laden.',
        },
        facts: [[{ en: 'Charge at the start', de: 'Ladung am Start' }, option.startPercent, '%']],
        fields: ['machine.drive.brakes.onRelease', `${entry.path}.startPercent`],
      }),
    ];
  },
);

export const brakeHeatRules: readonly Rule[] = [resistorRating, regeneration];
