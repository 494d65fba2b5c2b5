/** The parts of a sheet, in the order in which they are printed. Stable: used by the command line and in tests. */
export const sheetPartIds = [
  'build',
  'diagram',
  'wires',
  'shopping',
  'label',
  'charge-card',
  'commissioning',
  'monthly',
  'handover',
  'log',
  'question',
] as const;
export type SheetPartId = (typeof sheetPartIds)[number];

export function isSheetPartId(text: string): text is SheetPartId {
  return sheetPartIds.some((id) => id === text);
}
