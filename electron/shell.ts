import type { AboutData } from '#core/shell/documents.ts';
import type { ProblemLog } from './diagnostics/problem-log.ts';
import type { DocumentTable } from './files/document-table.ts';
import type { FileQueue } from './files/file-queue.ts';
import type { FileSystem } from './files/file-system.ts';
import type { RecentFiles } from './files/recent-files.ts';
import type { RecoveryStore } from './files/recovery-store.ts';
import type { PlanWindows } from './windows/plan-windows.ts';

/** The parts of the running shell, as the calls of the page use them. */
export type Shell = {
  readonly fs: FileSystem;
  readonly queue: FileQueue;
  readonly documents: DocumentTable;
  readonly recent: RecentFiles;
  readonly recovery: RecoveryStore;
  readonly windows: PlanWindows;
  readonly log: ProblemLog;
  readonly now: () => Date;
  readonly about: () => Promise<AboutData>;
  readonly menuChanged: () => void;
  readonly showWindow: (windowId: number) => void;
  readonly documentsFolder: string;
  readonly home: string;
  /** Operating system and processor, for the report. */
  readonly system: string;
};
