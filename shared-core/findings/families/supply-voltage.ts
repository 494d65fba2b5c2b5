import { highestChargeVoltageV } from '../../charge/charge-wishes.ts';
import type { Words } from '../../plan/language.ts';
import type { FindingContext, OptionContext } from '../context.ts';
import type { Finding } from '../finding.ts';
import { optionRule, type Rule } from '../rule.ts';
import { converterOutputA } from './converter-load.ts';
import { lowestBusVoltageV } from './cutoff-voltage.ts';

/** A device and the highest voltage it stands. */
interface Device {
  readonly name: Words;
  readonly maximumV: number | null;
  /** Highest voltage it meets [V]. */
  readonly meetsV: number;
  readonly field: string;
}

function devicesOf(entry: OptionContext, context: FindingContext, highestV: number): Device[] {
  const { machine } = context.plan;
  const devices: Device[] = [
    {
      name: { en: 'The controller', de: 'Die Steuerung' },
      maximumV: entry.controller.maximumVoltageV,
      meetsV: highestV,
      field: `${entry.controllerPath}.maximumVoltageV`,
    },
  ];
  if (machine.converter !== null) {
    devices.push({
      name: { en: 'The step-down converter', de: 'Der Abwärtswandler' },
      maximumV: machine.converter.maximumInputV,
      meetsV: highestV,
      field: 'machine.converter.maximumInputV',
    });
  }
  machine.accessories.forEach((accessory, index) => {
    if (accessory.supply === 'converter') return;
    const share = accessory.supply === 'pack' ? 1 : 1 / entry.option.pack.seriesCount;
    devices.push({
      name: { en: accessory.name, de: accessory.name },
      maximumV: accessory.maximumInputV,
      meetsV: highestV * share,
      field: `machine.accessories.${index}.maximumInputV`,
    });
  });
  return devices;
}

const overvoltage: Rule = optionRule(
  {
    id: 'SUP-1',
    severity: 'stop',
    sourceClass: 'handbook',
    source: 'Absolute maximum supply voltage in the data sheet of every device',
    about: {
      en: 'Charging lifts the pack above what a device on it stands.',
      de: 'Das Laden hebt den Akku über das, was ein Gerät daran verträgt.',
    },
  },
  (entry, voice, context) => {
    const { option, path } = entry;
    const highestV = highestChargeVoltageV(
      option.pack,
      option.charger,
      context.outing.ambientC,
      context.plan.thresholds,
    );
    return devicesOf(entry, context, highestV).flatMap((device): Finding[] => {
      if (device.maximumV === null) {
        return [
          voice.notChecked({
            optionId: option.id,
            missing: {
              en: `which voltage ${lower(device.name.en)} stands at most is missing; it meets ${voice.say(device.meetsV, 'V')}.`,
              de: `welche Spannung ${lower(device.name.de)} höchstens verträgt, fehlt; anliegen werden ${voice.say(device.meetsV, 'V')}.`,
            },
            fields: [device.field],
          }),
        ];
      }
      if (device.meetsV <= device.maximumV) return [];
      return [
        voice.finding({
          optionId: option.id,
          what: {
            en: `${device.name.en} stands ${voice.say(device.maximumV, 'V')} and meets ${voice.say(device.meetsV, 'V')} at the end of the charge.`,
            de: `${device.name.de} verträgt ${voice.say(device.maximumV, 'V')} und bekommt am Ende der Ladung ${voice.say(device.meetsV, 'V')}.`,
          },
          consequence: {
            en: 'Its input capacitors or transistors fail, often with a bang; a controller may fail to full power.',
            de: 'Eingangskondensatoren oder Transistoren versagen, oft mit Knall; eine Steuerung kann dabei auf Vollgas durchschalten.',
          },
          remedy: {
            en: 'Use a part rated above the charge voltage, feed it through a converter, or keep it off the pack while charging.',
            de: 'Ein Teil über der Ladespannung einsetzen, es über einen Wandler speisen oder beim Laden vom Akku trennen.',
          },
          facts: [
            [{ en: 'highest voltage met', de: 'höchste anliegende Spannung' }, device.meetsV, 'V'],
            [
              { en: 'highest voltage allowed', de: 'höchste erlaubte Spannung' },
              device.maximumV,
              'V',
            ],
          ],
          fields: [device.field, `${path}.charger.endVoltageV`],
        }),
      ];
    });
  },
);

/** Names that open a sentence stand lower inside one: "The controller" becomes "the controller". */
function lower(name: string): string {
  return name.replace(/^(The|Der|Die|Das) /, (article) => article.toLowerCase());
}

const converterRange: Rule = optionRule(
  {
    id: 'SUP-2',
    severity: 'warn',
    sourceClass: 'handbook',
    source: 'Input range and dropout in the data sheet of the converter',
    about: {
      en: 'The converter cannot hold its output at the full or at the cutoff voltage of the pack.',
      de: 'Der Wandler hält seinen Ausgang bei voller oder bei Abschaltspannung des Akkus nicht.',
    },
  },
  (entry, voice, context) => {
    const { converter } = context.plan.machine;
    if (converter === null) return [];
    const { option, study } = entry;
    const found: Finding[] = [];
    const consequence: Words = {
      en: 'Lights dim and sound or radio restart while the machine still drives; some converters hunt and get hot.',
      de: 'Licht wird dunkel, Ton oder Funk starten neu, während die Maschine noch fährt; manche Wandler schwingen und werden heiß.',
    };
    const remedy: Words = {
      en: 'Choose a converter for a lower input, raise the cutoff voltage, or lower the output load.',
      de: 'Einen Wandler für niedrigere Eingangsspannung wählen, die Abschaltspannung anheben oder die Last senken.',
    };
    const lowestV = lowestBusVoltageV(entry);
    if (lowestV === null) {
      found.push(
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'the cutoff voltage is missing, so the lowest input of the converter is not known.',
            de: 'die Abschaltspannung fehlt, daher ist die niedrigste Eingangsspannung des Wandlers nicht bekannt.',
          },
          fields: [`${entry.controllerPath}.cutoffVoltageV`],
        }),
      );
    } else {
      const neededV = neededInputV(converter, converterOutputA(context.plan.machine));
      if (lowestV < neededV) {
        found.push(
          voice.finding({
            optionId: option.id,
            what: {
              en: `The converter needs ${voice.say(neededV, 'V')} for ${voice.say(converter.outputVoltageV, 'V')} out; the pack may fall to ${voice.say(lowestV, 'V')} before the cutoff.`,
              de: `Der Wandler braucht ${voice.say(neededV, 'V')} für ${voice.say(converter.outputVoltageV, 'V')} am Ausgang; der Akku darf bis ${voice.say(lowestV, 'V')} fallen, bevor abgeschaltet wird.`,
            },
            consequence,
            remedy,
            facts: [
              [{ en: 'input needed', de: 'nötiger Eingang' }, neededV, 'V'],
              [{ en: 'lowest pack voltage', de: 'niedrigste Akkuspannung' }, lowestV, 'V'],
            ],
            fields: ['machine.converter.minimumInputV', `${entry.controllerPath}.cutoffVoltageV`],
          }),
        );
      }
    }
    const brownOut = study?.run.brownOutAtMin ?? null;
    if (brownOut !== null && found.every((finding) => finding.status !== 'finding')) {
      found.push(
        voice.finding({
          optionId: option.id,
          what: {
            en: `In this outing the converter drops out after ${voice.say(brownOut, 'min')}.`,
            de: `In dieser Fahrt fällt der Wandler nach ${voice.say(brownOut, 'min')} aus.`,
          },
          consequence,
          remedy,
          facts: [[{ en: 'first drop-out', de: 'erster Ausfall' }, brownOut, 'min']],
          fields: ['machine.converter.minimumInputV'],
        }),
      );
    }
    const fullV = study?.fullRestVoltageV ?? null;
    if (fullV !== null && converter.maximumInputV !== null && fullV > converter.maximumInputV) {
      found.push(
        voice.finding({
          optionId: option.id,
          what: {
            en: `A full pack rests at ${voice.say(fullV, 'V')}, above the ${voice.say(converter.maximumInputV, 'V')} of the converter.`,
            de: `Ein voller Akku ruht bei ${voice.say(fullV, 'V')}, über den ${voice.say(converter.maximumInputV, 'V')} des Wandlers.`,
          },
          consequence: {
            en: 'The converter is damaged when it is connected.',
            de: 'Der Wandler nimmt beim Anschließen Schaden.',
          },
          remedy: {
            en: 'Choose a converter for this voltage.',
            de: 'Einen Wandler für diese Spannung wählen.',
          },
          facts: [
            [{ en: 'full at rest', de: 'voll in Ruhe' }, fullV, 'V'],
            [{ en: 'highest input', de: 'höchster Eingang' }, converter.maximumInputV, 'V'],
          ],
          fields: ['machine.converter.maximumInputV'],
        }),
      );
    }
    return found;
  },
);

/** Input a step-down needs: its own lowest, or what duty and dropout ask for at this output current [V]. */
function neededInputV(
  converter: NonNullable<FindingContext['plan']['machine']['converter']>,
  outputA: number,
): number {
  const byDropout =
    (converter.outputVoltageV + outputA * converter.dropoutResistanceOhm) /
    (converter.maximumDutyPercent / 100);
  return Math.max(byDropout, converter.minimumInputV ?? 0);
}

export const supplyVoltageRules: readonly Rule[] = [overvoltage, converterRange];
