import { planCaps } from './caps.ts';
import { fieldDocs } from './field-docs.ts';
import type { JsonPlace } from './json-place.ts';
import type { Language } from './language.ts';
import type { PlanProblem } from './problem.ts';
import type { ScanObjection } from './scan-json.ts';
import { planVersion } from './schema/plan.ts';

/** What can be wrong with a file before its fields are looked at. */
export type FileTrouble =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-large' }
  | { readonly kind: 'not-json'; readonly place: JsonPlace; readonly found: string }
  | { readonly kind: 'cut-short'; readonly place: JsonPlace }
  | { readonly kind: 'not-a-number'; readonly place: JsonPlace; readonly found: string }
  | { readonly kind: 'not-a-plan' }
  | { readonly kind: 'no-version' }
  | { readonly kind: 'too-new'; readonly version: number }
  | { readonly kind: 'too-old'; readonly version: number }
  | { readonly kind: 'scan'; readonly objection: ScanObjection };

/** The trouble with a file in words. */
export function fileProblem(trouble: FileTrouble, language: Language): PlanProblem {
  const de = language === 'de';
  const whole = (code: PlanProblem['code'], problem: string, remedy: string): PlanProblem => ({
    code,
    path: '',
    title: de ? 'Datei' : 'File',
    problem,
    remedy,
  });
  switch (trouble.kind) {
    case 'empty':
      return de
        ? whole('empty', 'Die Datei ist leer.', 'Eine Plandatei (.wain) oder ein Beispiel öffnen.')
        : whole('empty', 'The file is empty.', 'Open a plan file (.wain) or a sample.');
    case 'too-large':
      return de
        ? whole(
            'too-large',
            `Die Datei ist größer als ${planCaps.bytes / 1048576} MiB.`,
            'So groß ist kein Plan; eine Plandatei wählen.',
          )
        : whole(
            'too-large',
            `The file is larger than ${planCaps.bytes / 1048576} MiB.`,
            'No plan is that large; choose a plan file.',
          );
    case 'not-json':
      return { ...whole('not-json', '', ''), ...jsonWords(trouble.place, trouble.found, de) };
    case 'cut-short':
      return {
        ...(de
          ? whole(
              'not-json',
              `Die Datei bricht in Zeile ${trouble.place.line} ab.`,
              'Die Datei noch einmal vom Ursprung kopieren oder eine Sicherung öffnen.',
            )
          : whole(
              'not-json',
              `The file breaks off in line ${trouble.place.line}.`,
              'Copy the file again from where it came from, or open a backup.',
            )),
        path: trouble.place.path,
      };
    case 'not-a-number': {
      const { title } = fieldDocs(trouble.place.path);
      return de
        ? {
            code: 'not-finite',
            path: trouble.place.path,
            title,
            problem: `${title} ist ${trouble.found} (Zeile ${trouble.place.line}).`,
            remedy: 'Eine endliche Zahl eintragen, oder null für unbekannt.',
          }
        : {
            code: 'not-finite',
            path: trouble.place.path,
            title,
            problem: `${title} is ${trouble.found} (line ${trouble.place.line}).`,
            remedy: 'Put a finite number there, or null for not known.',
          };
    }
    case 'not-a-plan':
      return de
        ? whole(
            'not-a-plan',
            'Die Datei ist JSON, aber kein Plan.',
            'Eine Datei öffnen, die dieses Programm gespeichert hat.',
          )
        : whole(
            'not-a-plan',
            'The file is JSON, but not a plan.',
            'Open a file that this program has saved.',
          );
    case 'no-version':
      return de
        ? {
            ...whole(
              'not-a-plan',
              'Die Formatversion fehlt oder ist keine ganze Zahl ab 1.',
              `Die Version eintragen; dieses Programm schreibt ${planVersion}.`,
            ),
            path: 'version',
          }
        : {
            ...whole(
              'not-a-plan',
              'The format version is missing or is no whole number from 1.',
              `Put the version there; this program writes ${planVersion}.`,
            ),
            path: 'version',
          };
    case 'too-new':
      return de
        ? {
            ...whole(
              'too-new',
              `Der Plan hat Formatversion ${trouble.version}; dieses Programm liest bis ${planVersion}.`,
              'Ein neueres Programm verwenden; die Datei bleibt unverändert.',
            ),
            path: 'version',
          }
        : {
            ...whole(
              'too-new',
              `The plan has format version ${trouble.version}; this program reads up to ${planVersion}.`,
              'Use a newer program; the file is left as it is.',
            ),
            path: 'version',
          };
    case 'too-old':
      return de
        ? {
            ...whole(
              'too-old',
              `Formatversion ${trouble.version} kann dieses Programm nicht mehr lesen.`,
              'Den Plan erst mit einer älteren Ausgabe öffnen und speichern.',
            ),
            path: 'version',
          }
        : {
            ...whole(
              'too-old',
              `This program can no longer read format version ${trouble.version}.`,
              'Open and save the plan with an older release first.',
            ),
            path: 'version',
          };
    case 'scan':
      return scanProblem(trouble.objection, de);
  }
}

function jsonWords(
  place: JsonPlace,
  found: string,
  de: boolean,
): Pick<PlanProblem, 'path' | 'problem' | 'remedy'> {
  const sign = found === '' ? '' : de ? `: unerwartet ist ${found}` : `: ${found} is unexpected`;
  return de
    ? {
        path: place.path,
        problem: `Die Datei ist kein JSON (Zeile ${place.line}, Spalte ${place.column}${sign}).`,
        remedy: 'An dieser Stelle berichtigen oder eine Sicherung öffnen.',
      }
    : {
        path: place.path,
        problem: `The file is not JSON (line ${place.line}, column ${place.column}${sign}).`,
        remedy: 'Mend it at that place, or open a backup.',
      };
}

function scanProblem(objection: ScanObjection, de: boolean): PlanProblem {
  const { title } = fieldDocs(objection.path);
  const base = { code: objection.code, path: objection.path, title };
  switch (objection.code) {
    case 'too-deep':
      return de
        ? {
            ...base,
            problem: `Die Datei ist tiefer als ${planCaps.depth} Ebenen geschachtelt.`,
            remedy: 'So tief ist kein Plan; eine Plandatei wählen.',
          }
        : {
            ...base,
            problem: `The file is nested deeper than ${planCaps.depth} levels.`,
            remedy: 'No plan is that deep; choose a plan file.',
          };
    case 'too-many':
      return de
        ? {
            ...base,
            problem: `${title || 'Die Datei'} ist zu groß (${objection.found}).`,
            remedy: 'Einträge oder Text kürzen.',
          }
        : {
            ...base,
            problem: `${title || 'The file'} holds too much (${objection.found}).`,
            remedy: 'Shorten the list or the text.',
          };
    case 'forbidden-key':
      return de
        ? {
            ...base,
            problem: `Der Feldname ${objection.found} ist nicht erlaubt.`,
            remedy: 'Das Feld löschen.',
          }
        : {
            ...base,
            problem: `The field name ${objection.found} is not allowed.`,
            remedy: 'Delete the field.',
          };
    case 'not-finite':
      return de
        ? {
            ...base,
            problem: `${title} ist keine endliche Zahl.`,
            remedy: 'Eine endliche Zahl eintragen, oder null für unbekannt.',
          }
        : {
            ...base,
            problem: `${title} is not a finite number.`,
            remedy: 'Put a finite number there, or null for not known.',
          };
  }
}
