import Papa from 'papaparse';
import type { Delimiter } from './mapping.ts';

/** Rows of cells of complete lines of text. Quoted cells may hold the delimiter. */
export function splitLines(text: string, delimiter: Delimiter): string[][] {
  if (delimiter === ' ') {
    return text.split(/\r\n|\n|\r/).map((line) => line.trim().split(/\s+/));
  }
  return Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false }).data;
}
