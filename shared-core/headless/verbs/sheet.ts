import {
  buildSheet,
  gatherSheetFacts,
  isSheetPartId,
  sheetHtml,
  sheetPartIds,
  sheetTables,
  sheetText,
  tableCsv,
  type Paper,
  type Sheet,
  type SheetFacts,
  type SheetPartId,
} from '../../sheet/index.ts';
import { calendarText, parseCivilDate } from '../../week/index.ts';
import { findOptions } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, writeBytesFile, writeTextFile } from '../load-plan.ts';
import { done, forceOption, jsonOption, languageOption, refuse, type Verb } from '../verb.ts';
import { isLanguage } from './findings.ts';

const formats = ['pdf', 'html', 'csv', 'ics', 'txt', 'json'] as const;
type Format = (typeof formats)[number];

interface Asked {
  readonly sheet: Sheet;
  readonly facts: SheetFacts;
  readonly parts: readonly SheetPartId[];
  readonly paper: Paper;
  readonly tableId: string | undefined;
}

/** Text of a file, or the one line that says why there is none. */
type Made =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly line: string };

export const sheetVerb: Verb = {
  name: 'sheet',
  usage: 'FILE [options]',
  summary: 'write what leaves the screen: build sheet, wire list, cards, check lists, calendar',
  details: [
    'The ending of OUT chooses: .pdf .html .csv .ics .txt .json. Without --out the text is printed.',
    `Parts: ${sheetPartIds.join(', ')}.`,
    'A CSV file holds one table: the first of the parts chosen, or the one named with --table.',
    'A PDF needs a Chromium: on the path, named in CHROMIUM, or the one of the test tools.',
  ],
  options: [
    jsonOption,
    { name: '--out', value: 'OUT', meaning: 'file to write; its ending chooses the format' },
    { name: '--option', value: 'ID', meaning: 'option of the sheet (else the first)' },
    { name: '--part', value: 'PART', meaning: 'this part only; may be repeated', repeats: true },
    { name: '--table', value: 'ID', meaning: 'table of a CSV file' },
    { name: '--paper', value: 'a4|letter', meaning: 'paper (else a4)' },
    { name: '--units', value: 'metric|us', meaning: 'units shown (else metric)' },
    { name: '--date', value: 'YYYY-MM-DD', meaning: 'date on the sheet (else today)' },
    { name: '--cases', value: 'N', meaning: 'cases of the spread, 0 to leave it out' },
    forceOption,
    languageOption,
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, values, has, host }) {
    const language = value('--language') ?? 'en';
    if (!isLanguage(language)) return refuse(`--language: ${language} is not known. Use en or de.`);
    const paper = value('--paper') ?? 'a4';
    if (paper !== 'a4' && paper !== 'letter')
      return refuse(`--paper: ${paper} is not known. Use a4 or letter.`);
    const units = value('--units') ?? 'metric';
    if (units !== 'metric' && units !== 'us')
      return refuse(`--units: ${units} is not known. Use metric or us.`);
    const parts = values('--part');
    const strange = parts.find((part) => !isSheetPartId(part));
    if (strange !== undefined)
      return refuse(`--part: ${strange} is not known. Use one of: ${sheetPartIds.join(', ')}.`);
    const date = value('--date') ?? host.today?.() ?? '';
    if (parseCivilDate(date) === null)
      return refuse(`--date: ${date || 'nothing'} is no day. Write it as YYYY-MM-DD.`);
    const cases = Number(value('--cases') ?? 0);
    if (!Number.isInteger(cases) || cases < 0 || cases > 20_000 || (cases > 0 && cases < 10))
      return refuse('--cases: Give 0, or a whole number from 10 to 20000.');
    const out = value('--out');
    const format = out === undefined ? 'txt' : formats.find((end) => ends(out, end));
    if (format === undefined)
      return refuse(`--out: ${out} has no known ending. Use one of: .${formats.join(' .')}`);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const found = findOptions(loaded.plan, value('--option') ?? loaded.plan.options[0]!.id);
    if (!found.ok) return refuse(found.line);
    const facts = gatherSheetFacts(loaded.plan, found.options[0]!, {
      language,
      spread: !has('--cases') || cases > 0,
      ...(cases > 0 ? { caseCount: cases } : {}),
    });
    const version = host.version?.() ?? '';
    const sheet = buildSheet(facts, { language, units, date, version });
    const asked: Asked = {
      sheet,
      facts,
      paper,
      parts: parts.length === 0 ? sheetPartIds : parts.filter(isSheetPartId),
      tableId: value('--table'),
    };
    if (has('--json')) {
      host.out(jsonText(chosenOnly(asked)));
      if (out === undefined) return done;
    }
    if (format === 'pdf') {
      const bytes = (await host.printPdf?.(sheetHtml(sheet, asked.parts, paper))) ?? null;
      if (bytes === null)
        return refuse(
          `${out}: a PDF needs a Chromium, and none was found. Install one or name it in CHROMIUM; or write .html and print it.`,
        );
      const trouble = await writeBytesFile(host, out!, bytes, has('--force'));
      return trouble === null ? done : refuse(trouble);
    }
    const made = make(format, asked);
    if (!made.ok) return refuse(made.line);
    if (out === undefined) {
      host.out(made.text);
      return done;
    }
    const trouble = await writeTextFile(host, out, made.text, has('--force'));
    return trouble === null ? done : refuse(trouble);
  },
};

function ends(path: string, ending: string): boolean {
  return path.toLowerCase().endsWith(`.${ending}`);
}

function chosenOnly({ sheet, parts }: Asked): Sheet {
  return { ...sheet, parts: sheet.parts.filter(({ id }) => parts.includes(id)) };
}

function make(format: Exclude<Format, 'pdf'>, asked: Asked): Made {
  const { sheet, parts, paper } = asked;
  switch (format) {
    case 'html':
      return { ok: true, text: sheetHtml(sheet, parts, paper) };
    case 'txt':
      return { ok: true, text: sheetText(sheet, parts) };
    case 'json':
      return { ok: true, text: jsonText(chosenOnly(asked)) };
    case 'csv':
      return makeCsv(asked);
    case 'ics':
      return makeCalendar(asked);
  }
}

function makeCsv({ sheet, parts, tableId }: Asked): Made {
  const tables = sheetTables(sheet, parts);
  const table = tableId === undefined ? tables[0] : tables.find(({ id }) => id === tableId);
  if (table !== undefined) return { ok: true, text: tableCsv(table) };
  if (tables.length === 0)
    return { ok: false, line: '--part: these parts hold no table. Choose wires or shopping.' };
  return {
    ok: false,
    line: `--table: there is no table ${tableId}. Use one of: ${tables.map(({ id }) => id).join(', ')}.`,
  };
}

function makeCalendar({ facts, sheet }: Asked): Made {
  const { plan, option, week } = facts;
  if (week.obstacle !== null)
    return {
      ok: false,
      line: '--out: there is no charging routine to write: the option needs a charger that fits, the week a use and a charging window.',
    };
  const from = parseCivilDate(sheet.date)!;
  return { ok: true, text: calendarText(plan, option, week, from, sheet.language) };
}
