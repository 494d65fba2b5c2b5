import { filled, sheetVoice, wordsIn } from '../sheet-voice.ts';
import { shortHash } from '../plan-hash.ts';
import type { Sheet, SheetPart } from '../sheet.ts';
import type { SheetPartId } from '../sheet-parts.ts';
import { frameWords } from '../words/frame-words.ts';
import { blockMarkup } from './block-markup.ts';
import { element, type MarkupNode } from './node.ts';

/** The chosen parts of a sheet, each on paper of its own. */
export function sheetMarkup(sheet: Sheet, parts: readonly SheetPartId[]): MarkupNode {
  return element(
    'article',
    'sheet',
    sheet.parts.filter(({ id }) => parts.includes(id)).map((part) => partMarkup(sheet, part)),
    { lang: sheet.language },
  );
}

function partMarkup(sheet: Sheet, part: SheetPart): MarkupNode {
  return element(
    'section',
    part.wide ? 'paper wide' : 'paper',
    [
      headMarkup(sheet, part),
      sheet.invented
        ? element('p', 'invented', [wordsIn(frameWords, sheet.language).invented])
        : null,
      ...part.blocks.map(blockMarkup),
    ],
    { 'data-part': part.id, 'aria-label': part.title },
  );
}

/** Head of a part: what it is, of what machine, and the block that tells one print from another. */
function headMarkup(sheet: Sheet, part: SheetPart): MarkupNode {
  const words = wordsIn(frameWords, sheet.language);
  const cell = (label: string, value: string) =>
    element('div', '', [element('dt', '', [label]), element('dd', '', [value])]);
  return element('header', 'head', [
    element('div', 'head-title', [
      element('h1', '', [part.title]),
      element('p', 'head-machine', [
        element('strong', '', [sheet.machineName]),
        element('span', '', [sheet.optionName]),
      ]),
      element('p', 'head-lead', [part.lead]),
    ]),
    element('dl', 'title-block', [
      cell(words.date, sheet.date),
      cell(words.plan, shortHash(sheet.planHash)),
      cell(words.program, `Cellwain ${sheet.version}`),
    ]),
  ]);
}

/** What stands at the foot of every printed page, beside its number. */
export function footLine(sheet: Sheet): string {
  const voice = sheetVoice(sheet.language, 'metric');
  const words = wordsIn(frameWords, voice.language);
  return filled(words.foot, {
    machine: sheet.machineName,
    option: sheet.optionName,
    date: sheet.date,
    hash: shortHash(sheet.planHash),
  });
}
