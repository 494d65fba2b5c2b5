import { basename, join } from 'node:path';
import type { ExportKind } from '#core/shell/documents.ts';
import { failure, success, type HostResult } from '#core/shell/failure.ts';
import { askWhereToSave } from '../export/ask-where.ts';
import { exportBytes, safeFileName } from '../export/export-file.ts';
import { fileFailure } from '../files/file-failure.ts';
import { writeWhole } from '../files/write-whole.ts';
import { wordsFor } from '../text/language-of.ts';
import type { PlanWindow } from '../windows/plan-window.ts';
import type { CallHandlers } from './answer-calls.ts';
import type { Shell } from '../shell.ts';

type ExportCalls = Pick<CallHandlers, 'exportFile' | 'exportPdf' | 'print'>;

export const exportCalls = (shell: Shell): ExportCalls => {
  const { fs, queue, windows, documentsFolder } = shell;

  const saveExport = async (
    plan: PlanWindow,
    wish: string,
    // Each kind of file is named by its ending.
    ending: ExportKind | 'pdf',
    make: () => Promise<Uint8Array>,
  ): Promise<HostResult<{ name: string }>> => {
    const defaultPath = join(documentsFolder, safeFileName(wish, ending));
    const label = wordsFor(plan).exportKinds[ending];
    const path = await askWhereToSave(plan, fs, { defaultPath, ending, label });
    if (path === null) return failure('cancelled');
    const name = basename(path);
    try {
      const bytes = await make();
      await queue(path, () => writeWhole(fs, path, bytes));
      return success({ name });
    } catch (error) {
      return fileFailure(error, name, 'writing');
    }
  };

  return {
    exportFile: async ({ kind, suggestedName, content }, windowId) => {
      const plan = windows.get(windowId);
      const bytes = exportBytes(content);
      if (plan === null) return failure('unknown-document');
      if (bytes === null) return failure('too-large');
      return saveExport(plan, suggestedName, kind, async () => bytes);
    },
    exportPdf: async ({ suggestedName, paper, landscape }, windowId) => {
      const plan = windows.get(windowId);
      if (plan === null) return failure('unknown-document');
      return saveExport(plan, suggestedName, 'pdf', () =>
        plan.window.webContents.printToPDF({
          pageSize: paper,
          landscape,
          printBackground: true,
          // The sheet has pages that lie on their side.
          preferCSSPageSize: true,
          generateTaggedPDF: true,
          generateDocumentOutline: true,
        }),
      );
    },
    print: (_payload, windowId) =>
      new Promise((answer) => {
        const plan = windows.get(windowId);
        if (plan === null) return answer(failure('unknown-document'));
        plan.window.webContents.print({ printBackground: true }, (done, reason) => {
          // Electron's word for a user who backs out.
          const cancelled = /cancel/i.test(reason);
          answer(done ? success(null) : failure(cancelled ? 'cancelled' : 'failed'));
        });
      }),
  };
};
