import type { ChartData, ChartOptions } from 'chart.js';
import type { PlanStudy } from '#core/study/study.ts';
import type { Language } from '#core/plan/language.ts';
import type { Theme } from '../../app/theme.ts';
import { chartColours } from '../../charts/chart-colours.ts';
import { formatFigure } from '../../text/format.ts';
import type { runTexts } from '../../text/run.ts';
import { ledgerParts } from './ledger-parts.ts';

interface LedgerChart {
  readonly data: ChartData<'bar', number[], string>;
  readonly options: ChartOptions<'bar'>;
  /** Fill of each part, for the key in the table. */
  readonly fills: readonly string[];
}

/** Shares of ink from use (dark) to loss (light); the two uses are set apart by their own colours. */
const lossShares = [72, 60, 50, 41, 33, 25, 17];

/** Horizontal bars, one for each option, cut by where the energy went. */
export function ledgerChart(
  study: PlanStudy,
  text: (typeof runTexts)[Language],
  language: Language,
  theme: Theme,
): LedgerChart {
  const colours = chartColours(theme);
  const fills = ledgerParts.map((part, index) => {
    if (part === 'motorWh') return colours.series(1);
    if (part === 'accessoriesWh') return colours.series(2);
    return mix(colours.ink, colours.sheet, lossShares[index - 2] ?? 20);
  });
  const font = { family: colours.font };
  const ticks = { color: colours.inkSoft, font };
  return {
    fills,
    data: {
      labels: study.options.map(({ name }) => name),
      datasets: ledgerParts.map((part, index) => ({
        label: text.ledger[part],
        data: study.options.map(({ run }) => run.ledger[part]),
        backgroundColor: fills[index] ?? colours.ink,
        borderColor: colours.sheet,
        borderWidth: { right: 1, left: 0, top: 0, bottom: 0 },
        barPercentage: 0.72,
      })),
    },
    options: {
      indexAxis: 'y',
      animation: false,
      maintainAspectRatio: false,
      backgroundColor: colours.sheet,
      font: { family: colours.font },
      scales: {
        x: {
          stacked: true,
          border: { color: colours.ghost },
          grid: { color: colours.line },
          title: { display: true, text: `${text.ledgerAxis} [W·h]`, color: colours.inkSoft, font },
          ticks: { ...ticks, callback: (value) => formatFigure(Number(value), language, 4) },
        },
        y: {
          stacked: true,
          grid: { display: false },
          border: { color: colours.ghost },
          ticks: {
            color: colours.ink,
            font,
            callback(value) {
              const name = study.options[Number(value)]?.name ?? '';
              return twoLines(name);
            },
          },
        },
      },
      plugins: {
        tooltip: {
          callbacks: {
            label: ({ dataset, raw }) =>
              `${dataset.label ?? ''}: ${formatFigure(Number(raw), language)} W·h`,
          },
        },
      },
    },
  };
}

/** Longest line of a name beside its bar [characters]. */
const lineLength = 20;

/** A name broken at a blank near its middle; cut where even two lines are too short for it. */
function twoLines(name: string): string[] {
  if (name.length <= lineLength) return [name];
  const blank = name.lastIndexOf(' ', lineLength);
  const at = blank > 0 ? blank : lineLength;
  const rest = name.slice(at).trim();
  return [name.slice(0, at), rest.length > lineLength ? `${rest.slice(0, lineLength - 1)}…` : rest];
}

const channels = (colour: string): number[] => {
  // The style sheet may have been shortened from #ffffff to #fff.
  const long = colour.length === 4 ? colour.replaceAll(/[^#]/g, '$&$&') : colour;
  return [1, 3, 5].map((at) => Number.parseInt(long.slice(at, at + 2), 16));
};

/** A colour between two hexadecimal ones, `percent` of the first. */
function mix(one: string, other: string, percent: number): string {
  const second = channels(other);
  const mixed = channels(one).map((value, index) =>
    Math.round((value * percent + (second[index] ?? 0) * (100 - percent)) / 100),
  );
  return `rgb(${mixed.join(' ')})`;
}
