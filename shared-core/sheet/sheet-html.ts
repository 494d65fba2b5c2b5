import { escapeMarkup, writeMarkup } from './markup/write-markup.ts';
import { footLine, sheetMarkup } from './markup/sheet-markup.ts';
import { deskStyle, pageStyle, paperStyle, type Paper } from './markup/sheet-style.ts';
import type { Sheet } from './sheet.ts';
import type { SheetPartId } from './sheet-parts.ts';
import { wordsIn } from './sheet-voice.ts';
import { frameWords } from './words/frame-words.ts';

/**
 * The chosen parts as one HTML file that asks for nothing else: style and drawings stand in it, it holds no script, and
 * its own policy forbids any request.
 */
export function sheetHtml(sheet: Sheet, parts: readonly SheetPartId[], paper: Paper): string {
  const words = wordsIn(frameWords, sheet.language);
  return [
    '<!doctype html>',
    `<html lang="${sheet.language}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta name="generator" content="Cellwain ${escapeMarkup(sheet.version)}">`,
    `<title>${escapeMarkup(sheet.title)}</title>`,
    `<style>${pageStyle(paper, footLine(sheet), words.page)}${paperStyle}${deskStyle(paper)}@media screen{body{margin:0;padding:8mm 0;background:#e4e7e2}}@media print{body{margin:0}}</style>`,
    '</head>',
    `<body>${writeMarkup(sheetMarkup(sheet, parts))}</body>`,
    '</html>',
    '',
  ].join('\n');
}
