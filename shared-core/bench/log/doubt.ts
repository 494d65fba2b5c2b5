import type { Language } from '../../plan/language.ts';
import type { ColumnRole } from './column-role.ts';

/** What was not clear about the columns of a log and how it was settled, to be looked at before reading. */
export type LogDoubt =
  | { readonly kind: 'sense-by-volts'; readonly column: string }
  | {
      readonly kind: 'several';
      readonly role: ColumnRole;
      readonly taken: string;
      readonly others: readonly string[];
    }
  | { readonly kind: 'day-first'; readonly column: string }
  | { readonly kind: 'no-time-unit'; readonly column: string }
  | { readonly kind: 'nameless'; readonly column: number; readonly role: ColumnRole };

const roles: Readonly<Record<ColumnRole, readonly [en: string, de: string]>> = {
  time: ['time', 'Zeit'],
  current: ['current', 'Strom'],
  voltage: ['volts of the pack', 'Spannung des Packs'],
  'unit-voltage': ['volts of a block or group', 'Spannung eines Blocks oder einer Gruppe'],
  temperature: ['temperature', 'Temperatur'],
  speed: ['speed', 'Geschwindigkeit'],
  run: ['name of the run', 'Name des Laufs'],
  other: ['nothing', 'nichts'],
};

const quoted = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');
const zitiert = (names: readonly string[]): string => names.map((name) => `„${name}“`).join(', ');

/** The doubt in words. */
export function doubtText(doubt: LogDoubt, language: Language): string {
  const place = language === 'en' ? 0 : 1;
  const en = place === 0;
  switch (doubt.kind) {
    case 'sense-by-volts':
      return en
        ? `the sign of "${doubt.column}" is taken from the volts: they fall while the pack is discharged`
        : `das Vorzeichen von „${doubt.column}“ folgt der Spannung: sie fällt beim Entladen`;
    case 'several':
      return en
        ? `"${doubt.taken}" is taken as ${roles[doubt.role][0]}; ${quoted(doubt.others)} would do too`
        : `„${doubt.taken}“ gilt als ${roles[doubt.role][1]}; auch ${zitiert(doubt.others)} käme in Frage`;
    case 'day-first':
      return en
        ? `dates of "${doubt.column}" are read day first`
        : `Daten in „${doubt.column}“ gelten mit dem Tag zuerst`;
    case 'no-time-unit':
      return en
        ? `"${doubt.column}" names no unit; seconds are assumed`
        : `„${doubt.column}“ nennt keine Einheit; angenommen sind Sekunden`;
    case 'nameless':
      return en
        ? `column ${doubt.column} has no name and is taken as ${roles[doubt.role][0]}`
        : `Spalte ${doubt.column} hat keinen Namen und gilt als ${roles[doubt.role][1]}`;
  }
}
