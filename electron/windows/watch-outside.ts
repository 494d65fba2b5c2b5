import type { Shell } from '../shell.ts';
import { currentMark } from '../files/plan-file.ts';
import { sameMark } from '../files/file-mark.ts';
import { sendTo, type PlanWindow } from './plan-window.ts';

/** On return to a window: tells its page, once for each foreign version, that the file has changed. */
export const tellOfOutsideChange = async (
  { documents, fs }: Pick<Shell, 'documents' | 'fs'>,
  plan: PlanWindow,
): Promise<void> => {
  const document = documents.ofWindow(plan.id);
  if (document === null || document.mark === null) return;
  const mark = await currentMark(fs, document.path).catch(() => null);
  if (mark === null || sameMark(mark, document.mark) || plan.reportedMark === mark.sha256) return;
  // A save of our own may have finished while the file was read.
  const present = documents.ofWindow(plan.id);
  if (present?.mark !== document.mark) return;
  plan.reportedMark = mark.sha256;
  sendTo(plan, 'changedOutside', { handle: document.handle });
};
