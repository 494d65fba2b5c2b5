import { chemistryTraits } from '../../battery/chemistry.ts';
import { packGroups } from '../../charge/charge-wishes.ts';
import type { FindingContext, OptionContext } from '../context.ts';
import type { CureStatement } from '../cure.ts';
import { optionRule, type Rule, type RuleVoice } from '../rule.ts';
import { controllerCure } from './controller-cure.ts';
import { sagCause } from './sag-cause.ts';
import { bmsOpensAtV } from './cutoff-voltage.ts';

const missingCutoff: Rule = optionRule(
  {
    id: 'CUT-1',
    severity: 'warn',
    sourceClass: 'handbook',
    source:
      'Battery makers: stop at 1.75 V per lead cell under usual load; lithium is watched group by group',
    about: {
      en: 'Nothing stops the discharge in time.',
      de: 'Nichts beendet die Entladung rechtzeitig.',
    },
  },
  (entry, voice, context) => {
    const { option, controller, controllerPath } = entry;
    const { block } = option.pack;
    const lithium = chemistryTraits[block.chemistry].family === 'lithium';
    if (block.bms !== null) return [];
    const cutoffV = controller.cutoffVoltageV;
    const none = cutoffV === null || cutoffV === 0;
    if (!none && !lithium) return [];
    return [
      voice.finding({
        optionId: option.id,
        what: none
          ? {
              en: 'No low-voltage cutoff is known: neither a controller cutoff nor a BMS.',
              de: 'Keine Unterspannungsabschaltung ist bekannt: weder in der Steuerung noch durch ein BMS.',
            }
          : {
              en: `Only the pack voltage is watched (${voice.say(cutoffV, 'V')}); nothing watches the ${packGroups(option.pack)} cell groups.`,
              de: `Nur die Akkuspannung wird überwacht (${voice.say(cutoffV, 'V')}); nichts überwacht die ${packGroups(option.pack)} Zellgruppen.`,
            },
        consequence: lithium
          ? {
              en: 'The weakest cell group is driven far down or backwards; charging it afterwards can set it on fire.',
              de: 'Die schwächste Zellgruppe wird tief entladen oder umgepolt; sie danach zu laden kann einen Brand auslösen.',
            }
          : {
              en: 'The weakest block is driven down and reversed; a few such outings ruin it.',
              de: 'Der schwächste Block wird tief entladen und umgepolt; wenige solche Fahrten ruinieren ihn.',
            },
        remedy: lithium
          ? {
              en: 'Use a pack with a BMS that watches each group.',
              de: 'Einen Akku mit BMS verwenden, das jede Gruppe überwacht.',
            }
          : {
              en: 'Enter or set the controller cutoff (about 10.5 V per 12 V block under load), or fit a low-voltage relay.',
              de: 'Die Abschaltung der Steuerung eintragen oder einstellen (etwa 10,5 V je 12-V-Block unter Last) oder ein Unterspannungsrelais einbauen.',
            },
        fields: [`${controllerPath}.cutoffVoltageV`],
        cures:
          lithium || !none
            ? []
            : [cutoffCure(entry, context, voice, 1.75 * packGroups(option.pack))],
      }),
    ];
  },
);

/** Room between the controller's cutoff and the BMS, per group [V]. Common practice, no source. */
const aboveBmsPerGroupV = 0.2;

function cutoffCure(
  entry: OptionContext,
  context: FindingContext,
  voice: RuleVoice,
  wishedV: number,
): CureStatement {
  const volts = Math.round(wishedV * 10) / 10;
  const before = entry.controller.cutoffVoltageV;
  const now = before === null ? '?' : voice.say(before, 'V');
  return controllerCure(
    entry,
    context,
    { cutoffVoltageV: volts },
    {
      en: `Set the cutoff of the controller to ${voice.say(volts, 'V')} (now ${now})`,
      de: `Abschaltung der Steuerung auf ${voice.say(volts, 'V')} stellen (jetzt ${now})`,
    },
  );
}

const sagCutoff: Rule = optionRule(
  {
    id: 'CUT-2',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Charge left at the end of the simulated run; losses from its energy ledger',
    about: {
      en: 'Sag trips the cutoff while much charge is left.',
      de: 'Einbrechende Spannung schaltet ab, obwohl noch viel Ladung da ist.',
    },
  },
  ({ option, controllerPath, path, study }, voice, { plan }) => {
    if (study === null) return [];
    const { run } = study;
    const bySag =
      run.endedBy === 'controller-cutoff' ||
      run.endedBy === 'bms-group-low' ||
      run.endedBy === 'supply-collapse';
    const limit = plan.thresholds.sagLeftPercent;
    if (!bySag || run.remainingPercent <= limit) return [];
    const cause = sagCause(run);
    return [
      voice.finding({
        optionId: option.id,
        what: {
          en: `It stops after ${voice.say(run.runTimeMin, 'min')} with ${voice.say(run.remainingPercent, '%', 2)} charge left; what costs most volts is ${cause.is.en}.`,
          de: `Sie hält nach ${voice.say(run.runTimeMin, 'min')} mit ${voice.say(run.remainingPercent, '%', 2)} Restladung an; die meisten Volt kostet ${cause.is.de}.`,
        },
        consequence: {
          en: 'It cuts out while the gauge reads well; after a rest it goes on for a while and stops again.',
          de: 'Sie schaltet ab, während die Anzeige gut aussieht; nach einer Pause läuft sie ein Stück und hält wieder.',
        },
        remedy: cause.remedy,
        facts: [
          [{ en: 'charge left', de: 'Restladung' }, run.remainingPercent, '%'],
          [{ en: 'warned above', de: 'Warnung über' }, limit, '%'],
          [{ en: 'peak current', de: 'Spitzenstrom' }, run.peakCurrentA, 'A'],
        ],
        fields: [
          `${controllerPath}.cutoffVoltageV`,
          cause.field === 'harness'
            ? 'machine.harnessResistanceOhm'
            : `${path}.pack.${cause.field}`,
        ],
      }),
    ];
  },
);

const cutoffOrder: Rule = optionRule(
  {
    id: 'CUT-3',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'The controller stops first, the BMS is the last resort. Common practice, no source',
    about: {
      en: 'The BMS opens before the controller stops.',
      de: 'Das BMS öffnet, bevor die Steuerung anhält.',
    },
  },
  (entry, voice, context) => {
    const { option, path, controller, controllerPath, study } = entry;
    const bmsV = bmsOpensAtV(entry);
    if (bmsV === null) return [];
    const cutoffV = controller.cutoffVoltageV;
    const first = cutoffV === null || cutoffV <= bmsV;
    const inRun =
      study !== null &&
      (study.run.endedBy === 'bms-group-low' || study.run.endedBy === 'bms-over-current');
    if (!first && !inRun) return [];
    const { bms } = option.pack.block;
    return [
      voice.finding({
        optionId: option.id,
        what:
          inRun && !first
            ? {
                en: `In this outing the BMS opens after ${voice.say(study.run.runTimeMin, 'min')}, before the controller's ${voice.say(cutoffV, 'V')} are reached.`,
                de: `In dieser Fahrt öffnet das BMS nach ${voice.say(study.run.runTimeMin, 'min')}, bevor die ${voice.say(cutoffV, 'V')} der Steuerung erreicht sind.`,
              }
            : cutoffV === null
              ? {
                  en: `The controller has no known cutoff, so the BMS opens first, at ${voice.say(bms?.groupLowV ?? 0, 'V')} per group (${voice.say(bmsV, 'V')}).`,
                  de: `Die Steuerung hat keine bekannte Abschaltung, also öffnet zuerst das BMS, bei ${voice.say(bms?.groupLowV ?? 0, 'V')} je Gruppe (${voice.say(bmsV, 'V')}).`,
                }
              : {
                  en: `The controller stops at ${voice.say(cutoffV, 'V')}; the BMS opens at ${voice.say(bmsV, 'V')} or earlier.`,
                  de: `Die Steuerung hält bei ${voice.say(cutoffV, 'V')}; das BMS öffnet bei ${voice.say(bmsV, 'V')} oder früher.`,
                },
        consequence: {
          en: 'Drive, lights and electric brake are lost at once, without warning.',
          de: 'Antrieb, Licht und elektrische Bremse fallen ohne Warnung auf einmal aus.',
        },
        remedy: {
          en: 'Set the controller cutoff a few tenths of a volt per group above the BMS limit, or stop by charge left.',
          de: 'Die Abschaltung der Steuerung einige Zehntel Volt je Gruppe über die BMS-Grenze legen oder nach Restladung aufhören.',
        },
        facts: [
          [{ en: 'BMS opens at', de: 'BMS öffnet bei' }, bmsV, 'V'],
          ...(cutoffV === null
            ? []
            : [[{ en: 'controller stops at', de: 'Steuerung hält bei' }, cutoffV, 'V'] as const]),
        ],
        fields: [`${controllerPath}.cutoffVoltageV`, `${path}.pack.block.bms.groupLowV`],
        cures: first
          ? [cutoffCure(entry, context, voice, bmsV + aboveBmsPerGroupV * packGroups(option.pack))]
          : [],
      }),
    ];
  },
);

export const cutoffRules: readonly Rule[] = [missingCutoff, sagCutoff, cutoffOrder];
