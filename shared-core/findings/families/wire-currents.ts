import { formatConductor } from '../../wiring/conductor-facts.ts';
import type { Finding } from '../finding.ts';
import type { Rule } from '../rule.ts';
import { dropCure, smallestWireCure, wayTo } from './wiring-cures.ts';
import {
  wiredBranches,
  wiredOptionRule,
  type WiredBranch,
  type WiredOption,
} from './wiring-rule.ts';

/** A current that only differs from the limit by the rounding of the network is at the limit. */
const rounding = 1 + 1e-6;

const ampacity: Rule = wiredOptionRule(
  {
    id: 'WIR-1',
    severity: 'stop',
    sourceClass: 'standard',
    source:
      '33 CFR 183.425, table 5 with bundle and temperature factors, law for boats, used as a guide',
    about: {
      en: 'More current than the wire carries where it lies.',
      de: 'Mehr Strom, als die Leitung an ihrem Ort trägt.',
    },
  },
  (entry, voice) =>
    wiredBranches(entry).flatMap((wired): Finding[] => {
      const { found, branch, path } = wired;
      const optionId = entry.option.id;
      if (found.conductorAssumed) {
        return isLink(entry, branch.from)
          ? []
          : [
              voice.notChecked({
                optionId,
                missing: {
                  en: `the conductor of ${found.name} is missing; ${voice.say(found.sizingA, 'A')} may flow there.`,
                  de: `der Leiter von ${found.name} fehlt; dort können ${voice.say(found.sizingA, 'A')} fließen.`,
                },
                fields: [`${path}.conductor`],
                cures: smallestWireCure(wired),
              }),
            ];
      }
      const braking = entry.wiring.devices.some(
        ({ id, kind }) => id === branch.to && kind === 'brake-resistor',
      );
      const currentA = braking ? found.peakA : found.continuousA;
      if (currentA <= found.ampacityA * rounding) return [];
      const over = currentA / found.ampacityA;
      const advice = found.smallest.conductor;
      const size = (locale: 'en' | 'de') => formatConductor(found.conductor, locale);
      const better = (locale: 'en' | 'de') =>
        advice === null ? '' : formatConductor(advice, locale);
      return [
        voice.finding({
          optionId,
          severity:
            !braking && over > entry.plan.thresholds.wiring.ampacityStopFactor ? 'stop' : 'warn',
          what: {
            en: `${found.name} carries ${voice.say(currentA, 'A')}; ${size('en')} with ${branch.insulationC} °C insulation at ${voice.say(found.ambientC, '°C')} and ${branch.bundled} in the bundle stands ${voice.say(found.ampacityA, 'A')}.`,
            de: `${found.name} führt ${voice.say(currentA, 'A')}; ${size('de')} mit Isolierung für ${branch.insulationC} °C bei ${voice.say(found.ambientC, '°C')} und ${branch.bundled} im Bündel trägt ${voice.say(found.ampacityA, 'A')}.`,
          },
          consequence: {
            en: 'The insulation softens, ages and fails; wires lying against each other short.',
            de: 'Die Isolierung wird weich, altert und versagt; anliegende Leitungen schließen kurz.',
          },
          remedy: {
            en:
              advice === null
                ? 'Split the load over two wires or lay it cooler.'
                : `Take ${better('en')}, or lay it alone and cooler.`,
            de:
              advice === null
                ? 'Die Last auf zwei Leitungen teilen oder kühler verlegen.'
                : `${better('de')} nehmen oder einzeln und kühler verlegen.`,
          },
          facts: [
            [{ en: 'current', de: 'Strom' }, currentA, 'A'],
            [{ en: 'ampacity', de: 'Belastbarkeit' }, found.ampacityA, 'A'],
          ],
          fields: [`${path}.conductor`, `${path}.bundled`, `${path}.surroundingC`],
          cures: smallestWireCure(wired),
        }),
      ];
    }),
);

const drop: Rule = wiredOptionRule(
  {
    id: 'WIR-2',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'Drop out and back at most 3 % wanted, 5 % tolerated. Common practice, no source',
    about: {
      en: 'Too much voltage stays in the wires.',
      de: 'Zu viel Spannung bleibt in den Leitungen.',
    },
  },
  (entry, voice) => {
    const { dropNotePercent, dropWarnPercent } = entry.plan.thresholds.wiring;
    const all = wiredBranches(entry);
    return all.flatMap((wired): Finding[] => {
      const { found, branch, path } = wired;
      if (!isEnd(entry, wired) || found.wayDropPercent <= dropNotePercent) return [];
      return [
        voice.finding({
          optionId: entry.option.id,
          severity: found.wayDropPercent > dropWarnPercent ? 'warn' : 'note',
          what: {
            en: `Up to the far end of ${found.name} ${voice.say(found.wayDropV, 'V', 2)} are lost, ${voice.say(found.wayDropPercent, '%', 2)} of ${voice.say(found.zoneV, 'V')}.`,
            de: `Bis zum fernen Ende von ${found.name} gehen ${voice.say(found.wayDropV, 'V', 2)} verloren, ${voice.say(found.wayDropPercent, '%', 2)} von ${voice.say(found.zoneV, 'V')}.`,
          },
          consequence: {
            en: 'Less speed, dim lights, an early cutoff, and heat in the wires.',
            de: 'Weniger Fahrt, trübes Licht, frühes Abschalten und Wärme in den Leitungen.',
          },
          remedy: {
            en: 'Thicker or shorter wire where most of it is lost, cleaner joints.',
            de: 'Dickere oder kürzere Leitung, wo das meiste verloren geht, sauberere Verbindungen.',
          },
          facts: [
            [{ en: 'drop', de: 'Abfall' }, found.wayDropV, 'V'],
            [
              { en: 'of this branch', de: 'davon dieser Zweig' },
              found.states.cruising?.dropV ?? 0,
              'V',
            ],
          ],
          fields: [branch.conductor === null ? path : `${path}.conductor`, `${path}.lengthM`],
          cures: dropCure(entry, wired, wayTo(entry, all, wired), voice),
        }),
      ];
    });
  },
);

const motorSide: Rule = wiredOptionRule(
  {
    id: 'WIR-3',
    severity: 'warn',
    sourceClass: 'handbook',
    source: 'Controller sheets: at part duty the motor current is higher than the battery current',
    about: {
      en: 'The motor line is sized for the battery current.',
      de: 'Die Motorleitung ist nach dem Batteriestrom bemessen.',
    },
  },
  (entry, voice) =>
    wiredBranches(entry).flatMap((wired): Finding[] => {
      const { found, branch, path } = wired;
      const isMotor = entry.wiring.devices.some(
        ({ id, kind }) => id === branch.to && kind === 'motor',
      );
      if (!isMotor || found.zone !== 'controller' || found.conductorAssumed) return [];
      const { demand } = entry.wired;
      const optionId = entry.option.id;
      if (demand.motorSideIsFloor) {
        return [
          voice.notChecked({
            optionId,
            missing: {
              en: `the controller's motor current limit is missing; ${found.name} carries at least ${voice.say(demand.start.batteryA, 'A')} at a start.`,
              de: `die Motorstrombegrenzung der Steuerung fehlt; ${found.name} führt beim Anlauf mindestens ${voice.say(demand.start.batteryA, 'A')}.`,
            },
            fields: [`${entry.controllerPath}.motorCurrentLimitA`],
          }),
        ];
      }
      const motorA = found.states.start?.currentA ?? 0;
      if (motorA <= found.ampacityA * rounding || found.continuousA > found.ampacityA) return [];
      return [
        voice.finding({
          optionId,
          what: {
            en: `${found.name} stands ${voice.say(found.ampacityA, 'A')}; the controller drives up to ${voice.say(motorA, 'A')} through the motor while the battery gives ${voice.say(demand.start.batteryA, 'A')}.`,
            de: `${found.name} trägt ${voice.say(found.ampacityA, 'A')}; die Steuerung treibt bis zu ${voice.say(motorA, 'A')} durch den Motor, während die Batterie ${voice.say(demand.start.batteryA, 'A')} gibt.`,
          },
          consequence: {
            en: 'On a long slow climb the motor line overheats although every battery wire stays cool.',
            de: 'Bei langsamer langer Steigung überhitzt die Motorleitung, obwohl jede Batterieleitung kühl bleibt.',
          },
          remedy: {
            en: 'Size the motor line for the motor current limit, or lower that limit.',
            de: 'Die Motorleitung nach der Motorstrombegrenzung bemessen oder diese senken.',
          },
          facts: [
            [{ en: 'motor current limit', de: 'Motorstromgrenze' }, motorA, 'A'],
            [{ en: 'ampacity', de: 'Belastbarkeit' }, found.ampacityA, 'A'],
          ],
          fields: [`${path}.conductor`, `${entry.controllerPath}.motorCurrentLimitA`],
          cures: smallestWireCure(wired),
        }),
      ];
    }),
);

function isLink(entry: WiredOption, deviceId: string): boolean {
  return entry.wiring.devices.some((device) => device.id === deviceId && device.kind === 'string');
}

/** Nothing of the same zone goes on behind it. */
function isEnd(entry: WiredOption, { found, branch }: WiredBranch): boolean {
  const goesOn = entry.wiring.branches.some((other) => other.from === branch.to);
  const to = entry.wiring.devices.find((device) => device.id === branch.to);
  return found.zone !== null && (!goesOn || to?.kind === 'controller' || to?.kind === 'converter');
}

export const wireCurrentRules: readonly Rule[] = [ampacity, drop, motorSide];
