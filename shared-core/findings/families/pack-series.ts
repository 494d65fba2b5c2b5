import type { Words } from '../../plan/language.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Difference, Pack } from '../../plan/schema/option.ts';
import type { Thresholds } from '../../plan/schema/thresholds.ts';
import type { Finding, Severity } from '../finding.ts';
import { optionRule, type Rule, type RuleVoice } from '../rule.ts';

/** A block as it stands in its string. */
export interface StandingBlock {
  readonly position: number;
  readonly block: Block;
  readonly capacityAh: number;
  readonly ageYears: number;
  readonly restVoltageV: number | null;
}

/** The blocks of one string (counted from 1) with their differences worked in. */
export function blocksOfString(pack: Pack, string: number): StandingBlock[] {
  return Array.from({ length: pack.seriesCount }, (_, index) => {
    const position = index + 1;
    const difference: Difference | undefined = pack.differences.find(
      (entry) => entry.string === string && entry.position === position,
    );
    const block = difference?.replacement ?? pack.block;
    return {
      position,
      block,
      capacityAh: (block.capacityAh * (difference?.capacityPercent ?? 100)) / 100,
      ageYears: difference?.ageYears ?? pack.ageYears,
      restVoltageV: difference?.restVoltageV ?? null,
    };
  });
}

const consequence: Words = {
  en: 'The weakest block empties first, is driven backwards by the others and is overcharged by the charger; it dies and takes the rest along.',
  de: 'Der schwächste Block ist zuerst leer, wird von den anderen umgepolt und vom Ladegerät überladen; er stirbt und zieht die anderen mit.',
};

const mixedSeries: Rule = optionRule(
  {
    id: 'PCK-1',
    severity: 'stop',
    sourceClass: 'common-practice',
    source:
      'Blocks in series: same type, age, capacity and rest voltage. Common practice; limits of the rest voltage in the plan',
    about: {
      en: 'Blocks in series differ in type, age, capacity or rest voltage.',
      de: 'Blöcke in Reihe unterscheiden sich in Bauart, Alter, Kapazität oder Ruhespannung.',
    },
  },
  ({ option, path }, voice, { plan }) => {
    if (option.pack.seriesCount < 2) return [];
    const strings = Array.from({ length: option.pack.parallelCount }, (_, index) => index + 1);
    const found = strings.flatMap((string) =>
      checkString(blocksOfString(option.pack, string), string, {
        voice,
        optionId: option.id,
        field: `${path}.pack.differences`,
        thresholds: plan.thresholds,
      }),
    );
    return [
      ...found,
      ...missingReadings(option.pack, option.id, `${path}.pack.differences`, voice),
    ];
  },
);

interface StringCheck {
  readonly voice: RuleVoice;
  readonly optionId: string;
  readonly field: string;
  readonly thresholds: Thresholds;
}

function checkString(
  blocks: readonly StandingBlock[],
  string: number,
  check: StringCheck,
): Finding[] {
  return [
    typeFinding(blocks, string, check),
    capacityFinding(blocks, string, check),
    ageFinding(blocks, string, check),
    restFinding(blocks, string, check),
  ].filter((finding) => finding !== null);
}

function typeFinding(
  blocks: readonly StandingBlock[],
  string: number,
  check: StringCheck,
): Finding | null {
  const first = blocks[0]!;
  const other = blocks.find(
    ({ block }) =>
      block.chemistry !== first.block.chemistry || block.cellGroups !== first.block.cellGroups,
  );
  if (other === undefined) return null;
  return check.voice.finding({
    optionId: check.optionId,
    severity: 'stop',
    what: {
      en: `In string ${string}, ${other.block.name} stands in series with ${first.block.name}.`,
      de: `In Strang ${string} steht ${other.block.name} in Reihe mit ${first.block.name}.`,
    },
    consequence,
    remedy: { en: 'Use blocks of one type only.', de: 'Nur Blöcke einer Bauart verwenden.' },
    fields: [check.field],
  });
}

function capacityFinding(
  blocks: readonly StandingBlock[],
  string: number,
  check: StringCheck,
): Finding | null {
  const capacities = blocks.map((block) => block.capacityAh);
  const least = Math.min(...capacities);
  const most = Math.max(...capacities);
  // Rounded so that 90 % of a figure counts as exactly a tenth less.
  const weaker = Number((100 * (1 - least / most)).toFixed(6));
  if (weaker <= check.thresholds.pack.capacityNotePercent) return null;
  const weakest = blocks.find((block) => block.capacityAh === least)!;
  const { voice } = check;
  return voice.finding({
    optionId: check.optionId,
    severity: weaker > check.thresholds.pack.capacityWarnPercent ? 'warn' : 'note',
    what: {
      en: `Block ${weakest.position} of string ${string} holds ${voice.say(least, 'A·h')} against ${voice.say(most, 'A·h')}: ${voice.say(weaker, '%', 2)} less.`,
      de: `Block ${weakest.position} von Strang ${string} fasst ${voice.say(least, 'A·h')} gegen ${voice.say(most, 'A·h')}: ${voice.say(weaker, '%', 2)} weniger.`,
    },
    consequence,
    remedy: {
      en: 'Replace the whole string at once, or charge each block singly and stop earlier.',
      de: 'Den ganzen Strang auf einmal ersetzen, oder jeden Block einzeln laden und früher aufhören.',
    },
    facts: [
      [{ en: 'weakest', de: 'schwächster' }, least, 'A·h'],
      [{ en: 'strongest', de: 'stärkster' }, most, 'A·h'],
    ],
    fields: [check.field],
  });
}

function ageFinding(
  blocks: readonly StandingBlock[],
  string: number,
  check: StringCheck,
): Finding | null {
  const ages = blocks.map((block) => block.ageYears);
  const apart = Math.max(...ages) - Math.min(...ages);
  if (apart <= check.thresholds.pack.ageApartYears) return null;
  const { voice } = check;
  return voice.finding({
    optionId: check.optionId,
    severity: 'warn',
    what: {
      en: `The blocks of string ${string} are ${voice.say(apart, 'years')} apart in age.`,
      de: `Die Blöcke von Strang ${string} liegen im Alter ${voice.say(apart, 'Jahre')} auseinander.`,
    },
    consequence,
    remedy: {
      en: 'Replace all blocks of a string together.',
      de: 'Alle Blöcke eines Strangs zusammen ersetzen.',
    },
    facts: [[{ en: 'apart', de: 'Abstand' }, apart, 'years']],
    fields: [check.field],
  });
}

function restFinding(
  blocks: readonly StandingBlock[],
  string: number,
  check: StringCheck,
): Finding | null {
  const readings = blocks.map((block) => block.restVoltageV).filter((volts) => volts !== null);
  if (readings.length < 2) return null;
  const apart = Math.max(...readings) - Math.min(...readings);
  const severity = restSeverity(apart, check.thresholds);
  if (severity === null) return null;
  const { voice } = check;
  const low = blocks.find((block) => block.restVoltageV === Math.min(...readings))!;
  return voice.finding({
    optionId: check.optionId,
    severity,
    what: {
      en: `At rest the blocks of string ${string} are ${voice.say(apart, 'V')} apart; block ${low.position} is lowest with ${voice.say(Math.min(...readings), 'V', 4)}.`,
      de: `In Ruhe liegen die Blöcke von Strang ${string} ${voice.say(apart, 'V')} auseinander; Block ${low.position} ist mit ${voice.say(Math.min(...readings), 'V', 4)} der niedrigste.`,
    },
    consequence,
    remedy: {
      en: 'Charge each block singly until full, rest them overnight, measure again; what stays low is worn out.',
      de: 'Jeden Block einzeln voll laden, über Nacht ruhen lassen, neu messen; was niedrig bleibt, ist verbraucht.',
    },
    facts: [[{ en: 'difference at rest', de: 'Unterschied in Ruhe' }, apart, 'V']],
    fields: [check.field],
  });
}

/** Readings carry two decimals; the tiny slack keeps 12.80 - 12.70 from counting as more than 0.1. */
const readingSlackV = 1e-9;

function restSeverity(apartV: number, thresholds: Thresholds): Severity | null {
  if (apartV > thresholds.restDifferenceStopV + readingSlackV) return 'stop';
  if (apartV > thresholds.restDifferenceWarnV + readingSlackV) return 'warn';
  return apartV > thresholds.restDifferenceNoteV + readingSlackV ? 'note' : null;
}

/** Used blocks in series whose rest voltages nobody has read are a question, not a pass. */
function missingReadings(pack: Pack, optionId: string, field: string, voice: RuleVoice): Finding[] {
  const used = pack.ageYears > 0 || pack.differences.some((entry) => (entry.ageYears ?? 0) > 0);
  const readings = pack.differences.filter((entry) => entry.restVoltageV !== null).length;
  if (!used || readings >= pack.seriesCount * pack.parallelCount) return [];
  return [
    voice.notChecked({
      optionId,
      missing: {
        en: `the rest voltage of each block is missing (${readings} of ${pack.seriesCount * pack.parallelCount} read).`,
        de: `die Ruhespannung jedes Blocks fehlt (${readings} von ${pack.seriesCount * pack.parallelCount} gelesen).`,
      },
      fields: [field],
    }),
  ];
}

export const packSeriesRules: readonly Rule[] = [mixedSeries];
