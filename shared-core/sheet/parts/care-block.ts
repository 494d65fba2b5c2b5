import { chemistryTraits } from '../../battery/chemistry.ts';
import type { SheetBlock } from '../sheet.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { wordsIn, type SheetVoice } from '../sheet-voice.ts';
import { careWords } from '../words/shared-words.ts';

/** The usual cautions, local codes and licensed practice first. */
export function careBlock({ option }: SheetFacts, voice: SheetVoice): SheetBlock {
  const words = wordsIn(careWords, voice.language);
  const { family } = chemistryTraits[option.pack.block.chemistry];
  return {
    kind: 'care',
    title: words.title,
    items: [words.first, words.fuse, family === 'lead' ? words.lead : words.lithium, words.rider],
  };
}

/** The first caution by itself, as one line, for pages that only need the reminder. */
export function careLine(voice: SheetVoice): SheetBlock {
  const words = wordsIn(careWords, voice.language);
  return { kind: 'care', title: words.title, items: [words.first] };
}
