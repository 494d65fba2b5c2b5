import type { Language } from '#core/plan/language.ts';
import type { ExportKind } from '#core/shell/documents.ts';

export interface Question {
  readonly message: string;
  readonly detail: string;
  readonly buttons: readonly string[];
}

/** Everything the shell itself says to people; the page has its own words. */
export interface ShellTexts {
  /** Buttons: replace, cancel. */
  readonly replace: (file: string) => Question;
  /** Buttons: close, keep. */
  readonly hung: Question;
  readonly crashed: Question;
  /** Buttons: fetch, not now. */
  readonly update: (version: string) => Question;
  readonly planKind: string;
  readonly allFiles: string;
  readonly exportKinds: Readonly<Record<ExportKind | 'pdf', string>>;
}

export const shellTexts: Readonly<Record<Language, ShellTexts>> = {
  en: {
    replace: (file) => ({
      message: `${file} exists already.`,
      detail: 'Replacing it overwrites its content.',
      buttons: ['Replace', 'Cancel'],
    }),
    hung: {
      message: 'This window does not answer.',
      detail:
        'Its plan has unsaved edits. A recovery copy is kept and will be offered at the next start.',
      buttons: ['Close anyway', 'Keep open'],
    },
    crashed: {
      message: 'The window has failed twice.',
      detail:
        'Close it and open a new one. Edits up to the last seconds are kept as a recovery copy.',
      buttons: ['OK'],
    },
    update: (version) => ({
      message: `Version ${version} of Cellwain is there.`,
      detail:
        'It is fetched now and installed when you close the program. Your plans stay as they are.',
      buttons: ['Fetch it', 'Not now'],
    }),
    planKind: 'Cellwain plan',
    allFiles: 'All files',
    exportKinds: {
      png: 'PNG picture',
      svg: 'SVG drawing',
      csv: 'CSV table',
      html: 'Web page',
      json: 'JSON',
      txt: 'Text',
      ics: 'Calendar',
      pdf: 'PDF',
    },
  },
  de: {
    replace: (file) => ({
      message: `${file} gibt es schon.`,
      detail: 'Ersetzen überschreibt den Inhalt.',
      buttons: ['Ersetzen', 'Abbrechen'],
    }),
    hung: {
      message: 'Dieses Fenster antwortet nicht.',
      detail:
        'Sein Plan hat ungesicherte Änderungen. Eine Sicherungskopie bleibt und wird beim nächsten Start angeboten.',
      buttons: ['Trotzdem schließen', 'Offen lassen'],
    },
    crashed: {
      message: 'Das Fenster ist zweimal abgestürzt.',
      detail:
        'Schließen und ein neues öffnen. Änderungen bis auf die letzten Sekunden liegen in einer Sicherungskopie.',
      buttons: ['OK'],
    },
    update: (version) => ({
      message: `Cellwain ${version} ist da.`,
      detail:
        'Die neue Version wird jetzt geladen und beim Beenden des Programms eingerichtet. Die Pläne bleiben, wie sie sind.',
      buttons: ['Laden', 'Jetzt nicht'],
    }),
    planKind: 'Cellwain-Plan',
    allFiles: 'Alle Dateien',
    exportKinds: {
      png: 'PNG-Bild',
      svg: 'SVG-Zeichnung',
      csv: 'CSV-Tabelle',
      html: 'Webseite',
      json: 'JSON',
      txt: 'Text',
      ics: 'Kalender',
      pdf: 'PDF',
    },
  },
};
