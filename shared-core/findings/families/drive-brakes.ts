import type { Rule } from '../rule.ts';
import { optionRule, planRule } from '../rule.ts';
import { downhill, hardestStop, steepestGrade } from './brake-facts.ts';
import { driveFacts } from './drive-facts.ts';

const releaseStop: Rule = optionRule(
  {
    id: 'BRK-1',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: motor as generator into its own winding',
    about: {
      en: 'How hard it stops when the pedal is let go',
      de: 'Wie hart sie bremst, wenn das Pedal losgelassen wird',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { onRelease } = facts.drive.brakes;
    if (onRelease !== 'short' && onRelease !== 'resistor') return [];
    if (onRelease === 'resistor' && facts.drive.brakes.resistor === null) {
      return [
        voice.notChecked({
          optionId: entry.option.id,
          missing: {
            en: "the brake resistor's ohms are missing.",
            de: 'der Widerstandswert des Bremswiderstands fehlt.',
          },
          fields: ['machine.drive.brakes.resistor'],
        }),
      ];
    }
    const hardest = hardestStop(facts);
    if (hardest === null) return [];
    const { stop, topKmh } = hardest;
    const magnetA = facts.drive.motor.maximumCurrentA;
    const limitA = entry.controller.motorCurrentLimitA;
    const overMagnet = magnetA !== null && stop.eachMotorPeakA > magnetA;
    // The controller's bridge carries a short; a resistor of its own does not pass through it.
    const overController = onRelease === 'short' && limitA !== null && stop.peakMotorA > limitA;
    const tooHard = stop.decelerationMps2 > context.plan.thresholds.drive.brakeMps2;
    if (!tooHard && !overMagnet && !overController) return [];
    const [rate, amps, from] = [
      voice.say(stop.decelerationMps2, 'm/s²'),
      voice.say(stop.peakMotorA, 'A'),
      voice.say(topKmh, 'km/h'),
    ];
    return [
      voice.finding({
        optionId: entry.option.id,
        what: {
          en: `Letting the pedal go at ${from} brakes with ${rate} and ${amps}.`,
          de: `Pedal los bei ${from} bremst mit ${rate} und ${amps}.`,
        },
        consequence: tooHard
          ? {
              en: 'The rider is thrown forward or the wheels lock; gears take the same blow.',
              de: 'Der Fahrer wird nach vorn geworfen oder die Räder blockieren; das Getriebe bekommt denselben Schlag.',
            }
          : {
              en: `More than ${overMagnet ? "the motor's magnets and brushes" : 'the controller'} can stand.`,
              de: `Mehr, als ${overMagnet ? 'Magnete und Bürsten des Motors vertragen' : 'die Steuerung verträgt'}.`,
            },
        remedy: {
          en: 'Brake through a (larger) resistor: the sizing helper gives ohms and rating for the deceleration you want.',
          de: 'Über einen (größeren) Widerstand bremsen: Die Auslegungshilfe nennt Ohm und Leistung für die gewünschte Verzögerung.',
        },
        facts: [
          [{ en: 'First deceleration', de: 'Anfangsverzögerung' }, stop.decelerationMps2, 'm/s²'],
          [{ en: 'Peak brake current', de: 'Spitzenstrom beim Bremsen' }, stop.peakMotorA, 'A'],
        ],
        fields: ['machine.drive.brakes.onRelease', 'machine.drive.brakes.resistor.resistanceOhm'],
      }),
    ];
  },
);

const onlyElectric: Rule = optionRule(
  {
    id: 'BRK-2',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: an electric brake needs motion, it never holds',
    about: { en: 'A grade without a brake that holds', de: 'Gefälle ohne Bremse, die hält' },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { brakes } = facts.drive;
    if (brakes.parking !== 'none' || brakes.serviceDecelerationMps2 !== null) return [];
    const down = downhill(facts, context);
    if (down === null) {
      return steepestGrade(context) === null
        ? [
            voice.notChecked({
              optionId: entry.option.id,
              missing: {
                en: 'the steepest grade is not stated.',
                de: 'die steilste Stelle ist nicht angegeben.',
              },
              fields: ['machine.drive.steepestGradePercent'],
            }),
          ]
        : [];
    }
    const { grade, roll } = down;
    if (roll.creepMps === 0) return [];
    const free = !Number.isFinite(roll.creepMps);
    const kmh = roll.creepMps * 3.6;
    return [
      voice.finding({
        optionId: entry.option.id,
        what: free
          ? {
              en: `On ${voice.say(grade, '%')} nothing holds the machine: it rolls away.`,
              de: `Bei ${voice.say(grade, '%')} hält nichts die Maschine: Sie rollt davon.`,
            }
          : {
              en: `On ${voice.say(grade, '%')} the electric brake lets it creep at ${voice.say(kmh, 'km/h')}; it never holds.`,
              de: `Bei ${voice.say(grade, '%')} lässt die elektrische Bremse sie mit ${voice.say(kmh, 'km/h')} kriechen; sie hält nie.`,
            },
        consequence: {
          en: 'Parked on the slope it runs into people or off the path.',
          de: 'Am Hang abgestellt, rollt sie in Menschen oder vom Weg.',
        },
        remedy: {
          en: 'Fit a mechanical brake that holds the loaded machine, and a parking brake.',
          de: 'Eine mechanische Bremse anbauen, die die beladene Maschine hält, und eine Feststellbremse.',
        },
        facts: [
          [{ en: 'Grade', de: 'Gefälle' }, grade, '%'],
          ...(free ? [] : [[{ en: 'Creeps at', de: 'Kriecht mit' }, kmh, 'km/h'] as const]),
        ],
        fields: ['machine.drive.brakes.parking', 'machine.drive.brakes.serviceDecelerationMps2'],
      }),
    ];
  },
);

/** A machine that only coasts and has no service brake at all. */
const noBrake: Rule = planRule(
  {
    id: 'BRK-2',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'Common practice, no source',
    about: { en: 'Nothing slows the machine', de: 'Nichts bremst die Maschine' },
  },
  ({ plan }, voice) => {
    const { drive } = plan.machine;
    if (
      drive === null ||
      drive.brakes.onRelease !== 'coast' ||
      drive.brakes.serviceDecelerationMps2 !== null
    )
      return [];
    return [
      voice.finding({
        what: {
          en: 'The motor coasts when the pedal is let go and there is no service brake.',
          de: 'Der Motor läuft beim Loslassen frei aus, und es gibt keine Betriebsbremse.',
        },
        consequence: {
          en: 'Only rolling resistance stops it.',
          de: 'Nur der Rollwiderstand hält sie an.',
        },
        remedy: {
          en: 'Fit a service brake, or brake through a resistor and keep a parking brake.',
          de: 'Eine Betriebsbremse anbauen oder über einen Widerstand bremsen und eine Feststellbremse behalten.',
        },
        fields: ['machine.drive.brakes.serviceDecelerationMps2', 'machine.drive.brakes.onRelease'],
      }),
    ];
  },
);

export const driveBrakeRules: readonly Rule[] = [releaseStop, onlyElectric, noBrake];
