import type { Rule } from '../rule.ts';
import { optionRule, planRule } from '../rule.ts';
import { driveFacts } from './drive-facts.ts';

const chain = 'machine.drive.stopChain';

const isolator: Rule = planRule(
  {
    id: 'STP-1',
    severity: 'stop',
    sourceClass: 'handbook',
    source: "Controller makers' manuals: a main contactor or switch independent of the controller",
    about: {
      en: 'Something else than the controller stops the motor',
      de: 'Etwas anderes als die Steuerung hält den Motor an',
    },
  },
  ({ plan }, voice) => {
    const { drive } = plan.machine;
    if (drive === null) return [];
    const { isolator: kind, isolatorReachable: reachable } = drive.stopChain;
    const shared = {
      consequence: {
        en: 'A controller that fails shorted keeps full power on the motor, and neither key nor pedal stops it.',
        de: 'Eine Steuerung, die mit Kurzschluss ausfällt, gibt dem Motor weiter volle Leistung, und weder Schlüssel noch Pedal halten ihn an.',
      },
      remedy: {
        en: 'Fit a main contactor or an isolator within reach, in the main line, independent of the controller.',
        de: 'Ein Hauptschütz oder einen erreichbaren Trennschalter in die Hauptleitung einbauen, unabhängig von der Steuerung.',
      },
    };
    if (kind === 'none') {
      return [
        voice.finding({
          ...shared,
          what: {
            en: 'Only key or throttle stop the motor: nothing opens the main line.',
            de: 'Nur Schlüssel oder Gas halten den Motor an: Nichts öffnet die Hauptleitung.',
          },
          fields: [`${chain}.isolator`],
        }),
      ];
    }
    if (kind === 'unknown') {
      return [
        voice.notChecked({
          missing: {
            en: 'what opens the main line is not stated.',
            de: 'was die Hauptleitung öffnet, ist nicht angegeben.',
          },
          fields: [`${chain}.isolator`],
        }),
      ];
    }
    if (reachable === 'no') {
      return [
        voice.finding({
          ...shared,
          what: {
            en: 'The isolator cannot be reached while the machine moves.',
            de: 'Der Trennschalter ist während der Fahrt nicht erreichbar.',
          },
          fields: [`${chain}.isolatorReachable`],
        }),
      ];
    }
    if (reachable === 'unknown') {
      return [
        voice.notChecked({
          missing: {
            en: 'whether the isolator can be reached while it moves is not stated.',
            de: 'ob der Trennschalter während der Fahrt erreichbar ist, ist nicht angegeben.',
          },
          fields: [`${chain}.isolatorReachable`],
        }),
      ];
    }
    return [];
  },
);

const breaking: Rule = optionRule(
  {
    id: 'STP-2',
    severity: 'stop',
    sourceClass: 'handbook',
    source:
      "Switch makers' sheets: breaking capacity is stated for direct current and falls steeply with voltage",
    about: {
      en: 'The isolator breaks direct current at pack voltage and stall current',
      de: 'Der Trennschalter schaltet Gleichstrom bei Akkuspannung und Anlaufstrom',
    },
  },
  (entry, voice, context) => {
    const facts = driveFacts(entry, context);
    if (facts === null) return [];
    const { stopChain } = facts.drive;
    if (stopChain.isolator === 'none' || stopChain.isolator === 'unknown') return [];
    const { isolatorDcVoltageV: ratedV, isolatorBreakingA: ratedA } = stopChain;
    if (ratedV === null || ratedA === null) {
      return [
        voice.notChecked({
          optionId: entry.option.id,
          missing: {
            en: "the isolator's direct-current rating is missing (an AC rating does not count).",
            de: 'die Gleichstrom-Angabe des Trennschalters fehlt (eine AC-Angabe zählt nicht).',
          },
          fields: [ratedV === null ? `${chain}.isolatorDcVoltageV` : `${chain}.isolatorBreakingA`],
        }),
      ];
    }
    const packV = Math.max(facts.supply.emfV, entry.study?.highestChargeVoltageV ?? 0);
    // A shorted controller limits nothing: pack and winding alone set the current of a held shaft.
    const stallA =
      facts.supply.emfV /
      (facts.supply.resistanceOhm +
        Math.min(...facts.train.gears.map((gear) => gear.resistanceOhm)));
    if (ratedV >= packV && ratedA >= stallA) return [];
    return [
      voice.finding({
        optionId: entry.option.id,
        what: {
          en: `The isolator breaks ${voice.say(ratedA, 'A')} at ${voice.say(ratedV, 'V')} direct current; it may have to break ${voice.say(stallA, 'A')} at ${voice.say(packV, 'V')}.`,
          de: `Der Trennschalter schaltet ${voice.say(ratedA, 'A')} bei ${voice.say(ratedV, 'V')} Gleichspannung; er muss vielleicht ${voice.say(stallA, 'A')} bei ${voice.say(packV, 'V')} trennen.`,
        },
        consequence: {
          en: 'The arc does not go out: the contacts weld and the machine does not stop, or the switch burns.',
          de: 'Der Lichtbogen erlischt nicht: Die Kontakte verschweißen und die Maschine hält nicht an, oder der Schalter brennt.',
        },
        remedy: {
          en: 'Take an isolator with a direct-current rating at or above both figures.',
          de: 'Einen Trennschalter mit Gleichstrom-Angabe mindestens in Höhe beider Werte nehmen.',
        },
        facts: [
          [{ en: 'Held-shaft current', de: 'Strom bei blockiertem Motor' }, stallA, 'A'],
          [{ en: 'Highest pack voltage', de: 'Höchste Akkuspannung' }, packV, 'V'],
        ],
        fields: [`${chain}.isolatorBreakingA`, `${chain}.isolatorDcVoltageV`],
      }),
    ];
  },
);

const throttle: Rule = planRule(
  {
    id: 'STP-3',
    severity: 'warn',
    sourceClass: 'handbook',
    source: "Controller makers' manuals: throttle fault detection, high pedal disable",
    about: {
      en: 'A broken throttle wire or a pressed pedal at switch-on',
      de: 'Ein gebrochenes Gaskabel oder ein getretenes Pedal beim Einschalten',
    },
  },
  ({ plan }, voice) => {
    const { drive } = plan.machine;
    if (drive === null) return [];
    const { throttleFaultDetection: detection, startInterlock: interlock } = drive.stopChain;
    const found = [];
    const remedy = {
      en: 'Test it wheels-up: unplug each throttle wire in turn, switch on with the pedal pressed. Use a controller that stops.',
      de: 'Mit freien Rädern prüfen: jedes Gaskabel einzeln abziehen, mit getretenem Pedal einschalten. Eine Steuerung verwenden, die stehen bleibt.',
    };
    if (detection === 'no') {
      found.push(
        voice.finding({
          what: {
            en: 'The controller does not detect a throttle fault.',
            de: 'Die Steuerung erkennt keinen Gasfehler.',
          },
          consequence: {
            en: 'A lost ground wire reads as full speed.',
            de: 'Ein gelöstes Massekabel gilt als Vollgas.',
          },
          remedy,
          fields: [`${chain}.throttleFaultDetection`],
        }),
      );
    } else if (detection === 'unknown') {
      found.push(
        voice.notChecked({
          missing: {
            en: 'whether the controller detects a throttle fault is not known.',
            de: 'ob die Steuerung einen Gasfehler erkennt, ist nicht bekannt.',
          },
          fields: [`${chain}.throttleFaultDetection`],
        }),
      );
    }
    if (interlock === 'no') {
      found.push(
        voice.finding({
          what: {
            en: 'It moves when switched on with the pedal pressed.',
            de: 'Sie fährt los, wenn sie mit getretenem Pedal eingeschaltet wird.',
          },
          consequence: {
            en: 'It starts unexpectedly, without anyone ready.',
            de: 'Sie fährt unerwartet los, ohne dass jemand bereit ist.',
          },
          remedy,
          fields: [`${chain}.startInterlock`],
        }),
      );
    } else if (interlock === 'unknown') {
      found.push(
        voice.notChecked({
          missing: {
            en: 'whether it moves when switched on with the pedal pressed is not known.',
            de: 'ob sie mit getretenem Pedal beim Einschalten losfährt, ist nicht bekannt.',
          },
          fields: [`${chain}.startInterlock`],
        }),
      );
    }
    return found;
  },
);

export const driveStopRules: readonly Rule[] = [isolator, breaking, throttle];
