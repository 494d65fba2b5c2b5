import { commissioningSteps, type CommissioningStep } from '../../wiring/index.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock, SheetCell, SheetPart } from '../sheet.ts';
import { checkWords } from '../words/check-words.ts';
import { careBlock } from './care-block.ts';

const phases = [
  'before-power',
  'last-connector',
  'power-on',
  'wheels-up',
  'first-drive',
  'charging',
] as const satisfies readonly CommissioningStep['phase'][];

/** The steps between the last crimp and the first drive, with what each should read and room for what it reads. */
export function commissioningPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(checkWords, voice.language);
  const { plan, wiring, option, wiringStudy } = facts;
  const steps = commissioningSteps(plan, wiring, option, wiringStudy, voice.language);
  return {
    id: 'commissioning',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      careBlock(facts, voice),
      ...phases.flatMap((phase): SheetBlock[] => {
        const rows = steps.filter((step) => step.phase === phase);
        return rows.length === 0
          ? []
          : [
              {
                kind: 'table',
                id: `commissioning-${phase}`,
                caption: words[phase],
                columns: [
                  { id: 'step', label: words.step },
                  { id: 'how', label: words.how },
                  { id: 'expected', label: words.expected, align: 'end' },
                  { id: 'reading', label: words.reading, align: 'end' },
                  { id: 'passed', label: words.passed, byHand: true },
                ],
                rows: rows.map((step) => stepRow(step, voice)),
              },
            ];
      }),
      { kind: 'blanks', labels: [words.done, words.checked, words.date] },
    ],
  };
}

function stepRow(
  { what, how, expected, reading, verdict }: CommissioningStep,
  voice: SheetVoice,
): SheetCell[] {
  const words = wordsIn(checkWords, voice.language);
  const range =
    expected.kind === 'answer'
      ? words.yes
      : expected.max === null
        ? filled(words.atLeast, { low: scaled(expected.min, expected.unit, voice) })
        : filled(words.range, {
            low: voice.number(expected.min),
            high: scaled(expected.max, expected.unit, voice),
          });
  const read =
    reading === null
      ? ''
      : reading.value !== null && expected.kind === 'range'
        ? scaled(reading.value, expected.unit, voice)
        : reading.passed === null
          ? ''
          : words[reading.passed];
  const mark = verdict === 'passed' ? '✓' : verdict === 'failed' ? '✗' : '';
  return [what, how, range, read, mark];
}

/** Ohms of a megohm test read better as megohms. */
function scaled(value: number, unit: string, voice: SheetVoice): string {
  return unit === 'Ω' && value >= 1e6
    ? voice.quantity(value / 1e6, 'MΩ')
    : voice.quantity(value, unit);
}
