import type { Words } from '../../plan/language.ts';
import type { CureStatement } from '../cure.ts';
import { fitInBay } from '../../compare/search/fit-in-bay.ts';
import type { Finding } from '../finding.ts';
import { controllerCure } from './controller-cure.ts';
import { optionRule, type Rule } from '../rule.ts';

const consequenceBms: Words = {
  en: 'The BMS opens at the start or on a climb: all drive is lost at once, and lights with it.',
  de: 'Das BMS öffnet beim Anfahren oder am Berg: der Antrieb fällt schlagartig aus, das Licht mit.',
};

const currentLimits: Rule = optionRule(
  {
    id: 'PCK-5',
    severity: 'warn',
    sourceClass: 'handbook',
    source: 'Discharge limits in the data sheets of block and BMS',
    about: {
      en: 'The machine asks more current than block or BMS allow.',
      de: 'Die Maschine fordert mehr Strom, als Block oder BMS erlauben.',
    },
  },
  (entry, voice, context) => {
    const { option, path, controller, controllerPath, study } = entry;
    const { block, parallelCount } = option.pack;
    const found: Finding[] = [];
    const compare = (
      asked: number,
      allowed: number | null,
      field: string,
      what: (askedText: string, allowedText: string) => Words,
      consequence: Words,
      remedy: Words,
      cures: readonly CureStatement[] = [],
    ): void => {
      if (allowed === null || asked <= allowed) return;
      found.push(
        voice.finding({
          optionId: option.id,
          what: what(voice.say(asked, 'A'), voice.say(allowed, 'A')),
          consequence,
          remedy,
          facts: [
            [{ en: 'asked', de: 'gefordert' }, asked, 'A'],
            [{ en: 'allowed', de: 'erlaubt' }, allowed, 'A'],
          ],
          fields: [field, `${controllerPath}.batteryCurrentLimitA`],
          cures,
        }),
      );
    };
    const strings = (amperes: number | null): number | null =>
      amperes === null ? null : amperes * parallelCount;
    if (block.bms !== null) {
      const field = `${path}.pack.block.bms`;
      const remedy: Words = {
        en: 'Lower the current limit of the controller, or take a pack with a stronger BMS.',
        de: 'Die Strombegrenzung der Steuerung senken oder einen Akku mit stärkerem BMS nehmen.',
      };
      const mostA = strings(
        Math.min(block.bms.continuousDischargeA, block.bms.peakDischargeA ?? Infinity),
      );
      const limitCure =
        mostA === null || controller.batteryCurrentLimitA === null
          ? []
          : [
              controllerCure(
                entry,
                context,
                { batteryCurrentLimitA: mostA },
                {
                  en: `Set the battery current limit of the controller to ${voice.say(mostA, 'A')} (now ${voice.say(controller.batteryCurrentLimitA, 'A')})`,
                  de: `Batteriestrombegrenzung der Steuerung auf ${voice.say(mostA, 'A')} stellen (jetzt ${voice.say(controller.batteryCurrentLimitA, 'A')})`,
                },
              ),
            ];
      if (controller.batteryCurrentLimitA === null) {
        found.push(
          voice.notChecked({
            optionId: option.id,
            missing: {
              en: 'the battery current limit of the controller is missing, to compare with the BMS.',
              de: 'die Batteriestrombegrenzung der Steuerung fehlt, zum Vergleich mit dem BMS.',
            },
            fields: [`${controllerPath}.batteryCurrentLimitA`],
          }),
        );
      } else {
        compare(
          controller.batteryCurrentLimitA,
          strings(block.bms.continuousDischargeA),
          `${field}.continuousDischargeA`,
          (asked, allowed) => ({
            en: `The controller may draw ${asked}; the BMS carries ${allowed} for long.`,
            de: `Die Steuerung darf ${asked} ziehen; das BMS trägt dauernd ${allowed}.`,
          }),
          consequenceBms,
          remedy,
          limitCure,
        );
        compare(
          controller.batteryCurrentLimitA,
          strings(block.bms.peakDischargeA),
          `${field}.peakDischargeA`,
          (asked, allowed) => ({
            en: `The controller may draw ${asked}; the BMS opens at ${allowed}.`,
            de: `Die Steuerung darf ${asked} ziehen; das BMS öffnet bei ${allowed}.`,
          }),
          consequenceBms,
          remedy,
          limitCure,
        );
      }
    }
    if (study !== null) {
      const consequence: Words = {
        en: 'Plates or cells overheat and age fast; the voltage sags into the cutoff early.',
        de: 'Platten oder Zellen werden zu heiß und altern schnell; die Spannung sackt früh in die Abschaltung.',
      };
      const remedy: Words = {
        en: 'Take larger blocks or one more string, or limit the current.',
        de: 'Größere Blöcke oder einen Strang mehr nehmen, oder den Strom begrenzen.',
      };
      compare(
        study.run.averageCurrentA,
        strings(block.continuousDischargeA),
        `${path}.pack.block.continuousDischargeA`,
        (asked, allowed) => ({
          en: `The outing draws ${asked} on average; the pack carries ${allowed} for long.`,
          de: `Die Fahrt zieht im Mittel ${asked}; der Akku trägt dauernd ${allowed}.`,
        }),
        consequence,
        remedy,
      );
      compare(
        study.run.peakCurrentA,
        strings(block.peakDischargeA),
        `${path}.pack.block.peakDischargeA`,
        (asked, allowed) => ({
          en: `The outing peaks at ${asked}; the pack stands ${allowed} for moments.`,
          de: `Die Fahrt hat Spitzen von ${asked}; der Akku verträgt kurz ${allowed}.`,
        }),
        consequence,
        remedy,
      );
    }
    if (block.continuousDischargeA === null && block.bms === null) {
      found.push(
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'the continuous discharge limit of the block is missing.',
            de: 'die Dauerstromgrenze des Blocks fehlt.',
          },
          fields: [`${path}.pack.block.continuousDischargeA`],
        }),
      );
    }
    return found;
  },
);

type Size = readonly [number, number, number];

const sixWays: readonly Size[] = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
];

/** How many boxes fit a bay when all lie the same way; flooded blocks stay upright. */
function countThatFits(bay: Size, box: Size, upright: boolean): number {
  const ways = upright ? sixWays.filter((way) => way[2] === 2) : sixWays;
  return Math.max(
    ...ways.map((way) =>
      way.reduce((count, side, axis) => count * Math.floor(bay[axis]! / box[side]! + 1e-9), 1),
    ),
  );
}

const bayFit: Rule = optionRule(
  {
    id: 'PCK-6',
    severity: 'warn',
    sourceClass: 'derived',
    source:
      'Blocks laid out in the bay, up to six turned in every way; mass of blocks times their number',
    about: {
      en: 'The pack does not fit the bay, or is too heavy.',
      de: 'Der Akku passt nicht in den Schacht oder ist zu schwer.',
    },
  },
  ({ option, path }, voice, { plan }) => {
    const { bay } = plan.machine;
    const { block } = option.pack;
    const count = option.pack.seriesCount * option.pack.parallelCount;
    const found: Finding[] = [];
    if (bay.lengthMm !== null && bay.widthMm !== null && bay.heightMm !== null) {
      if (block.lengthMm === null || block.widthMm === null || block.heightMm === null) {
        found.push(
          voice.notChecked({
            optionId: option.id,
            missing: {
              en: 'length, width and height of the block are missing.',
              de: 'Länge, Breite und Höhe des Blocks fehlen.',
            },
            fields: [`${path}.pack.block.lengthMm`],
          }),
        );
      } else {
        const bayText = `${bay.lengthMm} × ${bay.widthMm} × ${bay.heightMm} mm`;
        const boxText = `${block.lengthMm} × ${block.widthMm} × ${block.heightMm} mm`;
        const space: Size = [bay.lengthMm, bay.widthMm, bay.heightMm];
        const box: Size = [block.lengthMm, block.widthMm, block.heightMm];
        const fits = countThatFits(space, box, block.chemistry === 'flooded');
        // Blocks turned against each other may go in where blocks laid alike do not.
        const mixed = fitInBay(box, count, space, block.chemistry === 'flooded');
        if (fits < count && mixed !== 'fits') {
          found.push(
            voice.finding({
              optionId: option.id,
              what: {
                en: `The bay of ${bayText} takes ${fits} of ${count} blocks of ${boxText}.`,
                de: `Der Schacht von ${bayText} fasst ${fits} von ${count} Blöcken zu ${boxText}.`,
              },
              consequence: {
                en: 'Blocks stand loose or the lid does not close; cables chafe.',
                de: 'Blöcke stehen lose, oder der Deckel schließt nicht; Kabel scheuern.',
              },
              remedy: {
                en: 'Choose another size, or rebuild the bay with a hold-down.',
                de: 'Eine andere Größe wählen oder den Schacht mit Halterung umbauen.',
              },
              facts: [
                [{ en: 'blocks that fit', de: 'passende Blöcke' }, fits, ''],
                [{ en: 'blocks needed', de: 'nötige Blöcke' }, count, ''],
              ],
              fields: ['machine.bay', `${path}.pack.block.lengthMm`],
            }),
          );
        }
      }
    }
    if (bay.massLimitKg !== null) {
      if (block.massKg === null) {
        found.push(
          voice.notChecked({
            optionId: option.id,
            missing: { en: 'the mass of the block is missing.', de: 'die Masse des Blocks fehlt.' },
            fields: [`${path}.pack.block.massKg`],
          }),
        );
      } else if (count * block.massKg > bay.massLimitKg) {
        const massKg = count * block.massKg;
        found.push(
          voice.finding({
            optionId: option.id,
            what: {
              en: `The pack weighs ${voice.say(massKg, 'kg')}; the machine is allowed ${voice.say(bay.massLimitKg, 'kg')}.`,
              de: `Der Akku wiegt ${voice.say(massKg, 'kg')}; die Maschine trägt ${voice.say(bay.massLimitKg, 'kg')}.`,
            },
            consequence: {
              en: 'Frame, axle and tyres carry more than they were made for; it tips and brakes worse.',
              de: 'Rahmen, Achse und Reifen tragen mehr als vorgesehen; sie kippt leichter und bremst schlechter.',
            },
            remedy: { en: 'Choose a lighter pack.', de: 'Einen leichteren Akku wählen.' },
            facts: [
              [{ en: 'pack mass', de: 'Akkumasse' }, massKg, 'kg'],
              [{ en: 'allowed', de: 'erlaubt' }, bay.massLimitKg, 'kg'],
            ],
            fields: ['machine.bay.massLimitKg'],
          }),
        );
      }
    }
    return found;
  },
);

export const packLimitRules: readonly Rule[] = [currentLimits, bayFit];
