import { defaultResistanceOhm } from '../../battery/default-resistance.ts';
import type { Pack } from '../../plan/schema/option.ts';
import type { Finding } from '../finding.ts';
import type { OptionStudy } from '../../study/study.ts';
import { fuseClasses } from '../../wiring/fuse-classes.ts';
import type { CureStatement } from '../cure.ts';
import { optionRule, planRule, type Rule, type RuleVoice } from '../rule.ts';
import { blocksOfString, type StandingBlock } from './pack-series.ts';

/** Resistance of a string as it stands, blocks and links [Ω]. */
function stringOhm(pack: Pack, string: number, blocks: readonly StandingBlock[]): number {
  return blocks.reduce((sum, { block, position }) => {
    const worn = pack.differences.find(
      (entry) => entry.string === string && entry.position === position,
    );
    const own = block.resistanceOhm ?? defaultResistanceOhm(block);
    return sum + (own * (worn?.resistancePercent ?? 100)) / 100;
  }, pack.linkResistanceOhm);
}

/** Voltage of a string from the readings of its blocks [V]; null while one is missing. */
function stringRestV(blocks: readonly StandingBlock[]): number | null {
  let sum = 0;
  for (const { restVoltageV } of blocks) {
    if (restVoltageV === null) return null;
    sum += restVoltageV;
  }
  return sum;
}

/** Largest surge between any two strings from the readings [A]: `dV / (R1 + R2)`; null without readings. */
function surgeFromReadings(
  pack: Pack,
): { readonly surgeA: number; readonly apartV: number } | null {
  const strings = Array.from({ length: pack.parallelCount }, (_, index) => {
    const blocks = blocksOfString(pack, index + 1);
    return { restV: stringRestV(blocks), ohm: stringOhm(pack, index + 1, blocks) };
  });
  let worst = { surgeA: 0, apartV: 0 };
  for (const [index, one] of strings.entries()) {
    for (const other of strings.slice(index + 1)) {
      if (one.restV === null || other.restV === null) return null;
      const apartV = Math.abs(one.restV - other.restV);
      const surgeA = apartV / (one.ohm + other.ohm);
      if (surgeA > worst.surgeA) worst = { surgeA, apartV };
    }
  }
  return worst;
}

/** What a string takes as a charge for a moment without harm [A]. */
function harmlessSurgeA(pack: Pack, joiningPerAh: number): number {
  return pack.block.maximumChargeA ?? joiningPerAh * pack.block.capacityAh;
}

const unequalStrings: Rule = optionRule(
  {
    id: 'PCK-2',
    severity: 'stop',
    sourceClass: 'derived',
    source: 'Surge between joined strings dV / (R1 + R2)',
    about: {
      en: 'Strings of unequal voltage or different chemistry are joined in parallel.',
      de: 'Stränge ungleicher Spannung oder Chemie werden parallel geschaltet.',
    },
  },
  ({ option, path, study }, voice, { plan }) => {
    const { pack } = option;
    if (pack.parallelCount < 2) return [];
    const field = `${path}.pack.differences`;
    const kinds = Array.from({ length: pack.parallelCount }, (_, index) => {
      const blocks = blocksOfString(pack, index + 1);
      return `${blocks
        .map(({ block }) => block.chemistry)
        .toSorted()
        .join()}/${blocks.reduce((sum, { block }) => sum + block.cellGroups, 0)}`;
    });
    if (kinds.some((kind) => kind !== kinds[0])) {
      return [
        voice.finding({
          optionId: option.id,
          severity: 'stop',
          what: {
            en: `The ${pack.parallelCount} strings are not of one chemistry and cell count.`,
            de: `Die ${pack.parallelCount} Stränge sind nicht von einer Chemie und Zellenzahl.`,
          },
          consequence: {
            en: 'One string charges the other without limit: heat, gas, fire.',
            de: 'Ein Strang lädt den anderen unbegrenzt: Hitze, Gas, Feuer.',
          },
          remedy: {
            en: 'Join equal strings only; use the others in turn.',
            de: 'Nur gleiche Stränge verbinden; die anderen abwechselnd verwenden.',
          },
          fields: [field],
        }),
      ];
    }
    const read = surgeFromReadings(pack);
    const surgeA = read?.surgeA ?? study?.run.joiningSurgeA ?? null;
    if (surgeA === null) {
      if (pack.ageYears === 0 && pack.differences.length === 0) return [];
      return [
        voice.notChecked({
          optionId: option.id,
          missing: {
            en: 'the rest voltages of the strings are missing; measure both before they are joined.',
            de: 'die Ruhespannungen der Stränge fehlen; vor dem Verbinden beide messen.',
          },
          fields: [field],
        }),
      ];
    }
    const harmlessA = harmlessSurgeA(pack, plan.thresholds.pack.joiningPerAh);
    if (surgeA <= harmlessA) return [];
    const fuseA = pack.stringFuseA ?? Number.POSITIVE_INFINITY;
    const peakA = pack.block.peakDischargeA ?? 10 * pack.block.capacityAh;
    const apart = read === null ? '' : ` (${voice.say(read.apartV, 'V')})`;
    return [
      voice.finding({
        optionId: option.id,
        severity: surgeA > Math.min(fuseA, peakA) ? 'stop' : 'warn',
        what: {
          en: `Joining the strings as they stand${apart} drives ${voice.say(surgeA, 'A')} from one into the other; ${voice.say(harmlessA, 'A')} would be harmless.`,
          de: `Werden die Stränge so verbunden${apart}, fließen ${voice.say(surgeA, 'A')} vom einen in den anderen; ${voice.say(harmlessA, 'A')} wären harmlos.`,
        },
        consequence: {
          en: 'A spark at the last connection, a blown fuse, and a string charged faster than it stands.',
          de: 'Ein Funke an der letzten Verbindung, eine ausgelöste Sicherung und ein Strang, der schneller geladen wird, als er verträgt.',
        },
        remedy: {
          en: 'Charge each string full, let them rest, and join them when they are within 0.1 V, first through a lamp or resistor.',
          de: 'Jeden Strang voll laden, ruhen lassen und erst verbinden, wenn sie auf 0,1 V gleich sind, zuerst über eine Lampe oder einen Widerstand.',
        },
        facts: [
          [{ en: 'surge', de: 'Ausgleichsstrom' }, surgeA, 'A'],
          [{ en: 'harmless up to', de: 'harmlos bis' }, harmlessA, 'A'],
        ],
        fields: [field],
      }),
    ];
  },
);

/**
 * Rating for the fuse of one string [A]: 1.25 times its share of the outing's peak current, or half the rated
 * ampere-hours where the outing was not run. Common practice, no source. Null above what is made.
 */
function fuseOfString(pack: Pack, study: OptionStudy | null): number | null {
  const shareA =
    study === null ? pack.block.capacityAh / 2 : study.run.peakCurrentA / pack.parallelCount;
  return fuseClasses['bolt-down'].ratingsA.find((ratedA) => ratedA >= 1.25 * shareA) ?? null;
}

function stringFuseCure(path: string, ratedA: number | null, voice: RuleVoice): CureStatement[] {
  if (ratedA === null) return [];
  const amps = voice.say(ratedA, 'A');
  return [
    {
      does: {
        en: `Plan a fuse of ${amps} in each string (now none)`,
        de: `In jedem Strang eine Sicherung ${amps} einplanen (jetzt keine)`,
      },
      changes: [{ path: `${path}.pack.stringFuseA`, value: ratedA }],
    },
  ];
}

const stringFuses: Rule = planRule(
  {
    id: 'PCK-3',
    severity: 'warn',
    sourceClass: 'common-practice',
    source: 'One fuse for each parallel string. Common practice, no source',
    about: {
      en: 'Parallel strings without a fuse each.',
      de: 'Parallele Stränge ohne je eine Sicherung.',
    },
  },
  ({ options }, voice) =>
    options.flatMap(({ option, path, study }): Finding[] =>
      option.pack.parallelCount < 2 || option.pack.stringFuseA !== null
        ? []
        : [
            voice.finding({
              optionId: option.id,
              what: {
                en: `${option.pack.parallelCount} strings stand in parallel and none has its own fuse.`,
                de: `${option.pack.parallelCount} Stränge liegen parallel, und keiner hat eine eigene Sicherung.`,
              },
              consequence: {
                en: 'A shorted block is fed by the other strings with nothing to stop them.',
                de: 'Ein Block mit Schluss wird von den anderen Strängen gespeist, und nichts hält sie auf.',
              },
              remedy: {
                en: 'Fit a fuse in each string, close to its terminal.',
                de: 'In jeden Strang eine Sicherung nahe am Pol einbauen.',
              },
              facts: [[{ en: 'strings', de: 'Stränge' }, option.pack.parallelCount, '']],
              fields: [`${path}.pack.stringFuseA`],
              cures: stringFuseCure(path, fuseOfString(option.pack, study), voice),
            }),
          ],
    ),
);

export const packParallelRules: readonly Rule[] = [unequalStrings, stringFuses];
