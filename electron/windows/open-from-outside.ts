import { isAbsolute, resolve } from 'node:path';
import { openForWindow } from '../files/open-documents.ts';
import type { Shell } from '../shell.ts';
import { sendTo, type PlanWindow } from './plan-window.ts';

/** Plan files named on a command line; switches and the program itself are none. */
export const plansOnCommandLine = (argv: readonly string[], folder: string): readonly string[] =>
  argv
    .filter((argument) => !argument.startsWith('-') && argument.toLowerCase().endsWith('.wain'))
    .map((argument) => (isAbsolute(argument) ? argument : resolve(folder, argument)));

/** A window that shows only what it started with can take a plan; any other keeps its own. */
const isFree = ({ state }: PlanWindow): boolean => !state.unsaved && state.handle === null;

/** Opens a plan that came from the desktop, a second start or the recent menu. */
export const openFromOutside = async (shell: Shell, path: string): Promise<void> => {
  const { windows, documents, fs } = shell;
  const real = await fs.realpath(path).catch(() => path);
  const holder = documents.windowWith(real);
  if (holder !== null) return shell.showWindow(holder);
  const front = windows.focused();
  const free = [...(front === null ? [] : [front]), ...windows.all()].find(isFree);
  const plan = free ?? windows.open();
  sendTo(plan, 'openRequest', await openForWindow(shell, real, plan.id));
  windows.bringForward(plan);
  shell.menuChanged();
};
