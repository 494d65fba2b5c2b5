import { jointOhm } from '../../wiring/branch-resistance.ts';
import { prechargePart } from '../../wiring/precharge-part.ts';
import { checkSwitches } from '../../wiring/switch-check.ts';
import type { Finding } from '../finding.ts';
import type { Rule } from '../rule.ts';
import { wiredBranches, wiredOptionRule } from './wiring-rule.ts';

const joints: Rule = wiredOptionRule(
  {
    id: 'WIR-4',
    severity: 'warn',
    sourceClass: 'common-practice',
    source:
      "Connector makers' ratings by wire; a good lug or contact stays well below 1 mΩ. Common practice, no source",
    about: {
      en: 'A connector or joint is weaker than its current.',
      de: 'Ein Stecker oder eine Verbindung ist schwächer als der Strom.',
    },
  },
  (entry, voice) =>
    wiredBranches(entry).flatMap(({ found, branch, path }): Finding[] => {
      const optionId = entry.option.id;
      const findings: Finding[] = [];
      const { connector } = branch;
      if (connector !== null && connector.ratedA === null) {
        findings.push(
          voice.notChecked({
            optionId,
            missing: {
              en: `the rating of ${connector.name} in ${found.name} is missing; ${voice.say(found.continuousA, 'A')} flow through it.`,
              de: `der Nennstrom von ${connector.name} in ${found.name} fehlt; ${voice.say(found.continuousA, 'A')} fließen hindurch.`,
            },
            fields: [`${path}.connector.ratedA`],
          }),
        );
      } else if (
        connector !== null &&
        connector.ratedA !== null &&
        connector.ratedA < found.continuousA
      ) {
        findings.push(
          voice.finding({
            optionId,
            what: {
              en: `${connector.name} in ${found.name} is rated ${voice.say(connector.ratedA, 'A')}; ${voice.say(found.continuousA, 'A')} flow for long.`,
              de: `${connector.name} in ${found.name} ist für ${voice.say(connector.ratedA, 'A')} bemessen; auf Dauer fließen ${voice.say(found.continuousA, 'A')}.`,
            },
            consequence: {
              en: 'The contacts heat up, lose their spring and melt the shell.',
              de: 'Die Kontakte werden heiß, verlieren ihre Federkraft und schmelzen das Gehäuse.',
            },
            remedy: {
              en: 'A connector rated for this current with this wire in it.',
              de: 'Ein Stecker, der mit dieser Leitung für diesen Strom bemessen ist.',
            },
            facts: [[{ en: 'current', de: 'Strom' }, found.continuousA, 'A']],
            fields: [`${path}.connector.ratedA`],
          }),
        );
      }
      const limitMohm = entry.plan.thresholds.wiring.jointWarnMohm;
      branch.joints.forEach((joint, index) => {
        const ohm = jointOhm(joint);
        if (ohm === null || ohm * 1000 <= limitMohm) return;
        const heatW = ohm * found.continuousA ** 2;
        findings.push(
          voice.finding({
            optionId,
            what: {
              en: `${joint.name} in ${found.name} has ${voice.say(ohm * 1000, 'mΩ')}; at most ${voice.say(limitMohm, 'mΩ')} are wanted. It turns ${voice.say(heatW, 'W')} to heat.`,
              de: `${joint.name} in ${found.name} hat ${voice.say(ohm * 1000, 'mΩ')}; gewünscht sind höchstens ${voice.say(limitMohm, 'mΩ')}. Dort werden ${voice.say(heatW, 'W')} zu Wärme.`,
            },
            consequence: {
              en: 'It heats, corrodes, gets worse and ends as a burnt lug or an early cutoff.',
              de: 'Sie wird warm, korrodiert, wird schlechter und endet verbrannt oder mit frühem Abschalten.',
            },
            remedy: {
              en: 'Open, clean, crimp anew, tighten; measure again at the same current.',
              de: 'Öffnen, reinigen, neu pressen, festziehen; beim selben Strom nachmessen.',
            },
            facts: [[{ en: 'joint', de: 'Verbindung' }, ohm * 1000, 'mΩ']],
            fields: [`${path}.joints.${index}.dropMv`],
          }),
        );
      });
      return findings;
    }),
);

const inrush: Rule = wiredOptionRule(
  {
    id: 'WIR-5',
    severity: 'note',
    sourceClass: 'handbook',
    source: 'Contactor and controller sheets: precharge input capacitors before the contacts close',
    about: {
      en: "The controller's capacitors charge through the bare contacts.",
      de: 'Die Kondensatoren der Steuerung laden sich über die blanken Kontakte.',
    },
  },
  (entry, voice) =>
    checkSwitches(entry.wired, entry.wiring.branches).flatMap((check): Finding[] => {
      const optionId = entry.option.id;
      const path = `wiring.branches.${check.planIndex}.switchgear`;
      if (check.switchgear.prechargeOhm === null && check.capacitorsUnknown) {
        return [
          voice.notChecked({
            optionId,
            missing: {
              en: `the controller's input capacitors are missing, so the inrush through ${check.branchName} is unknown.`,
              de: `die Eingangskondensatoren der Steuerung fehlen, daher ist der Einschaltstrom über ${check.branchName} unbekannt.`,
            },
            fields: ['wiring.devices'],
          }),
        ];
      }
      if (check.precharge === null || check.precharge.fitted !== null) return [];
      const { bareInrushA, aimA, advised, capacitanceUf } = check.precharge;
      if (bareInrushA <= aimA) return [];
      const { prechargeOhm, prechargeW } = prechargePart(advised);
      return [
        voice.finding({
          optionId,
          what: {
            en: `Closing the switch in ${check.branchName} on ${voice.say(capacitanceUf, 'µF')} drives up to ${voice.say(bareInrushA, 'A')}.`,
            de: `Das Schließen des Schalters in ${check.branchName} auf ${voice.say(capacitanceUf, 'µF')} treibt bis zu ${voice.say(bareInrushA, 'A')}.`,
          },
          consequence: {
            en: 'Contacts pit or weld shut; a welded isolator no longer isolates.',
            de: 'Kontakte brennen ab oder verschweißen; ein verschweißter Trennschalter trennt nicht mehr.',
          },
          remedy: {
            en: `Precharge through ${voice.say(advised.resistanceOhm, 'Ω', 2)} for ${voice.say(advised.timeS, 's', 2)} before the contacts close; the resistor takes ${voice.say(advised.energyJ, 'J', 2)}.`,
            de: `Über ${voice.say(advised.resistanceOhm, 'Ω', 2)} ${voice.say(advised.timeS, 's', 2)} lang vorladen, bevor die Kontakte schließen; der Widerstand nimmt ${voice.say(advised.energyJ, 'J', 2)} auf.`,
          },
          facts: [
            [{ en: 'inrush', de: 'Einschaltstrom' }, bareInrushA, 'A'],
            [{ en: 'resistor', de: 'Widerstand' }, advised.resistanceOhm, 'Ω'],
          ],
          fields: [`${path}.prechargeOhm`],
          cures: [
            {
              does: {
                en: `Fit a precharge resistor of ${voice.say(prechargeOhm, 'Ω')}, ${voice.say(prechargeW, 'W')} at the switch in ${check.branchName} (now none)`,
                de: `Vorladewiderstand ${voice.say(prechargeOhm, 'Ω')}, ${voice.say(prechargeW, 'W')} am Schalter in ${check.branchName} einbauen (jetzt keiner)`,
              },
              changes: [
                { path: `${path}.prechargeOhm`, value: prechargeOhm },
                { path: `${path}.prechargeW`, value: prechargeW },
              ],
            },
          ],
        }),
      ];
    }),
);

/** Ratings of the switches drawn in the wiring; an isolator whose ratings the stop chain states is judged there. */
const switchRatings: Rule = wiredOptionRule(
  {
    id: 'STP-2',
    severity: 'stop',
    sourceClass: 'handbook',
    source: 'Direct-current ratings in switch and contactor sheets',
    about: {
      en: 'A switch, relay or contactor has no direct-current rating for pack voltage and stall current.',
      de: 'Ein Schalter, Relais oder Schütz hat keine Gleichstrombemessung für Akkuspannung und Blockierstrom.',
    },
  },
  (entry, voice) =>
    checkSwitches(entry.wired, entry.wiring.branches).flatMap((check): Finding[] => {
      const chain = entry.plan.machine.drive?.stopChain;
      const { switchgear } = check;
      const statedThere =
        chain !== undefined &&
        switchgear.ratedVoltageV === chain.isolatorDcVoltageV &&
        switchgear.breakingA === chain.isolatorBreakingA;
      const aspects = check.aspects.filter(
        ({ aspect }) => aspect === 'voltage' || aspect === 'breaking',
      );
      if (statedThere || aspects.every(({ verdict }) => verdict === 'fits')) return [];
      const optionId = entry.option.id;
      const path = `wiring.branches.${check.planIndex}.switchgear`;
      const fields = aspects
        .filter(({ verdict }) => verdict !== 'fits')
        .map(({ aspect }) => `${path}.${aspect === 'voltage' ? 'ratedVoltageV' : 'breakingA'}`);
      const voltageV = entry.wired.highestVoltageV;
      if (!aspects.some(({ verdict }) => verdict === 'misfits')) {
        return [
          voice.notChecked({
            optionId,
            missing: {
              en: `the direct-current rating of the switch in ${check.branchName} or the stall current is missing; asked are ${voice.say(voltageV, 'V')}${check.worstA === null ? '' : ` and ${voice.say(check.worstA, 'A')}`}.`,
              de: `die Gleichstrombemessung des Schalters in ${check.branchName} oder der Blockierstrom fehlt; gefordert sind ${voice.say(voltageV, 'V')}${check.worstA === null ? '' : ` und ${voice.say(check.worstA, 'A')}`}.`,
            },
            fields,
          }),
        ];
      }
      const given = (value: number | null, unit: string) =>
        value === null ? '?' : voice.say(value, unit);
      return [
        voice.finding({
          optionId,
          what: {
            en: `The switch in ${check.branchName} breaks ${given(switchgear.ratedVoltageV, 'V')} and ${given(switchgear.breakingA, 'A')} of direct current; the pack reaches ${voice.say(voltageV, 'V')}, held-fast motors draw ${given(check.worstA, 'A')}.`,
            de: `Der Schalter in ${check.branchName} trennt ${given(switchgear.ratedVoltageV, 'V')} und ${given(switchgear.breakingA, 'A')} Gleichstrom; der Akku erreicht ${voice.say(voltageV, 'V')}, blockierte Motoren ziehen ${given(check.worstA, 'A')}.`,
          },
          consequence: {
            en: 'Direct current does not pass through zero: the arc stays, the contacts weld, and the one switch that should stop the machine does not.',
            de: 'Gleichstrom geht nicht durch null: der Lichtbogen bleibt, die Kontakte verschweißen, und gerade der Schalter, der anhalten soll, tut es nicht.',
          },
          remedy: {
            en: 'A switch or contactor with a direct-current rating above both.',
            de: 'Ein Schalter oder Schütz mit einer Gleichstrombemessung über beidem.',
          },
          facts: [[{ en: 'pack voltage', de: 'Akkuspannung' }, voltageV, 'V']],
          fields,
        }),
      ];
    }),
);

export const jointAndSwitchRules: readonly Rule[] = [joints, inrush, switchRatings];
