import type { Finding } from '../finding.ts';
import type { Rule, RuleVoice } from '../rule.ts';
import { fuseCure, smallestWireCure } from './wiring-cures.ts';
import {
  wiredBranches,
  wiredOptionRule,
  type WiredBranch,
  type WiredOption,
} from './wiring-rule.ts';

const consequence = {
  en: 'A chafed or crushed wire glows and sets fire to what it touches before anything switches off.',
  de: 'Eine durchgescheuerte oder gequetschte Leitung glüht und entzündet, was sie berührt, bevor etwas abschaltet.',
};

/** FUS-1: every battery branch is guarded by a fuse that fits its wire, its current, its voltage and its short circuit. */
export const fuseRatings: Rule = wiredOptionRule(
  {
    id: 'FUS-1',
    severity: 'stop',
    sourceClass: 'standard',
    source:
      '33 CFR 183.455 and 183.460 (overcurrent protection by ampacity), as a guide; voltage and breaking capacity from data sheets; 1.25 x continuous: common practice',
    about: {
      en: 'A battery branch has no fuse, or one that does not fit wire, current, voltage or short circuit.',
      de: 'Ein Batteriezweig hat keine Sicherung oder eine, die nicht zu Leitung, Strom, Spannung oder Kurzschluss passt.',
    },
  },
  (entry, voice) => wiredBranches(entry).flatMap((wired) => checkBranch(entry, wired, voice)),
);

function checkBranch(entry: WiredOption, wired: WiredBranch, voice: RuleVoice): Finding[] {
  const { found } = wired;
  if (found.zone === 'pack' || found.zone === 'mid-point')
    return checkBatteryBranch(entry, wired, voice);
  const converterFed =
    found.zone === 'converter' && found.guard === null && !found.conductorAssumed;
  if (!converterFed || found.faultNearA <= found.ampacityA * 1.1) return [];
  return [
    voice.finding({
      optionId: entry.option.id,
      severity: 'warn',
      what: {
        en: `${found.name} has no fuse; the converter gives up to ${voice.say(found.faultNearA, 'A')} into a short, the wire carries ${voice.say(found.ampacityA, 'A')}.`,
        de: `${found.name} hat keine Sicherung; der Wandler gibt bis zu ${voice.say(found.faultNearA, 'A')} in einen Kurzschluss, die Leitung trägt ${voice.say(found.ampacityA, 'A')}.`,
      },
      consequence,
      remedy: {
        en: 'Fit a small fuse at the converter, or a thicker wire.',
        de: 'Eine kleine Sicherung am Wandler oder eine dickere Leitung vorsehen.',
      },
      facts: [[{ en: 'ampacity', de: 'Belastbarkeit' }, found.ampacityA, 'A']],
      fields: [`${wired.path}.fuse`, `${wired.path}.conductor`],
      cures: [...fuseCure(entry, wired, voice, true), ...smallestWireCure(wired)],
    }),
  ];
}

function checkBatteryBranch(entry: WiredOption, wired: WiredBranch, voice: RuleVoice): Finding[] {
  const { found, branch, path } = wired;
  const optionId = entry.option.id;
  const isLink = entry.wiring.devices.some(
    (device) => device.id === branch.from && device.kind === 'string',
  );
  // The links inside the pack lie before the main fuse; strings without a fuse each are a rule of their own.
  if (found.guard === null) {
    if (isLink) return [];
    return [
      voice.finding({
        optionId,
        what: {
          en: `Nothing guards ${found.name}: a short drives ${voice.say(found.faultNearA, 'A')} through ${found.conductorAssumed ? 'a wire nobody has named' : `a wire for ${voice.say(found.ampacityA, 'A')}`}.`,
          de: `Nichts schützt ${found.name}: ein Kurzschluss treibt ${voice.say(found.faultNearA, 'A')} durch ${found.conductorAssumed ? 'eine Leitung, die niemand benannt hat' : `eine Leitung für ${voice.say(found.ampacityA, 'A')}`}.`,
        },
        consequence,
        remedy: found.conductorAssumed
          ? {
              en: 'Read or measure the wire, and fit a fuse at its source end that the wire stands.',
              de: 'Die Leitung ablesen oder messen und an ihrem quellenseitigen Ende eine Sicherung einbauen, die sie verträgt.',
            }
          : {
              en: `Fit a fuse of at most ${voice.say(found.ampacityA, 'A')} at its source end.`,
              de: `Eine Sicherung von höchstens ${voice.say(found.ampacityA, 'A')} am quellenseitigen Ende einbauen.`,
            },
        facts: [[{ en: 'short-circuit current', de: 'Kurzschlussstrom' }, found.faultNearA, 'A']],
        fields: [`${path}.fuse`],
        cures: fuseCure(entry, wired, voice),
      }),
    ];
  }
  const findings: Finding[] = [];
  const guardName = entry.wired.branches[found.guard.branchIndex]!.name;
  if (!found.conductorAssumed && found.guard.fuse.ratedA > found.ampacityA) {
    findings.push(
      voice.finding({
        optionId,
        what: {
          en: `${found.name} carries ${voice.say(found.ampacityA, 'A')} without end; the fuse in ${guardName} is rated ${voice.say(found.guard.fuse.ratedA, 'A')}.`,
          de: `${found.name} trägt dauernd ${voice.say(found.ampacityA, 'A')}; die Sicherung in ${guardName} hat ${voice.say(found.guard.fuse.ratedA, 'A')}.`,
        },
        consequence,
        remedy: {
          en: 'Fit a smaller fuse where the wire gets thinner, or a thicker wire.',
          de: 'Eine kleinere Sicherung einbauen, wo die Leitung dünner wird, oder eine dickere Leitung nehmen.',
        },
        facts: [
          [{ en: 'ampacity', de: 'Belastbarkeit' }, found.ampacityA, 'A'],
          [{ en: 'fuse', de: 'Sicherung' }, found.guard.fuse.ratedA, 'A'],
        ],
        fields: [`${path}.conductor`, `wiring.branches.${found.guard.branchIndex}.fuse.ratedA`],
        cures: [...smallestWireCure(wired), ...fuseCure(entry, wired, voice, true)],
      }),
    );
  }
  const { fuse } = branch;
  if (fuse === null) return findings;
  const leastA = entry.plan.thresholds.wiring.fuseMargin * found.continuousA;
  const add = (
    field: string,
    what: { en: string; de: string },
    outcome: { en: string; de: string },
    remedy: { en: string; de: string },
  ) =>
    findings.push(
      voice.finding({
        optionId,
        what,
        consequence: outcome,
        remedy,
        fields: [`${path}.fuse.${field}`],
        cures: fuseCure(entry, wired, voice),
      }),
    );
  if (fuse.ratedA < leastA) {
    add(
      'ratedA',
      {
        en: `The fuse in ${found.name} is rated ${voice.say(fuse.ratedA, 'A')}; ${voice.say(found.continuousA, 'A')} flow for long, which asks for ${voice.say(leastA, 'A')}.`,
        de: `Die Sicherung in ${found.name} hat ${voice.say(fuse.ratedA, 'A')}; auf Dauer fließen ${voice.say(found.continuousA, 'A')}, das fordert ${voice.say(leastA, 'A')}.`,
      },
      {
        en: 'It runs hot, ages and opens on the way, where power is needed most.',
        de: 'Sie wird heiß, altert und öffnet unterwegs, wo die Kraft am nötigsten ist.',
      },
      {
        en: 'A larger fuse, with a wire that stands it.',
        de: 'Eine größere Sicherung, mit einer Leitung, die sie verträgt.',
      },
    );
  }
  const { highestVoltageV } = entry.wired;
  if (fuse.ratedVoltageV !== null && fuse.ratedVoltageV < highestVoltageV) {
    add(
      'ratedVoltageV',
      {
        en: `The fuse in ${found.name} breaks ${voice.say(fuse.ratedVoltageV, 'V')}; the pack reaches ${voice.say(highestVoltageV, 'V')}.`,
        de: `Die Sicherung in ${found.name} trennt ${voice.say(fuse.ratedVoltageV, 'V')}; der Akku erreicht ${voice.say(highestVoltageV, 'V')}.`,
      },
      {
        en: 'The arc may go on burning in the opened fuse.',
        de: 'Der Lichtbogen kann in der offenen Sicherung weiterbrennen.',
      },
      {
        en: 'A fuse rated for direct current at this voltage.',
        de: 'Eine Sicherung für Gleichstrom bei dieser Spannung.',
      },
    );
  }
  if (fuse.breakingA !== null && fuse.breakingA < found.faultNearA) {
    add(
      'breakingA',
      {
        en: `The fuse in ${found.name} breaks ${voice.say(fuse.breakingA, 'A')}; a short there drives ${voice.say(found.faultNearA, 'A')}.`,
        de: `Die Sicherung in ${found.name} trennt ${voice.say(fuse.breakingA, 'A')}; ein Kurzschluss dort treibt ${voice.say(found.faultNearA, 'A')}.`,
      },
      {
        en: 'It may burst, and the short goes on.',
        de: 'Sie kann platzen, und der Kurzschluss bleibt bestehen.',
      },
      { en: 'A class with more breaking capacity.', de: 'Eine Klasse mit mehr Ausschaltvermögen.' },
    );
  }
  if (fuse.ratedVoltageV === null || fuse.breakingA === null) {
    findings.push(
      voice.notChecked({
        optionId,
        missing: {
          en: `rated voltage or breaking capacity of the fuse in ${found.name} is missing; asked are ${voice.say(highestVoltageV, 'V')} and ${voice.say(found.faultNearA, 'A')}.`,
          de: `Nennspannung oder Ausschaltvermögen der Sicherung in ${found.name} fehlt; gefordert sind ${voice.say(highestVoltageV, 'V')} und ${voice.say(found.faultNearA, 'A')}.`,
        },
        fields: [
          ...(fuse.ratedVoltageV === null ? [`${path}.fuse.ratedVoltageV`] : []),
          ...(fuse.breakingA === null ? [`${path}.fuse.breakingA`] : []),
        ],
      }),
    );
  }
  return findings;
}
