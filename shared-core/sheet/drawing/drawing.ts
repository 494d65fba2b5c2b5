/** How a line is drawn; told apart by weight and dash as well, because paper may have no colour. */
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash?: string;
}

export type Mark =
  | {
      readonly kind: 'path';
      readonly d: string;
      readonly stroke?: Stroke;
      readonly fill?: string;
      /** From 0 to 1; 1 where left out. */
      readonly fillOpacity?: number;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly colour: string;
      readonly bold?: boolean;
    };

/** A picture as data: the page, the file and the print draw the same. Units are those of its view box. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  /** What it shows, for those who do not see it. */
  readonly summary: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** Ink of every drawing of the sheet. */
export const ink = {
  dark: '#14191c',
  soft: '#4a545a',
  line: '#c3c9cc',
  first: '#005a94',
  second: '#b34700',
  third: '#00704f',
  warn: '#8a4b00',
  stop: '#a3190f',
} as const;
