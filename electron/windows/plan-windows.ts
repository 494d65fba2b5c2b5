import { BrowserWindow, nativeTheme, screen, type Session } from 'electron';
import type { DocumentTable } from '../files/document-table.ts';
import type { ProblemLog } from '../diagnostics/problem-log.ts';
import { startAddress } from '../security/navigation.ts';
import { pagePreferences } from '../security/web-preferences.ts';
import { beside, centred, keepOnScreen, smallestWindow, type Bounds } from './bounds.ts';
import { guardClosing } from './guard-closing.ts';
import { createPlanWindow, markLoading, type PlanWindow } from './plan-window.ts';
import { reloadAfterCrash } from './reload-after-crash.ts';
import type { WindowPlace } from './window-place.ts';

export type PlanWindowsNeeds = {
  readonly session: Session;
  readonly preload: string;
  readonly icon: string;
  readonly version: string;
  readonly isPackaged: boolean;
  readonly documents: DocumentTable;
  readonly place: WindowPlace;
  readonly log: ProblemLog;
  readonly onFocus: (plan: PlanWindow) => void;
  readonly onChange: () => void;
  /** The window is gone for good and in order: its recovery copy may go too. */
  readonly onClosed: (plan: PlanWindow) => void;
};

const background = (): string => (nativeTheme.shouldUseDarkColors ? '#16191d' : '#ffffff');

/** All open windows. Each has one page, one plan, one recovery copy. */
export const createPlanWindows = (needs: PlanWindowsNeeds) => {
  const plans = new Map<number, PlanWindow>();
  const quitting = { now: false };

  const firstBounds = (): Bounds => {
    const main = screen.getPrimaryDisplay();
    const others = screen.getAllDisplays().filter((display) => display.id !== main.id);
    const areas = [main, ...others].map((display) => display.workArea);
    const front = BrowserWindow.getFocusedWindow();
    const last = needs.place.get();
    const wanted = front === null ? (last ?? centred(main.workArea)) : beside(front.getBounds());
    return keepOnScreen(wanted, areas);
  };

  const keepPlace = (window: BrowserWindow): void => {
    if (!window.isDestroyed()) void needs.place.set(window.getNormalBounds());
  };

  const open = (): PlanWindow => {
    const window = new BrowserWindow({
      ...firstBounds(),
      minWidth: smallestWindow.width,
      minHeight: smallestWindow.height,
      show: false,
      title: 'Cellwain',
      icon: needs.icon,
      backgroundColor: background(),
      webPreferences: pagePreferences(needs.preload, needs.version, needs.isPackaged),
    });
    const plan = createPlanWindow(window);
    plans.set(plan.id, plan);
    window.once('ready-to-show', () => window.show());
    window.on('page-title-updated', (event) => event.preventDefault());
    window.on('focus', () => {
      needs.onFocus(plan);
      needs.onChange();
    });
    window.webContents.on('did-start-navigation', (details) => {
      if (details.isMainFrame && !details.isSameDocument) markLoading(plan);
    });
    guardClosing(plan, quitting, () => keepPlace(window));
    reloadAfterCrash(plan, needs.log);
    window.once('closed', () => {
      plans.delete(plan.id);
      needs.documents.dropOf(plan.id);
      needs.onClosed(plan);
      needs.onChange();
    });
    void window.loadURL(startAddress);
    needs.onChange();
    return plan;
  };

  nativeTheme.on('updated', () => {
    for (const plan of plans.values()) plan.window.setBackgroundColor(background());
  });

  return {
    open,
    quitting,
    get: (id: number): PlanWindow | null => plans.get(id) ?? null,
    all: (): readonly PlanWindow[] => [...plans.values()],
    focused: (): PlanWindow | null => {
      const front = BrowserWindow.getFocusedWindow();
      return (front === null ? null : plans.get(front.id)) ?? null;
    },
    bringForward: (plan: PlanWindow): void => {
      if (plan.window.isMinimized()) plan.window.restore();
      plan.window.show();
      plan.window.focus();
    },
  };
};
export type PlanWindows = ReturnType<typeof createPlanWindows>;
