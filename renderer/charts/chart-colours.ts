import type { Theme } from '../app/theme.ts';

/** Colours a canvas needs, read from the tokens of the theme on screen. */
export interface ChartColours {
  readonly ink: string;
  readonly inkSoft: string;
  readonly line: string;
  readonly sheet: string;
  readonly ghost: string;
  readonly font: string;
  readonly series: (number: number) => string;
}

const known = new Map<Theme, ChartColours>();

/** The colours of the theme that is on screen. */
export function chartColours(theme: Theme): ChartColours {
  const made = known.get(theme) ?? readColours();
  known.set(theme, made);
  return made;
}

function readColours(): ChartColours {
  const style = getComputedStyle(document.documentElement);
  const token = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ink: token('--ink'),
    inkSoft: token('--ink-soft'),
    line: token('--line'),
    sheet: token('--sheet'),
    ghost: token('--line-strong'),
    font: token('--font-text'),
    series: (number) => token(`--series-${number}`),
  };
}
