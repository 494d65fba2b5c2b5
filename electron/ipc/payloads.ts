import { z } from 'zod';
import { commandTable, isCommandId, type CommandId } from '#core/commands/command-table.ts';
import { exportSizeLimitBytes, linkKeys, planSizeLimitBytes } from '#core/shell/documents.ts';
import type { CallName, ShellCalls } from '#core/shell/bridge.ts';

const nothing = z.strictObject({});
const handle = z.uuid();
const name = z.string().max(255);
/** UTF-16 length is never above the length in bytes, which is checked after this. */
const planText = z.string().max(planSizeLimitBytes);
const commandIds = commandTable.map(({ id }) => id);
const commandId = z.custom<CommandId>((value) => typeof value === 'string' && isCommandId(value));
const label = z.string().min(1).max(200);
const saveRequest = z.strictObject({
  handle: handle.nullable(),
  text: planText,
  suggestedName: name,
  revision: z.number().int().min(0).max(Number.MAX_SAFE_INTEGER),
  replaceChanged: z.boolean(),
});

/** What each call may carry: exactly these fields, nothing beside them. */
export const payloadSchemas = {
  openPlan: nothing,
  openDropped: z.strictObject({ name, text: planText }),
  openRecent: z.strictObject({ id: z.uuid() }),
  readAgain: z.strictObject({ handle }),
  savePlan: saveRequest,
  savePlanAs: saveRequest,
  recentFiles: nothing,
  forgetRecentFiles: nothing,
  newWindow: nothing,
  recoveryCopies: nothing,
  takeRecoveryCopy: z.strictObject({ id: z.uuid() }),
  discardRecoveryCopy: z.strictObject({ id: z.uuid() }),
  writeRecoveryCopy: z.strictObject({ name, text: planText }),
  discardOwnRecoveryCopy: nothing,
  setDocumentState: z.strictObject({ name, handle: handle.nullable(), unsaved: z.boolean() }),
  setMenuState: z.strictObject({
    language: z.enum(['en', 'de']),
    disabled: z.array(commandId).max(200),
    labels: z.partialRecord(z.enum(commandIds), label),
    menus: z.strictObject({ file: label, edit: label, view: label, places: label, help: label }),
    recent: label,
    forgetRecent: label,
  }),
  closeSeen: z.strictObject({ id: z.number().int().positive() }),
  closeAnswer: z.strictObject({
    id: z.number().int().positive(),
    answer: z.enum(['close', 'stay']),
  }),
  exportFile: z.strictObject({
    kind: z.enum(['png', 'svg', 'csv', 'html', 'json', 'txt', 'ics']),
    suggestedName: name,
    content: z.union([
      z.string().max(exportSizeLimitBytes),
      z.instanceof(Uint8Array) as z.ZodType<Uint8Array>,
    ]),
  }),
  exportPdf: z.strictObject({
    suggestedName: name,
    paper: z.enum(['A4', 'Letter']),
    landscape: z.boolean(),
  }),
  print: nothing,
  report: nothing,
  noteProblem: z.strictObject({ message: z.string().max(10_000) }),
  about: nothing,
  openLink: z.strictObject({ key: z.enum(linkKeys) }),
  copyText: z.strictObject({ text: z.string().max(exportSizeLimitBytes) }),
  pageReady: nothing,
} satisfies { [Name in CallName]: z.ZodType<ShellCalls[Name]['payload']> };
