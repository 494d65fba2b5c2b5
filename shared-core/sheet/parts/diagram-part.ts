import { diagramOf } from '../../wiring/index.ts';
import { diagramDrawing } from '../drawing/diagram-drawing.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetPart } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { wireWords } from '../words/wire-words.ts';
import { careLine } from './care-block.ts';

/** The one-line diagram with the figures of cruising. */
export function diagramPart(facts: SheetFacts, voice: SheetVoice): SheetPart {
  const words = wordsIn(wireWords, voice.language);
  const { plan, wiringProposed, wiringStudy } = facts;
  const diagram = diagramOf(wiringStudy, 'cruising', voice.language);
  return {
    id: 'diagram',
    title: words.diagramTitle,
    lead: words.diagramLead,
    wide: true,
    blocks: [
      careLine(voice),
      ...(wiringProposed
        ? ([{ kind: 'text', tone: 'soft', text: buildWords.proposed[voice.language] }] as const)
        : []),
      { kind: 'drawings', drawings: [diagramDrawing(diagram, plan.machine.name)] },
      { kind: 'text', tone: 'soft', text: words.diagramKey },
    ],
  };
}
