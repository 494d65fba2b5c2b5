import { basename } from 'node:path';
import { dialog } from 'electron';
import type { FileSystem } from '../files/file-system.ts';
import { wordsFor } from '../text/language-of.ts';
import type { PlanWindow } from '../windows/plan-window.ts';
import { withEnding } from './export-file.ts';

export type SaveQuestion = {
  readonly defaultPath: string;
  readonly ending: string;
  readonly label: string;
};

const realOrSame = async (fs: FileSystem, path: string): Promise<string> =>
  fs.realpath(path).catch(() => path);

const exists = async (fs: FileSystem, path: string): Promise<boolean> =>
  fs.stat(path).then(
    () => true,
    () => false,
  );

/**
 * Asks where to save. The system's dialog asks before replacing what was typed; when the ending is
 * added after it, the file that is then meant was never asked about, so it is asked about here.
 */
export const askWhereToSave = async (
  plan: PlanWindow,
  fs: FileSystem,
  { defaultPath, ending, label }: SaveQuestion,
): Promise<string | null> => {
  const { canceled, filePath } = await dialog.showSaveDialog(plan.window, {
    defaultPath,
    filters: [{ name: label, extensions: [ending] }],
    properties: ['showOverwriteConfirmation', 'createDirectory'],
  });
  if (canceled || filePath === '') return null;
  const path = withEnding(filePath, ending);
  if (path !== filePath && (await exists(fs, path))) {
    const { buttons, ...question } = wordsFor(plan).replace(basename(path));
    const { response } = await dialog.showMessageBox(plan.window, {
      type: 'warning',
      ...question,
      buttons: [...buttons],
      defaultId: 1,
      cancelId: 1,
    });
    if (response !== 0) return null;
  }
  return realOrSame(fs, path);
};
