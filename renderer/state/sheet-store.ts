import { create } from 'zustand';
import type { SheetAnswer, SheetRequest } from '../workers/sheet-message.ts';
import { sheetPartIds, type Paper, type Sheet, type SheetPartId } from '#core/sheet/index.ts';
import type { Language } from '#core/plan/language.ts';

interface SheetState {
  /** Null before the first result. */
  readonly sheet: Sheet | null;
  readonly calendar: string | null;
  /** The spreads stand in it too. */
  readonly isWhole: boolean;
  /** It does not belong to the plan on screen (yet). */
  readonly stale: boolean;
  readonly failure: string | null;
  readonly parts: readonly SheetPartId[];
  /** Null: by the units chosen. */
  readonly paper: Paper | null;
  /** Null: that of the window. */
  readonly language: Language | null;
}

export const useSheetState = create<SheetState>(() => ({
  sheet: null,
  calendar: null,
  isWhole: false,
  stale: true,
  failure: null,
  parts: sheetPartIds,
  paper: null,
  language: null,
}));

/** Shows or hides a part; they keep the order of the sheet. */
export function togglePart(id: SheetPartId, isOn: boolean): void {
  useSheetState.setState(({ parts }) => ({
    parts: sheetPartIds.filter((each) => (each === id ? isOn : parts.includes(each))),
  }));
}

export const chooseParts = (parts: readonly SheetPartId[]): void =>
  useSheetState.setState({ parts });
export const choosePaper = (paper: Paper): void => useSheetState.setState({ paper });
export const chooseSheetLanguage = (language: Language): void =>
  useSheetState.setState({ language });

/** Edits pause for so long before the sheet is made again [ms]. */
const pauseMs = 150;

let worker: Worker | null = null;
let busy = false;
let ticket = 0;
let timer: ReturnType<typeof setTimeout> | undefined;

function stop(): void {
  worker?.terminate();
  worker = null;
  busy = false;
}

function take({ data }: MessageEvent<SheetAnswer>): void {
  if (data.ticket !== ticket) return;
  if (data.kind === 'failed') {
    busy = false;
    useSheetState.setState({ failure: data.message, stale: false });
    return;
  }
  const { sheet, calendar, isWhole } = data;
  if (isWhole) busy = false;
  useSheetState.setState({ sheet, calendar, isWhole, stale: false, failure: null });
}

function send(request: SheetRequest): void {
  // Spreads of a plan that has changed are not waited for.
  if (busy) stop();
  if (worker === null) {
    worker = new Worker(new URL('../workers/sheet.worker.ts', import.meta.url), {
      type: 'module',
    });
    worker.addEventListener('message', take);
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      stop();
      useSheetState.setState({ failure: event.message, stale: false });
    });
  }
  busy = true;
  worker.postMessage(request, []);
}

/** Makes the sheet for these choices once they have stood still for a moment; returns the way to end it. */
export function askSheet(request: Omit<SheetRequest, 'ticket'>): () => void {
  ticket += 1;
  const mine = { ...request, ticket };
  useSheetState.setState({ stale: true });
  clearTimeout(timer);
  timer = setTimeout(() => send(mine), pauseMs);
  return () => clearTimeout(timer);
}

/** Ends the work when the place is left. */
export function endSheet(): void {
  clearTimeout(timer);
  ticket += 1;
  stop();
}
