import { exportAs } from '../../charts/export-chart.ts';
import { openDialog, theHost } from '../../state/document-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { documentTexts } from '../../text/documents.ts';
import { sheetTexts } from '../../text/sheet.ts';
import { textNow } from '../../text/use-text.ts';
import type { HostResult } from '#core/shell/failure.ts';
import {
  sheetHtml,
  sheetText,
  tableCsv,
  type Paper,
  type Sheet,
  type SheetPartId,
  type SheetTable,
} from '#core/sheet/index.ts';

/** What is to leave the screen, and how. */
export interface SheetChoice {
  readonly sheet: Sheet;
  readonly parts: readonly SheetPartId[];
  readonly paper: Paper;
}

const nameOf = ({ sheet }: SheetChoice, what = ''): string =>
  `${sheet.machineName} ${sheet.optionName}${what === '' ? '' : ` ${what}`}`;

function tell(result: HostResult<{ readonly name: string } | null>): void {
  if (!result.ok) {
    if (result.code !== 'cancelled')
      openDialog({ kind: 'failure', failure: result, during: 'export' });
  } else if (result.value !== null) {
    showToast(textNow(documentTexts).exported(result.value.name));
  }
}

export async function printSheet(): Promise<void> {
  tell(await theHost().print());
}

export async function savePdf(choice: SheetChoice): Promise<void> {
  tell(
    await theHost().exportPdf({
      suggestedName: nameOf(choice),
      paper: choice.paper === 'a4' ? 'A4' : 'Letter',
      landscape: false,
    }),
  );
}

export const saveHtml = (choice: SheetChoice): Promise<void> =>
  exportAs('html', nameOf(choice), sheetHtml(choice.sheet, choice.parts, choice.paper));

export const saveText = (choice: SheetChoice): Promise<void> =>
  exportAs('txt', nameOf(choice), sheetText(choice.sheet, choice.parts));

export const saveJson = (choice: SheetChoice): Promise<void> =>
  exportAs('json', nameOf(choice), `${JSON.stringify(choice.sheet, null, 2)}\n`);

export const saveTable = (choice: SheetChoice, table: SheetTable): Promise<void> =>
  exportAs('csv', nameOf(choice, table.caption), tableCsv(table));

export const saveCalendar = (choice: SheetChoice, calendar: string): Promise<void> =>
  exportAs('ics', nameOf(choice), calendar);

/** The summary in plain text on the clipboard. */
export async function copyQuestion({ sheet }: SheetChoice): Promise<void> {
  const text = sheet.parts
    .filter(({ id }) => id === 'question')
    .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'plain' ? block.text : [])))
    .join('\n');
  const result = await theHost().copyText(text);
  tell(result);
  if (result.ok) showToast(textNow(sheetTexts).questionCopied);
}
