import { formulaOf } from '../../formulas/index.ts';
import { chemistryTraits } from '../../battery/chemistry.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';

/** What the figures rest on: the assumptions with their range and source, and the formulas that carry most. */
export function assumptionBlocks(facts: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(buildWords, voice.language);
  return [
    {
      kind: 'table',
      id: 'assumptions',
      caption: words.assumptions,
      columns: [
        { id: 'assumption', label: words.assumption },
        { id: 'unit', label: '', tight: true },
        { id: 'low', label: words.low, align: 'end' },
        { id: 'likely', label: words.planned, align: 'end' },
        { id: 'high', label: words.high, align: 'end' },
        { id: 'source', label: words.source },
      ],
      rows: facts.inputs.map(({ label, unit, low, likely, high, source }) => [
        label[voice.language],
        unit === '1' ? '' : unit,
        { text: voice.number(low), value: low },
        { text: voice.number(likely), value: likely },
        { text: voice.number(high), value: high },
        source,
      ]),
    },
    {
      kind: 'table',
      id: 'formulas',
      caption: words.formulas,
      columns: [
        { id: 'formula', label: words.formula },
        { id: 'source', label: words.source },
      ],
      rows: formulaIds(facts).flatMap((id) => {
        const formula = formulaOf(id);
        return formula === undefined ? [] : [[formula.title, formula.source.citation]];
      }),
    },
  ];
}

/** Formulas that carry the figures of this plan. */
function formulaIds({ option, plan }: SheetFacts): string[] {
  const { family } = chemistryTraits[option.pack.block.chemistry];
  return [
    'two-well-state',
    'peukert-time',
    'open-circuit-voltage',
    'loaded-voltage',
    ...(family === 'lead' ? ['lead-capacity-temperature', 'charge-voltage-temperature'] : []),
    ...(family === 'lead' && option.charger !== null ? ['ventilation'] : []),
    ...(plan.machine.drive === null ? [] : ['road-force', 'motor-point', 'controller-current']),
    ...(plan.machine.converter === null ? [] : ['converter-loss']),
    'ampacity',
    'voltage-drop',
    'fault-withstand',
  ];
}
