import type { Finding } from '../finding.ts';
import type { Rule } from '../rule.ts';
import { handBreakerCure } from './wiring-cures.ts';
import { wiredBranches, wiredOptionRule, wiringRule } from './wiring-rule.ts';

const distance: Rule = wiringRule(
  {
    id: 'FUS-2',
    severity: 'warn',
    sourceClass: 'standard',
    source: '33 CFR 183.460 (7 inches from the source), law for boats, used as a guide',
    about: {
      en: 'Unprotected wire between the terminal and its fuse.',
      de: 'Ungeschützte Leitung zwischen Pol und Sicherung.',
    },
  },
  (wiring, plan, voice) =>
    wiring.branches.flatMap((branch, index): Finding[] => {
      const { fuse } = branch;
      const from = wiring.devices.find((device) => device.id === branch.from);
      const atSource = from !== undefined && ['string', 'pack', 'mid-point'].includes(from.kind);
      if (fuse === null || !atSource) return [];
      const field = `wiring.branches.${index}.fuse.fromSourceMm`;
      const allowedMm = plan.thresholds.wiring.fuseDistanceMm;
      if (fuse.fromSourceMm === null) {
        return [
          voice.notChecked({
            missing: {
              en: `how far the fuse of ${branch.name} sits from the terminal is missing.`,
              de: `wie weit die Sicherung von ${branch.name} vom Pol sitzt, fehlt.`,
            },
            fields: [field],
          }),
        ];
      }
      if (fuse.fromSourceMm <= allowedMm) return [];
      const nearMm = Math.min(100, allowedMm);
      return [
        voice.finding({
          what: {
            en: `The fuse of ${branch.name} sits ${voice.say(fuse.fromSourceMm, 'mm')} from its source; at most ${voice.say(allowedMm, 'mm')} are wanted.`,
            de: `Die Sicherung von ${branch.name} sitzt ${voice.say(fuse.fromSourceMm, 'mm')} von ihrer Quelle; gewünscht sind höchstens ${voice.say(allowedMm, 'mm')}.`,
          },
          consequence: {
            en: 'Nothing guards the wire up to the fuse; a short there burns until the pack is empty.',
            de: 'Bis zur Sicherung schützt nichts die Leitung; ein Kurzschluss dort brennt, bis der Akku leer ist.',
          },
          remedy: {
            en: 'Move the fuse to the terminal, or sheathe the wire up to it against chafing.',
            de: 'Die Sicherung an den Pol setzen oder die Leitung bis zu ihr gegen Scheuern ummanteln.',
          },
          facts: [[{ en: 'distance', de: 'Abstand' }, fuse.fromSourceMm, 'mm']],
          fields: [field],
          cures: [
            {
              does: {
                en: `Move the fuse of ${branch.name} to ${voice.say(nearMm, 'mm')} (now ${voice.say(fuse.fromSourceMm, 'mm')})`,
                de: `Die Sicherung von ${branch.name} auf ${voice.say(nearMm, 'mm')} heranrücken (jetzt ${voice.say(fuse.fromSourceMm, 'mm')})`,
              },
              changes: [{ path: field, value: nearMm }],
            },
          ],
        }),
      ];
    }),
);

const motorGuard: Rule = wiredOptionRule(
  {
    id: 'FUS-3',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'A fuse guards wire, not motors. Common practice, no source',
    about: {
      en: 'Only the fuse stands between a held-fast motor and its burning winding.',
      de: 'Zwischen einem blockierten Motor und seiner brennenden Wicklung steht nur die Sicherung.',
    },
  },
  (entry, voice) => {
    if (
      entry.controller.motorCurrentLimitA !== null ||
      entry.controller.batteryCurrentLimitA !== null
    )
      return [];
    const feeding = wiredBranches(entry).find(({ found, branch }) => {
      const to = entry.wiring.devices.find((device) => device.id === branch.to);
      return to?.kind === 'controller' && found.guard !== null;
    });
    if (feeding === undefined || feeding.found.guard === null) return [];
    const { fuse, branchIndex } = feeding.found.guard;
    const { drive } = entry.plan.machine;
    const ratedA = drive?.motor.ratedCurrentA ?? null;
    const optionId = entry.option.id;
    if (drive === null || ratedA === null) {
      return [
        voice.notChecked({
          optionId,
          missing: {
            en: `the controller's current limit and the motor's rated current are missing: whether a fuse of ${voice.say(fuse.ratedA, 'A')} guards the motor cannot be said.`,
            de: `Strombegrenzung der Steuerung und Nennstrom des Motors fehlen: ob eine Sicherung von ${voice.say(fuse.ratedA, 'A')} den Motor schützt, lässt sich nicht sagen.`,
          },
          fields: [
            `${entry.controllerPath}.motorCurrentLimitA`,
            'machine.drive.motor.ratedCurrentA',
          ],
        }),
      ];
    }
    const side = drive.motorCount / Math.min(...drive.gears.map((gear) => gear.motorsInSeries));
    const motorA = ratedA * side;
    const carriesA = 1.35 * fuse.ratedA;
    if (carriesA <= entry.plan.thresholds.wiring.motorOverloadFactor * motorA) return [];
    return [
      voice.finding({
        optionId,
        what: {
          en: `No current limit is known; the ${voice.say(fuse.ratedA, 'A')} fuse may carry ${voice.say(carriesA, 'A')} for minutes, the motors stand ${voice.say(motorA, 'A')} for long.`,
          de: `Keine Strombegrenzung bekannt; die Sicherung ${voice.say(fuse.ratedA, 'A')} kann minutenlang ${voice.say(carriesA, 'A')} tragen, die Motoren vertragen dauernd ${voice.say(motorA, 'A')}.`,
        },
        consequence: {
          en: "The fuse's curve lies right of the motor's limit: a jammed wheel burns the winding and the fuse holds.",
          de: 'Die Kennlinie der Sicherung liegt rechts der Grenze des Motors: ein blockiertes Rad verbrennt die Wicklung, und die Sicherung hält.',
        },
        remedy: {
          en: 'Limit the current in the controller; keep the fuse for the wire.',
          de: 'Den Strom in der Steuerung begrenzen; die Sicherung bleibt für die Leitung.',
        },
        facts: [
          [{ en: 'fuse', de: 'Sicherung' }, fuse.ratedA, 'A'],
          [{ en: 'motors, continuous', de: 'Motoren, dauernd' }, motorA, 'A'],
        ],
        fields: [
          `${entry.controllerPath}.motorCurrentLimitA`,
          `wiring.branches.${branchIndex}.fuse.ratedA`,
        ],
      }),
    ];
  },
);

const autoReset: Rule = wiringRule(
  {
    id: 'FUS-4',
    severity: 'warn',
    sourceClass: 'common-practice',
    source:
      'Behaviour of automatically closing thermal breakers (SAE J553 type I, from memory). Common practice',
    about: {
      en: 'A breaker that closes by itself cycles on a fault.',
      de: 'Ein selbst schließender Schutzschalter taktet bei einem Fehler.',
    },
  },
  (wiring, _plan, voice) =>
    wiring.branches.flatMap((branch, index) =>
      branch.fuse?.class === 'breaker-auto-reset'
        ? [
            voice.finding({
              what: {
                en: `${branch.name} has a ${voice.say(branch.fuse.ratedA, 'A')} breaker that closes again by itself.`,
                de: `${branch.name} hat einen Schutzschalter ${voice.say(branch.fuse.ratedA, 'A')}, der sich selbst wieder schließt.`,
              },
              consequence: {
                en: 'It carries its rating for ever, and on a short it opens and closes until wire or contacts weld; the motor may start again on its own.',
                de: 'Er trägt seinen Nennstrom dauernd, und bei einem Kurzschluss taktet er, bis Leitung oder Kontakte verschweißen; der Motor kann von selbst wieder anlaufen.',
              },
              remedy: {
                en: 'Use a fuse, or a breaker that is closed by hand.',
                de: 'Eine Sicherung oder einen von Hand zu schließenden Schutzschalter nehmen.',
              },
              facts: [[{ en: 'rating', de: 'Nennstrom' }, branch.fuse.ratedA, 'A']],
              fields: [`wiring.branches.${index}.fuse.class`],
              cures: handBreakerCure(branch, `wiring.branches.${index}`, voice),
            }),
          ]
        : [],
    ),
);

export const fusePlaceRules: readonly Rule[] = [distance, motorGuard, autoReset];
