import { alignedTable } from '../headless/aligned-table.ts';
import type { Sheet, SheetBlock, SheetCell, SheetTable } from './sheet.ts';
import type { SheetPartId } from './sheet-parts.ts';
import { plainSpaces, wordsIn } from './sheet-voice.ts';
import { frameWords } from './words/frame-words.ts';

/** Widest table that is set in columns [characters]; wider ones become one line per figure. */
const widest = 118;

/** The chosen parts as plain text, for a mail or a forum. */
export function sheetText(sheet: Sheet, parts: readonly SheetPartId[]): string {
  const words = wordsIn(frameWords, sheet.language);
  const chosen = sheet.parts.filter(({ id }) => parts.includes(id));
  const pieces = chosen.flatMap((part) => [
    underlined(part.title, '='),
    part.lead,
    ...part.blocks.map(blockText),
  ]);
  return plainSpaces(
    [
      `${sheet.machineName}: ${sheet.optionName}`,
      `${words.date} ${sheet.date}, ${words.plan} ${sheet.planHash}, Cellwain ${sheet.version}`,
      ...(sheet.invented ? [words.invented] : []),
      ...pieces,
    ]
      .filter((piece) => piece !== '')
      .map((piece) => piece.trimEnd())
      .join('\n\n'),
  ).concat('\n');
}

function underlined(text: string, mark: string): string {
  return `${text}\n${mark.repeat(Array.from(text).length)}`;
}

const bullet = (text: string) => `- ${text}`;

function blockText(block: SheetBlock): string {
  switch (block.kind) {
    case 'heading':
      return underlined(block.text, '-');
    case 'text':
    case 'plain':
      return block.text;
    case 'list':
      return block.items
        .map((item, index) => (block.ordered === true ? `${index + 1}. ${item}` : bullet(item)))
        .join('\n');
    case 'checks':
      return block.items
        .map(({ text, hint }) => `[ ] ${text}${hint === undefined ? '' : ` ${hint}`}`)
        .join('\n');
    case 'facts':
      return [...(block.title === undefined ? [] : [block.title]), ...lines(block.rows)].join('\n');
    case 'columns':
      return block.groups.map(blockText).join('\n\n');
    case 'figures':
      return block.items
        .map(
          ({ label, value, detail }) =>
            `${label}: ${value}${detail === undefined ? '' : ` (${detail})`}`,
        )
        .join('\n');
    case 'table':
      return tableText(block);
    case 'drawings':
      return block.drawings.map(({ title, summary }) => `[${title}] ${summary}`).join('\n');
    case 'care':
      return [block.title, ...block.items.map(bullet)].join('\n');
    case 'findings':
      return block.items
        .map(
          ({ id, severityWord, what, remedy, source }) =>
            `${severityWord} ${id}: ${what}\n  ${remedy}\n  [${source}]`,
        )
        .join('\n');
    case 'label':
      return [
        block.title,
        block.big,
        ...lines(block.rows),
        ...block.warnings.map((warning) => `! ${warning}`),
      ].join('\n');
    case 'blanks':
      return block.labels.map((label) => `${label}: ____________________`).join('\n');
  }
}

function lines(rows: readonly { readonly label: string; readonly value: string }[]): string[] {
  return rows.map(({ label, value }) => `${label}: ${value}`);
}

const textOf = (cell: SheetCell | undefined): string =>
  cell === undefined ? '' : typeof cell === 'string' ? cell : cell.text;

function tableText({ caption, columns, rows, foot }: SheetTable): string {
  const kept = columns
    .map((column, index) => ({ column, index }))
    .filter(({ column }) => column.byHand !== true);
  const heads = kept.map(({ column }) =>
    column.unit === undefined ? column.label : `${column.label} ${column.unit}`,
  );
  const body = [...rows, ...(foot === undefined ? [] : [foot])].map((row) =>
    kept.map(({ index }) => textOf(row[index])),
  );
  const table = alignedTable(heads, body);
  const isNarrow = table.split('\n').every((line) => line.length <= widest);
  const text = isNarrow
    ? table
    : body
        .map((row) =>
          row
            .map((cell, index) => (index === 0 ? cell : `  ${heads[index]}: ${cell}`))
            .filter((_, index) => index === 0 || row[index] !== '')
            .join('\n'),
        )
        .join('\n');
  return `${caption}\n${text}`;
}
