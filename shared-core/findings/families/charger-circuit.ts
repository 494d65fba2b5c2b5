import { packGroups } from '../../charge/charge-wishes.ts';
import { chargerCure } from './charger-cure.ts';
import { optionRule, planRule, type Rule } from '../rule.ts';

const blockCharger: Rule = optionRule(
  {
    id: 'CHG-5',
    severity: 'warn',
    sourceClass: 'common-practice',
    source:
      'A block charger charges one block; its outputs must be isolated where blocks stay connected. Common practice, no source',
    about: {
      en: 'A charger for one block sits on a string, or blocks are tied together while charged singly.',
      de: 'Ein Ladegerät für einen Block sitzt an einem Strang, oder Blöcke sind beim Einzelladen verbunden.',
    },
  },
  (entry, voice, context) => {
    const { option, path } = entry;
    const { plan } = context;
    const { charger, pack } = option;
    if (charger === null || pack.seriesCount < 2) return [];
    const groups = packGroups(pack);
    if (charger.cellGroups >= groups || charger.cellGroups % pack.block.cellGroups !== 0) return [];
    const tapped = plan.machine.accessories.some((accessory) => accessory.supply === 'mid-point');
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `The charger is made for ${charger.cellGroups} cells, the string has ${groups}: it charges ${charger.cellGroups / pack.block.cellGroups} of ${pack.seriesCount} blocks at a time${tapped ? ', and a mid-point tap ties the blocks to another circuit' : ''}.`,
          de: `Das Ladegerät ist für ${charger.cellGroups} Zellen, der Strang hat ${groups}: es lädt ${charger.cellGroups / pack.block.cellGroups} von ${pack.seriesCount} Blöcken auf einmal${tapped ? ', und eine Mittelanzapfung verbindet die Blöcke mit einem anderen Stromkreis' : ''}.`,
        },
        consequence: {
          en: 'Put across the string it does nothing; put across each block in turn while they stay connected, two chargers with a common wire short a block.',
          de: 'Am ganzen Strang tut es nichts; an jedem Block nacheinander, während sie verbunden sind, schließen zwei Ladegeräte mit gemeinsamer Leitung einen Block kurz.',
        },
        remedy: {
          en: 'Use a charger for the whole string, or one isolated charger for each block; open the tap while charging.',
          de: 'Ein Ladegerät für den ganzen Strang verwenden, oder je Block ein potenzialfreies; die Anzapfung beim Laden öffnen.',
        },
        facts: [
          [{ en: 'cells of the charger', de: 'Zellen des Ladegeräts' }, charger.cellGroups, ''],
          [{ en: 'cells of the string', de: 'Zellen des Strangs' }, groups, ''],
        ],
        fields: [`${path}.charger.cellGroups`],
        cures: chargerCure(entry, context),
      }),
    ];
  },
);

const portCheck: Rule = planRule(
  {
    id: 'CHG-6',
    severity: 'warn',
    sourceClass: 'standard',
    source:
      'Polarity by meter before the first connection (common practice); mobility standards ask that driving is blocked on charge',
    about: {
      en: 'Polarity or pins of the charge port are not confirmed, or the machine drives while on charge.',
      de: 'Polung oder Belegung der Ladebuchse ist nicht bestätigt, oder die Maschine fährt am Ladekabel.',
    },
  },
  ({ options }, voice) => {
    const charged = options.find(({ option }) => option.charger !== null);
    if (charged === undefined) return [];
    return [
      voice.notChecked({
        missing: {
          en: 'has a meter confirmed polarity and pins of the charge port, and is driving blocked while it is plugged in?',
          de: 'hat ein Messgerät Polung und Belegung der Ladebuchse bestätigt, und ist das Fahren am Kabel gesperrt?',
        },
        remedy: {
          en: 'Measure the port before the first connection, and try whether the throttle is dead while the charger is plugged in.',
          de: 'Die Buchse vor dem ersten Anschließen messen und prüfen, ob der Fahrhebel bei gestecktem Ladegerät tot ist.',
        },
        fields: [`${charged.path}.portLimitA`],
      }),
    ];
  },
);

export const chargerCircuitRules: readonly Rule[] = [blockCharger, portCheck];
