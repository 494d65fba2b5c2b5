import { planCaps } from './caps.ts';
import { fieldDocs } from './field-docs.ts';
import type { JsonPlace } from './json-place.ts';
import type { Language } from './language.ts';
import type { PlanProblem, PlanProblemCode } from './problem.ts';
import type { ScanObjection } from './scan-json.ts';
import { planVersion } from './schema/plan.ts';

/** What can be wrong with a file before its fields are looked at. */
export type FileTrouble =
  | { readonly kind: 'empty' | 'too-large' | 'not-a-plan' | 'no-version' }
  | { readonly kind: 'not-json'; readonly place: JsonPlace; readonly found: string }
  | { readonly kind: 'cut-short'; readonly place: JsonPlace }
  | { readonly kind: 'not-a-number'; readonly place: JsonPlace; readonly found: string }
  | { readonly kind: 'too-new' | 'too-old'; readonly version: number }
  | { readonly kind: 'scan'; readonly objection: ScanObjection };

/** Problem and remedy, in both languages. */
type Telling = Readonly<Record<Language, readonly [problem: string, remedy: string]>>;

interface Told {
  readonly code: PlanProblemCode;
  readonly path: string;
  readonly words: Telling;
}

/** The trouble with a file in words. */
export function fileProblem(trouble: FileTrouble, language: Language): PlanProblem {
  const { code, path, words } = tell(trouble);
  const [problem, remedy] = words[language];
  const title = path === '' ? { en: 'File', de: 'Datei' }[language] : fieldDocs(path).title;
  return { code, path, title, problem, remedy };
}

function tell(trouble: FileTrouble): Told {
  switch (trouble.kind) {
    case 'empty':
      return told('empty', '', {
        en: ['The file is empty.', 'Open a plan file (.wain) or a sample.'],
        de: ['Die Datei ist leer.', 'Eine Plandatei (.wain) oder ein Beispiel öffnen.'],
      });
    case 'too-large': {
      const size = planCaps.bytes / 1024 / 1024;
      return told('too-large', '', {
        en: [`The file is larger than ${size} MiB.`, 'No plan is that large; choose a plan file.'],
        de: [
          `Die Datei ist größer als ${size} MiB.`,
          'So groß ist kein Plan; eine Plandatei wählen.',
        ],
      });
    }
    case 'not-json': {
      const { line, column, path } = trouble.place;
      return told('not-json', path, {
        en: [
          `The file is not JSON: ${trouble.found} in line ${line}, column ${column} is unexpected.`,
          'Mend it at that place, or open a backup.',
        ],
        de: [
          `Die Datei ist kein JSON: ${trouble.found} in Zeile ${line}, Spalte ${column} ist unerwartet.`,
          'An dieser Stelle berichtigen oder eine Sicherung öffnen.',
        ],
      });
    }
    case 'cut-short': {
      const { line, path } = trouble.place;
      return told('not-json', path, {
        en: [
          `The file is not JSON: it breaks off in line ${line}.`,
          'Copy the file again from where it came from, or open a backup.',
        ],
        de: [
          `Die Datei ist kein JSON: sie bricht in Zeile ${line} ab.`,
          'Die Datei noch einmal vom Ursprung kopieren oder eine Sicherung öffnen.',
        ],
      });
    }
    case 'not-a-number': {
      const { line, path } = trouble.place;
      const { title } = fieldDocs(path);
      return told('not-finite', path, {
        en: [
          `${title} is ${trouble.found} (line ${line}).`,
          'Put a finite number there, or null for not known.',
        ],
        de: [
          `${title} ist ${trouble.found} (Zeile ${line}).`,
          'Eine endliche Zahl eintragen, oder null für unbekannt.',
        ],
      });
    }
    case 'not-a-plan':
      return told('not-a-plan', '', {
        en: ['The file is JSON, but not a plan.', 'Open a file that this program has saved.'],
        de: [
          'Die Datei ist JSON, aber kein Plan.',
          'Eine Datei öffnen, die dieses Programm gespeichert hat.',
        ],
      });
    case 'no-version':
      return told('not-a-plan', 'version', {
        en: [
          'The format version is missing or is no whole number.',
          `Put the version there; this program writes ${planVersion}.`,
        ],
        de: [
          'Die Formatversion fehlt oder ist keine ganze Zahl.',
          `Die Version eintragen; dieses Programm schreibt ${planVersion}.`,
        ],
      });
    case 'too-new':
      return told('too-new', 'version', {
        en: [
          `The plan has format version ${trouble.version}; this program reads up to ${planVersion}.`,
          'Use a newer program; the file is left as it is.',
        ],
        de: [
          `Der Plan hat Formatversion ${trouble.version}; dieses Programm liest bis ${planVersion}.`,
          'Ein neueres Programm verwenden; die Datei bleibt, wie sie ist.',
        ],
      });
    case 'too-old':
      return told('too-old', 'version', {
        en: [
          `This program cannot read format version ${trouble.version}.`,
          `Put the version there that the file was written with; this program writes ${planVersion}.`,
        ],
        de: [
          `Formatversion ${trouble.version} kann dieses Programm nicht lesen.`,
          `Die Version eintragen, mit der die Datei geschrieben wurde; dieses Programm schreibt ${planVersion}.`,
        ],
      });
    default:
      return tellScan(trouble.objection);
  }
}

function tellScan(objection: ScanObjection): Told {
  const { code, path, found } = objection;
  const { title } = fieldDocs(path);
  const words = {
    'too-deep': {
      en: [
        `The file is nested deeper than ${planCaps.depth} levels.`,
        'No plan is that deep; choose a plan file.',
      ],
      de: [
        `Die Datei ist tiefer als ${planCaps.depth} Ebenen geschachtelt.`,
        'So tief ist kein Plan; eine Plandatei wählen.',
      ],
    },
    'too-many': {
      en: [
        `${title === '' ? 'The file' : title} holds too much (${found}).`,
        'Shorten the list or the text.',
      ],
      de: [
        `${title === '' ? 'Die Datei' : title} enthält zu viel (${found}).`,
        'Die Liste oder den Text kürzen.',
      ],
    },
    'forbidden-key': {
      en: [`The field name ${found} is not allowed.`, 'Delete the field.'],
      de: [`Der Feldname ${found} ist nicht erlaubt.`, 'Das Feld löschen.'],
    },
    'not-finite': {
      en: [`${title} is not a finite number.`, 'Put a finite number there, or null for not known.'],
      de: [
        `${title} ist keine endliche Zahl.`,
        'Eine endliche Zahl eintragen, oder null für unbekannt.',
      ],
    },
  } as const satisfies Record<ScanObjection['code'], Telling>;
  return told(code, path, words[code]);
}

function told(code: PlanProblemCode, path: string, words: Telling): Told {
  return { code, path, words };
}
