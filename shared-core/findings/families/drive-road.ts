import type { RunResult } from '../../run/result.ts';
import { packMassKg } from '../../pack/pack-mass.ts';
import type { Rule } from '../rule.ts';
import { optionRule } from '../rule.ts';
import { driveFacts, mostGear } from './drive-facts.ts';

const climb: Rule = optionRule(
  {
    id: 'DRV-4',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: push at the current limit against slope and rolling resistance',
    about: { en: 'Will it climb the steepest grade?', de: 'Kommt sie die steilste Stelle hinauf?' },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { option } = entry;
    const grade = facts.drive.steepestGradePercent;
    if (grade === null) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'the steepest grade is not stated.',
            de: 'die steilste Stelle ist nicht angegeben.',
          },
          fields: ['machine.drive.steepestGradePercent'],
        }),
      ];
    }
    if (packMassKg(option.pack) === null) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: { en: 'the mass of the blocks is missing.', de: 'die Masse der Blöcke fehlt.' },
          fields: [`${entry.path}.pack.block.massKg`],
        }),
      ];
    }
    const best = mostGear(facts.gears, (gear) => gear.climbLimitPercent);
    if (best.climbLimitPercent >= grade) return [];
    const slips = best.startSetBy === 'slip';
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `It climbs ${voice.say(best.climbLimitPercent, '%')} at most (gear "${best.gearName}"); the steepest grade is ${voice.say(grade, '%')}.`,
          de: `Sie schafft höchstens ${voice.say(best.climbLimitPercent, '%')} (Gang „${best.gearName}“); die steilste Stelle hat ${voice.say(grade, '%')}.`,
        },
        consequence: slips
          ? {
              en: 'The driven wheels slip and it stops on the slope.',
              de: 'Die Antriebsräder drehen durch, und sie bleibt am Hang stehen.',
            }
          : {
              en: 'It stops on the slope with full current in a motor that stands still: the winding burns within a minute or two.',
              de: 'Sie bleibt am Hang mit vollem Strom im stehenden Motor stehen: Die Wicklung verbrennt in ein, zwei Minuten.',
            },
        remedy: slips
          ? {
              en: 'More weight on the driven wheels or a better tread; carry less.',
              de: 'Mehr Gewicht auf die Antriebsräder oder besseres Profil; weniger laden.',
            }
          : {
              en: 'A higher ratio, motors in series, a higher motor current limit where the motor stands it, or less load.',
              de: 'Größere Übersetzung, Motoren in Reihe, höhere Motorstrombegrenzung, falls der Motor sie verträgt, oder weniger Last.',
            },
        facts: [
          [{ en: 'Climbs at most', de: 'Schafft höchstens' }, best.climbLimitPercent, '%'],
          [{ en: 'Steepest grade', de: 'Steilste Stelle' }, grade, '%'],
          [{ en: 'Push at the tread', de: 'Schub am Rad' }, best.startForceN, 'N'],
        ],
        fields: [
          'machine.drive.steepestGradePercent',
          `${entry.controllerPath}.motorCurrentLimitA`,
          'machine.drive.gears',
        ],
      }),
    ];
  },
);

/** A target missed for more than this share of the time rolled is not a slow start. */
const missedShare = 0.1;

/** A controller's limit holds to about this. Common practice, no source. */
const meterShare = 1.005;

/** Largest current through the controller: accessories pass it by. Runs without a time course know only the pack's. */
function controllerPeakA({ series, peakCurrentA }: RunResult): number {
  let peak = 0;
  for (const current of series.motorCurrentA) peak = Math.max(peak, current);
  return peak > 0 ? peak : peakCurrentA;
}

const controllerRange: Rule = optionRule(
  {
    id: 'DRV-5',
    severity: 'warn',
    sourceClass: 'handbook',
    source: "Controller makers' sheets: supply range and current limits",
    about: {
      en: 'Controller against pack voltage and the current the outing asks',
      de: 'Steuerung gegen Akkuspannung und Strombedarf der Ausfahrt',
    },
  },
  (entry, voice) => {
    const { option, controller, controllerPath, study } = entry;
    if (study === null) return [];
    const found = [];
    const { maximumVoltageV, minimumVoltageV, batteryCurrentLimitA, cutoffVoltageV } = controller;
    const fullV = study.fullRestVoltageV;
    const shared = {
      optionId: option.id,
      remedy: {
        en: 'Choose a controller rated for this pack and this outing.',
        de: 'Eine Steuerung wählen, die für diesen Akku und diese Ausfahrt ausgelegt ist.',
      },
    };
    if (maximumVoltageV === null) {
      found.push(
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: "the controller's highest supply voltage is missing.",
            de: 'die höchste Eingangsspannung der Steuerung fehlt.',
          },
          fields: [`${controllerPath}.maximumVoltageV`],
        }),
      );
    } else if (fullV > maximumVoltageV) {
      found.push(
        voice.finding({
          ...shared,
          what: {
            en: `The full pack stands at ${voice.say(fullV, 'V')}; the controller takes ${voice.say(maximumVoltageV, 'V')}.`,
            de: `Der volle Akku hat ${voice.say(fullV, 'V')}; die Steuerung verträgt ${voice.say(maximumVoltageV, 'V')}.`,
          },
          consequence: {
            en: 'Its capacitors and transistors fail, often shorted: full power without a pedal.',
            de: 'Kondensatoren und Transistoren versagen, oft mit Kurzschluss: volle Leistung ohne Pedal.',
          },
          facts: [[{ en: 'Full pack at rest', de: 'Voller Akku in Ruhe' }, fullV, 'V']],
          fields: [`${controllerPath}.maximumVoltageV`],
        }),
      );
    }
    if (minimumVoltageV !== null && cutoffVoltageV !== null && cutoffVoltageV < minimumVoltageV) {
      found.push(
        voice.finding({
          ...shared,
          what: {
            en: `The cutoff of ${voice.say(cutoffVoltageV, 'V')} lies below the ${voice.say(minimumVoltageV, 'V')} the controller needs.`,
            de: `Die Abschaltung bei ${voice.say(cutoffVoltageV, 'V')} liegt unter den ${voice.say(minimumVoltageV, 'V')}, die die Steuerung braucht.`,
          },
          consequence: {
            en: 'It resets or misfires before it would cut off.',
            de: 'Er setzt aus oder zurück, bevor er abschalten würde.',
          },
          facts: [[{ en: 'Cutoff', de: 'Abschaltung' }, cutoffVoltageV, 'V']],
          fields: [`${controllerPath}.cutoffVoltageV`, `${controllerPath}.minimumVoltageV`],
        }),
      );
    }
    const { drive } = study.run;
    const peakA = controllerPeakA(study.run);
    if (
      drive === null &&
      batteryCurrentLimitA !== null &&
      peakA > meterShare * batteryCurrentLimitA
    ) {
      found.push(
        voice.finding({
          ...shared,
          what: {
            en: `The outing asks for ${voice.say(peakA, 'A')}; the controller passes ${voice.say(batteryCurrentLimitA, 'A')}.`,
            de: `Die Ausfahrt verlangt ${voice.say(peakA, 'A')}; die Steuerung lässt ${voice.say(batteryCurrentLimitA, 'A')} durch.`,
          },
          consequence: {
            en: 'It starts and climbs weaker than planned.',
            de: 'Sie fährt schwächer an und bergauf als geplant.',
          },
          facts: [[{ en: 'Peak current', de: 'Spitzenstrom' }, peakA, 'A']],
          fields: [`${controllerPath}.batteryCurrentLimitA`],
        }),
      );
    }
    const rolledS =
      drive === null || drive.rollingSpeedKmh === 0
        ? 0
        : (drive.distanceKm / drive.rollingSpeedKmh) * 3600;
    // Standing still is DRV-4's to say.
    const slowS = drive === null ? 0 : drive.belowTargetS - drive.stalledS;
    if (slowS > missedShare * rolledS && slowS > 5) {
      const missed = voice.say(slowS / 60, 'min');
      found.push(
        voice.finding({
          ...shared,
          what: {
            en: `For ${missed} of the run the target speed is not held: voltage or current limit is too low.`,
            de: `${missed} der Fahrt wird die Zielgeschwindigkeit nicht gehalten: Spannung oder Strombegrenzung ist zu niedrig.`,
          },
          consequence: {
            en: 'It crawls at full current; motor and controller heat up.',
            de: 'Sie kriecht mit vollem Strom; Motor und Steuerung werden heiß.',
          },
          facts: [
            [{ en: 'Below target speed', de: 'Unter Zielgeschwindigkeit' }, slowS / 60, 'min'],
          ],
          fields: [
            `${controllerPath}.batteryCurrentLimitA`,
            `${controllerPath}.motorCurrentLimitA`,
          ],
        }),
      );
    }
    return found;
  },
);

const speed: Rule = optionRule(
  {
    id: 'DRV-6',
    severity: 'warn',
    sourceClass: 'standard',
    source:
      'Limit set in the plan; scope for comparison: Regulation (EU) 168/2013 leaves out vehicles that cannot exceed 6 km/h. Local rules come first.',
    about: {
      en: 'Top speed against the speed allowed for the rider',
      de: 'Höchstgeschwindigkeit gegen die für den Fahrer erlaubte',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { option } = entry;
    const limit = facts.drive.speedLimitKmh;
    if (limit === null) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'the speed allowed for the rider is not stated.',
            de: 'die für den Fahrer erlaubte Geschwindigkeit ist nicht angegeben.',
          },
          fields: ['machine.drive.speedLimitKmh'],
        }),
      ];
    }
    const fastest = mostGear(facts.gears, (gear) => gear.topSpeedKmh);
    const top = Math.max(fastest.topSpeedKmh, entry.study?.run.drive?.topSpeedKmh ?? 0);
    if (top <= limit) return [];
    const energy = (top / limit) ** 2;
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `It can do ${voice.say(top, 'km/h')} (gear "${fastest.gearName}"); ${voice.say(limit, 'km/h')} is allowed.`,
          de: `Sie kann ${voice.say(top, 'km/h')} fahren (Gang „${fastest.gearName}“); erlaubt sind ${voice.say(limit, 'km/h')}.`,
        },
        consequence: {
          en: `The energy in a fall or crash grows with the square of speed: ${voice.say(energy, '')} times that at the limit. Brakes and rider may not be up to it.`,
          de: `Die Energie bei Sturz oder Aufprall wächst mit dem Quadrat der Geschwindigkeit: das ${voice.say(energy, '')}-fache gegenüber der Grenze. Bremsen und Fahrer sind dem vielleicht nicht gewachsen.`,
        },
        remedy: {
          en: 'Limit the duty or the speed in the controller, lock the fast gear, or choose the lower voltage. Ask which rules hold where it is ridden.',
          de: 'Aussteuerung oder Geschwindigkeit in der Steuerung begrenzen, den schnellen Gang sperren oder die niedrigere Spannung wählen. Erfragen, welche Vorschriften am Ort gelten.',
        },
        facts: [
          [{ en: 'Top speed', de: 'Höchstgeschwindigkeit' }, top, 'km/h'],
          [{ en: 'Allowed', de: 'Erlaubt' }, limit, 'km/h'],
          [{ en: 'Energy against the limit', de: 'Energie gegenüber der Grenze' }, energy, 'x'],
        ],
        fields: [
          'machine.drive.speedLimitKmh',
          `${entry.path}.pack.seriesCount`,
          'machine.drive.gears',
        ],
      }),
    ];
  },
);

export const driveRoadRules: readonly Rule[] = [climb, controllerRange, speed];
