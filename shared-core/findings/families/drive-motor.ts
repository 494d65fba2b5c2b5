import { nominalVoltageV } from '../../pack/nominal-voltage.ts';
import { driveTrain } from '../../drive/drive-train.ts';
import type { Rule } from '../rule.ts';
import { optionRule, planRule } from '../rule.ts';
import { driveFacts, mostGear } from './drive-facts.ts';

const undescribed: Rule = planRule(
  {
    id: 'DRV-1',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'Common practice, no source',
    about: {
      en: 'The rules DRV-1 to DRV-6, BRK-1 to BRK-4 and STP-1 to STP-3 need motors, gears, brakes and stop chain.',
      de: 'Die Regeln DRV-1 bis DRV-6, BRK-1 bis BRK-4 und STP-1 bis STP-3 brauchen Motoren, Getriebe, Bremsen und Abschaltkette.',
    },
  },
  ({ plan, options }, voice) => {
    const { drive } = plan.machine;
    if (drive === null) {
      return [
        voice.notChecked({
          missing: {
            en: 'motors, gears, brakes and stop chain are not described.',
            de: 'Motoren, Getriebe, Bremsen und Abschaltkette sind nicht beschrieben.',
          },
          fields: ['machine.drive'],
        }),
      ];
    }
    const built = driveTrain(drive, options[0]?.controller ?? plan.machine.controller, 0);
    if (built.ok) return [];
    return [
      voice.notChecked({
        missing: {
          en: `${built.problem}. ${built.remedy}`,
          de: 'die Motordaten reichen nicht oder widersprechen sich; Leerlaufdrehzahl und Wicklungswiderstand prüfen.',
        },
        fields: [built.path],
      }),
    ];
  },
);

const overvoltage: Rule = optionRule(
  {
    id: 'DRV-1',
    severity: 'stop',
    sourceClass: 'common-practice',
    source: 'Common practice, no source: 1.25 and 1.6 times rated voltage',
    about: {
      en: 'Motors above their rated voltage without a limit',
      de: 'Motoren über ihrer Nennspannung ohne Begrenzung',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { controller, controllerPath, option } = entry;
    const limited =
      controller.motorCurrentLimitA !== null || controller.batteryCurrentLimitA !== null;
    const fewest = Math.min(...facts.drive.gears.map((gear) => gear.motorsInSeries));
    const motorV = nominalVoltageV(option) / fewest;
    const ratio = motorV / facts.drive.motor.ratedVoltageV;
    const { overvoltageWarn, overvoltageStop } = context.plan.thresholds.drive;
    if (ratio <= overvoltageWarn || limited) return [];
    const [volts, times, rated] = [
      voice.say(motorV, 'V'),
      voice.say(ratio, ''),
      voice.say(facts.drive.motor.ratedVoltageV, 'V'),
    ];
    return [
      voice.finding({
        optionId: option.id,
        severity: ratio > overvoltageStop ? 'stop' : 'warn',
        what: {
          en: `Each motor gets ${volts}, ${times} times its rated ${rated}, and nothing limits voltage or current.`,
          de: `Jeder Motor erhält ${volts}, das ${times}-fache seiner Nennspannung von ${rated}, und nichts begrenzt Spannung oder Strom.`,
        },
        consequence: {
          en: 'Speed and held-shaft current rise with the voltage, heat with its square: brushes, windings, magnets and gears fail early.',
          de: 'Drehzahl und Anlaufstrom steigen mit der Spannung, die Wärme mit ihrem Quadrat: Bürsten, Wicklung, Magnete und Getriebe versagen früh.',
        },
        remedy: {
          en: 'Use a controller with a motor current limit, put two motors in series, or choose the lower voltage.',
          de: 'Eine Steuerung mit Motorstrombegrenzung verwenden, zwei Motoren in Reihe schalten oder die niedrigere Spannung wählen.',
        },
        facts: [
          [{ en: 'Voltage at each motor', de: 'Spannung je Motor' }, motorV, 'V'],
          [{ en: 'Times rated', de: 'Vielfaches der Nennspannung' }, ratio, ''],
        ],
        fields: [
          `${controllerPath}.motorCurrentLimitA`,
          `${entry.path}.pack.seriesCount`,
          'machine.drive.motor.ratedVoltageV',
        ],
      }),
    ];
  },
);

const stepStart: Rule = optionRule(
  {
    id: 'DRV-2',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'Common practice, no source: ramp of half a second',
    about: {
      en: 'Full voltage at once on gears that must take it',
      de: 'Volle Spannung auf einen Schlag auf das Getriebe',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { controller, controllerPath, option } = entry;
    const { control } = controller;
    if (control === null || (control.kind === 'pwm' && control.rampUpS === null)) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'how fast the controller ramps up is not stated.',
            de: 'wie schnell die Steuerung hochfährt, ist nicht angegeben.',
          },
          fields: [
            control === null ? `${controllerPath}.control` : `${controllerPath}.control.rampUpS`,
          ],
        }),
      ];
    }
    const rampS = control.kind === 'switch' ? 0 : (control.rampUpS ?? 0);
    const { gentleRampS, overvoltageWarn } = context.plan.thresholds.drive;
    if (rampS >= gentleRampS || controller.motorCurrentLimitA !== null) return [];
    const gear = mostGear(facts.gears, (view) => view.startForceN);
    const over = gear.voltagePercent > 100 * overvoltageWarn;
    const wheelsHold = gear.startSetBy !== 'slip';
    if (!over && !wheelsHold) return [];
    const amps = voice.say(gear.startEachMotorA, 'A');
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `The start comes in ${voice.say(rampS, 's')} with ${amps} in each motor, and ${wheelsHold ? 'the wheels hold it' : 'the motors run above their rated voltage'}.`,
          de: `Der Start kommt in ${voice.say(rampS, 's')} mit ${amps} je Motor, und ${wheelsHold ? 'die Räder halten ihm stand' : 'die Motoren laufen über Nennspannung'}.`,
        },
        consequence: {
          en: `The gears take the whole blow, ${voice.say(gear.startForceN, 'N')} at the tread: teeth strip.`,
          de: `Das Getriebe nimmt den ganzen Schlag auf, ${voice.say(gear.startForceN, 'N')} am Rad: Zähne brechen.`,
        },
        remedy: {
          en: 'Ramp up over half a second or more and limit the motor current.',
          de: 'Über mindestens eine halbe Sekunde hochfahren und den Motorstrom begrenzen.',
        },
        facts: [
          [{ en: 'Ramp', de: 'Rampe' }, rampS, 's'],
          [
            { en: 'Start current of each motor', de: 'Anlaufstrom je Motor' },
            gear.startEachMotorA,
            'A',
          ],
          [{ en: 'Push at the tread', de: 'Schub am Rad' }, gear.startForceN, 'N'],
        ],
        fields: [`${controllerPath}.control.rampUpS`, `${controllerPath}.motorCurrentLimitA`],
      }),
    ];
  },
);

const motorLoad: Rule = optionRule(
  {
    id: 'DRV-3',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: simulated current and one-node winding temperature',
    about: {
      en: 'Motors above their continuous current or temperature in the outing',
      de: 'Motoren über Dauerstrom oder Temperatur auf der Ausfahrt',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { option, study } = entry;
    const driven = study?.run.drive ?? null;
    if (driven === null) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'no leg of this outing is driven with the motor model.',
            de: 'keine Etappe dieser Ausfahrt fährt mit dem Motormodell.',
          },
          fields: [`outings.${context.plan.outings.indexOf(context.outing)}.legs`],
        }),
      ];
    }
    const { motor } = facts.drive;
    const peakC = driven.motorPeakTemperatureC;
    if (peakC === null && motor.ratedCurrentA === null) {
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: "the motor's rated current or thermal resistance is missing.",
            de: 'Nennstrom oder Wärmewiderstand des Motors fehlt.',
          },
          fields: ['machine.drive.motor.ratedCurrentA', 'machine.drive.motor.heatResistanceKPerW'],
        }),
      ];
    }
    const limitC = facts.train.heat?.maximumC ?? Infinity;
    const tooHot = peakC !== null && peakC > limitC;
    const tooMuch = motor.ratedCurrentA !== null && driven.eachMotorRmsA > motor.ratedCurrentA;
    if (!tooHot && !tooMuch) return [];
    const rms = voice.say(driven.eachMotorRmsA, 'A');
    return [
      voice.finding({
        optionId: option.id,
        what: tooHot
          ? {
              en: `The windings reach ${voice.say(peakC, '°C')}; ${voice.say(limitC, '°C')} is allowed.`,
              de: `Die Wicklungen erreichen ${voice.say(peakC, '°C')}; zulässig sind ${voice.say(limitC, '°C')}.`,
            }
          : {
              en: `Each motor carries ${rms} (root mean square); it is rated for ${voice.say(motor.ratedCurrentA ?? 0, 'A')}.`,
              de: `Jeder Motor führt ${rms} (Effektivwert); ausgelegt ist er für ${voice.say(motor.ratedCurrentA ?? 0, 'A')}.`,
            },
        consequence: {
          en: 'Insulation and brushes age fast, magnets weaken, the housing burns skin.',
          de: 'Isolation und Bürsten altern schnell, Magnete werden schwächer, am Gehäuse verbrennt man sich.',
        },
        remedy: {
          en: 'Take the lower gear on grades, lower the motor current limit, carry less, or pause longer.',
          de: 'An Steigungen den kleineren Gang nehmen, die Motorstrombegrenzung senken, weniger laden oder länger pausieren.',
        },
        facts: [
          [
            { en: 'Current of each motor, root mean square', de: 'Effektivstrom je Motor' },
            driven.eachMotorRmsA,
            'A',
          ],
          ...(peakC === null
            ? []
            : [
                [
                  { en: 'Highest winding temperature', de: 'Höchste Wicklungstemperatur' },
                  peakC,
                  '°C',
                ] as const,
              ]),
        ],
        fields: ['machine.drive.motor.ratedCurrentA', `${entry.controllerPath}.motorCurrentLimitA`],
      }),
    ];
  },
);

export const driveMotorRules: readonly Rule[] = [undescribed, overvoltage, stepStart, motorLoad];
