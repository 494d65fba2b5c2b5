import { useCallback } from 'react';
import { usePageCommand } from '../../app/page-commands.ts';
import { Button } from '../../controls/Button.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { theHost } from '../../state/document-store.ts';
import { sheetTexts } from '../../text/sheet.ts';
import { useText } from '../../text/use-text.ts';
import { sheetPartIds, sheetTables } from '#core/sheet/index.ts';
import {
  copyQuestion,
  printSheet,
  saveCalendar,
  saveHtml,
  saveJson,
  savePdf,
  saveTable,
  saveText,
  type SheetChoice,
} from './sheet-exports.ts';

interface SheetActionsProps {
  readonly choice: SheetChoice;
  readonly calendar: string | null;
  /** Nothing to print: no page chosen, or the sheet is not finished. */
  readonly isWaiting: boolean;
}

/** Print, files and clipboard. */
export const SheetActions = ({ choice, calendar, isWaiting }: SheetActionsProps) => {
  const text = useText(sheetTexts);
  const isDesktop = theHost().kind === 'desktop';
  const print = useCallback(() => {
    if (!isWaiting) void printSheet();
  }, [isWaiting]);
  const pdf = useCallback(() => {
    if (!isWaiting) void (isDesktop ? savePdf(choice) : printSheet());
  }, [isWaiting, isDesktop, choice]);
  usePageCommand('sheet.print', print);
  usePageCommand('export.pdf', pdf);
  return (
    <div className="sheet-actions">
      <Button look="main" isDisabled={isWaiting} onPress={isDesktop ? pdf : print}>
        {isDesktop ? text.pdf : text.print}
      </Button>
      {isDesktop ? (
        <Button isDisabled={isWaiting} onPress={print}>
          {text.print}
        </Button>
      ) : null}
      <Menu
        label={text.save}
        groups={[
          [
            {
              id: 'html',
              label: text.saveHtml,
              isDisabled: isWaiting,
              run: () => void saveHtml(choice),
            },
            {
              id: 'text',
              label: text.saveText,
              isDisabled: isWaiting,
              run: () => void saveText(choice),
            },
            {
              id: 'json',
              label: text.saveJson,
              isDisabled: isWaiting,
              run: () => void saveJson(choice),
            },
            {
              id: 'calendar',
              label: text.saveCalendar,
              isDisabled: calendar === null,
              run: () => {
                if (calendar !== null) void saveCalendar(choice, calendar);
              },
            },
          ],
          {
            title: text.saveTable,
            entries: sheetTables(choice.sheet, sheetPartIds).map((table) => ({
              id: table.id,
              label: table.caption,
              isDisabled: isWaiting,
              run: () => void saveTable(choice, table),
            })),
          },
        ]}
      >
        <Button>{text.save}</Button>
      </Menu>
      <Button icon="copy" isDisabled={isWaiting} onPress={() => void copyQuestion(choice)}>
        {text.copyQuestion}
      </Button>
    </div>
  );
};
