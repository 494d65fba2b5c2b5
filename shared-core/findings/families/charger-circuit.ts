import type { Wiring } from '../../plan/schema/wiring.ts';
import { packGroups } from '../../charge/charge-wishes.ts';
import { chargerCure } from './charger-cure.ts';
import type { Finding } from '../finding.ts';
import { optionRule, planRule, type Rule, type RuleVoice } from '../rule.ts';
import { askForWiring } from './wiring-rule.ts';

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
  ({ plan, options }, voice) => {
    if (options.every(({ option }) => option.charger === null)) return [];
    if (plan.wiring === null) return [askForWiring(voice)];
    return [...portPolarity(plan.wiring, voice), ...chargeInhibit(plan.wiring, voice)];
  },
);

function portPolarity({ portPolarity: right }: Wiring, voice: RuleVoice): Finding[] {
  const fields = ['wiring.portPolarity'];
  if (right === 'yes') return [];
  if (right === 'unknown') {
    return [
      voice.notChecked({
        missing: {
          en: 'no meter has confirmed polarity and pins of the charge port yet.',
          de: 'noch kein Messgerät hat Polung und Belegung der Ladebuchse bestätigt.',
        },
        remedy: {
          en: 'Measure the open port before the first connection and compare it with the plug of the charger.',
          de: 'Die offene Buchse vor dem ersten Anschließen messen und mit dem Stecker des Ladegeräts vergleichen.',
        },
        fields,
      }),
    ];
  }
  return [
    voice.finding({
      what: {
        en: 'The meter shows that polarity or pins of the charge port do not match the charger.',
        de: 'Das Messgerät zeigt, dass Polung oder Belegung der Ladebuchse nicht zum Ladegerät passen.',
      },
      consequence: {
        en: 'Plugged in, charger and pack drive a short through each other: sparks, a burnt port, a blown fuse at best.',
        de: 'Beim Einstecken schließen Ladegerät und Akku einander kurz: Funken, eine verbrannte Buchse, bestenfalls eine ausgelöste Sicherung.',
      },
      remedy: {
        en: 'Do not plug in. Exchange the wires at the port, measure again.',
        de: 'Nicht einstecken. Die Leitungen an der Buchse tauschen, neu messen.',
      },
      fields,
    }),
  ];
}

function chargeInhibit({ chargeInhibit: blocked }: Wiring, voice: RuleVoice): Finding[] {
  const fields = ['wiring.chargeInhibit'];
  if (blocked === 'yes') return [];
  if (blocked === 'unknown') {
    return [
      voice.notChecked({
        missing: {
          en: 'whether driving is blocked while the charger is plugged in is not stated.',
          de: 'ob das Fahren bei gestecktem Ladegerät gesperrt ist, ist nicht angegeben.',
        },
        remedy: {
          en: 'Try with wheels up whether the throttle is dead while the charger is plugged in.',
          de: 'Mit freien Rädern prüfen, ob der Fahrhebel bei gestecktem Ladegerät tot ist.',
        },
        fields,
      }),
    ];
  }
  return [
    voice.finding({
      what: {
        en: 'The machine can drive while the charger is plugged in.',
        de: 'Die Maschine kann bei gestecktem Ladegerät fahren.',
      },
      consequence: {
        en: 'It drives off with the cable, tears the plug out under current or pulls somebody over.',
        de: 'Sie fährt mit dem Kabel los, reißt den Stecker unter Strom heraus oder jemanden um.',
      },
      remedy: {
        en: "Wire a contact of the port, or a relay at the charger's output, to the inhibit input of the controller.",
        de: 'Einen Kontakt der Buchse oder ein Relais am Ladeausgang auf den Sperreingang der Steuerung legen.',
      },
      fields,
    }),
  ];
}

export const chargerCircuitRules: readonly Rule[] = [blockCharger, portCheck];
