import type { Severity } from '../findings/finding.ts';
import type { Language } from '../plan/language.ts';
import type { EndCause } from '../run/result.ts';
import type { Drawing } from './drawing/drawing.ts';
import type { SheetPartId } from './sheet-parts.ts';

/** A cell of a table: words, or a figure with the number behind it (null: not known). */
export type SheetCell = string | { readonly text: string; readonly value: number | null };

export interface SheetColumn {
  readonly id: string;
  readonly label: string;
  /** Unit of every figure in the column; shown in the head. */
  readonly unit?: string;
  readonly align?: 'start' | 'end';
  /** Never broken over lines: units, sizes, marks. */
  readonly tight?: boolean;
  /** Left empty on paper, to be filled in by hand; not part of a CSV file. */
  readonly byHand?: boolean;
}

export interface SheetTable {
  readonly kind: 'table';
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly (readonly SheetCell[])[];
  /** Sum or last line, set apart; not part of a CSV file. */
  readonly foot?: readonly SheetCell[];
  /** Rows stand higher, with room to write. */
  readonly roomy?: boolean;
}

export interface SheetFinding {
  readonly id: string;
  readonly severity: Severity;
  readonly severityWord: string;
  readonly what: string;
  readonly remedy: string;
  readonly source: string;
}

/** One piece of a part. What may not be torn by a page break says so by its kind: see the style of the sheet. */
export type SheetBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: 'plain' | 'soft' | 'strong' }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered?: boolean }
  | {
      readonly kind: 'checks';
      readonly items: readonly { readonly text: string; readonly hint?: string }[];
    }
  | {
      readonly kind: 'facts';
      readonly title?: string;
      readonly rows: readonly { readonly label: string; readonly value: string }[];
    }
  /** Groups of facts beside each other. */
  | {
      readonly kind: 'columns';
      readonly groups: readonly Extract<SheetBlock, { kind: 'facts' }>[];
    }
  /** The few figures a reader looks for first. */
  | {
      readonly kind: 'figures';
      readonly items: readonly {
        readonly label: string;
        readonly value: string;
        readonly detail?: string;
      }[];
    }
  | SheetTable
  /** Drawings beside each other, or one over the whole width. */
  | { readonly kind: 'drawings'; readonly drawings: readonly Drawing[] }
  | { readonly kind: 'care'; readonly title: string; readonly items: readonly string[] }
  | { readonly kind: 'findings'; readonly items: readonly SheetFinding[] }
  /** A card to cut out. */
  | {
      readonly kind: 'label';
      readonly title: string;
      readonly big: string;
      readonly rows: readonly { readonly label: string; readonly value: string }[];
      readonly warnings: readonly string[];
    }
  /** Lines to write on. */
  | { readonly kind: 'blanks'; readonly labels: readonly string[] }
  | { readonly kind: 'plain'; readonly text: string };

export interface SheetPart {
  readonly id: SheetPartId;
  readonly title: string;
  /** One sentence on what the page is for. */
  readonly lead: string;
  readonly wide: boolean;
  readonly blocks: readonly SheetBlock[];
}

/** Run time of one outing: as planned, and with every assumption drawn anew. */
export interface SheetOutingFigures {
  readonly id: string;
  readonly name: string;
  readonly goalMin: number;
  readonly runTimeMin: number;
  readonly endedBy: EndCause;
  /** 10th, 50th and 90th percentile; null where the spread was not worked out. */
  readonly runTimeLowMin: number | null;
  readonly runTimeLikelyMin: number | null;
  readonly runTimeHighMin: number | null;
  readonly caseCount: number | null;
  readonly minimumBusVoltageV: number;
  readonly deliveredWh: number;
  readonly remainingPercent: number;
  readonly distanceKm: number | null;
  readonly averageSpeedKmh: number | null;
  readonly topSpeedKmh: number | null;
}

/** The numbers of the sheet as numbers, for other programs. Fields may be added, never renamed. */
export interface SheetFigures {
  readonly outings: readonly SheetOutingFigures[];
  readonly headlineOuting: string;
  readonly nominalVoltageV: number;
  readonly fullRestVoltageV: number;
  readonly highestChargeVoltageV: number;
  readonly capacityAh: number;
  readonly energyWh: number;
  readonly massKg: number | null;
  readonly price: number | null;
  readonly hoursToFull: number | null;
  readonly chargerVerdict: string | null;
  readonly accessoryCostMin: number;
  readonly findingCounts: Readonly<Record<Severity | 'notChecked', number>>;
}

/** Everything that leaves the screen, as data: made once, then written as a page, a file or a text. */
export interface Sheet {
  readonly language: Language;
  readonly title: string;
  readonly planName: string;
  readonly machineName: string;
  readonly optionId: string;
  readonly optionName: string;
  /** A sample plan: its figures describe no real product. */
  readonly invented: boolean;
  readonly date: string;
  readonly version: string;
  /** SHA-256 of the plan as written to a file, in hexadecimal. */
  readonly planHash: string;
  readonly figures: SheetFigures;
  readonly parts: readonly SheetPart[];
}
