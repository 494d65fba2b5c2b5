import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import type { SheetBlock, SheetPart } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { assumptionBlocks } from './build-assumptions.ts';
import { buildCharts } from './build-charts.ts';
import { factGroups } from './build-fact-groups.ts';
import { findingBlocks } from './build-findings.ts';
import { fuseBlocks } from './build-fuses.ts';
import { headlineFigures, outingBlocks } from './build-outings.ts';
import { careBlock } from './care-block.ts';

/** The build sheet: what is built, what it does, its limits, what is open, and what all this rests on. */
export function buildPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(buildWords, voice.language);
  const note: SheetBlock[] =
    facts.plan.note.trim() === ''
      ? []
      : [
          { kind: 'heading', text: words.note },
          { kind: 'text', text: facts.plan.note.trim() },
        ];
  return {
    id: 'build',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [
      headlineFigures(facts, voice),
      careBlock(facts, voice),
      ...outingBlocks(facts, voice),
      { kind: 'drawings', drawings: buildCharts(facts, voice) },
      { kind: 'columns', groups: factGroups(facts, voice) },
      ...fuseBlocks(facts, voice),
      ...note,
      ...findingBlocks(facts, voice),
      ...assumptionBlocks(facts, voice),
    ],
  };
}
