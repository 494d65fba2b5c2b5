import type { ChartData, ChartOptions } from 'chart.js';
import type { FoundPack } from '#core/compare/search/candidate.ts';
import { chemistrySchema, type Chemistry } from '#core/plan/schema/block.ts';
import type { ChartColours } from '../../../charts/chart-colours.ts';
import { formatFigure } from '../../../text/format.ts';
import type { SearchFigure } from '../../../text/search.ts';
import { figureValue, figureWords, type FigureStyle } from './found-figures.ts';

interface Dot {
  readonly x: number;
  readonly y: number;
  readonly pack: FoundPack;
}

interface ParetoInput {
  readonly across: SearchFigure;
  readonly up: SearchFigure;
  readonly chosen: number | null;
  readonly onChoose: (index: number) => void;
  readonly style: FigureStyle;
  readonly axisLabel: (figure: SearchFigure) => string;
  readonly chemistryName: (chemistry: Chemistry) => string;
  readonly colours: ChartColours;
}

interface ParetoChart {
  readonly data: ChartData<'scatter', Dot[]>;
  readonly options: ChartOptions<'scatter'>;
  /** The chemistries drawn, for the key. */
  readonly chemistries: readonly {
    readonly name: string;
    readonly colour: string;
    readonly mark: string;
  }[];
}

/** Each chemistry has a shape of its own beside its colour. */
const looks = {
  agm: { point: 'circle', mark: '●', turn: 0 },
  gel: { point: 'triangle', mark: '▲', turn: 0 },
  flooded: { point: 'rect', mark: '■', turn: 0 },
  lfp: { point: 'rectRot', mark: '◆', turn: 0 },
  nmc: { point: 'triangle', mark: '▼', turn: 180 },
} as const satisfies Readonly<Record<Chemistry, { point: string; mark: string; turn: number }>>;

/** Found packs as dots: one group for each chemistry, the unbeaten ones filled and larger. */
export function paretoChart(found: readonly FoundPack[], input: ParetoInput): ParetoChart {
  const { across, up, chosen, style, colours, axisLabel, chemistryName, onChoose } = input;
  const groups = chemistrySchema.options.flatMap((chemistry, place) => {
    const dots = found.flatMap((pack): Dot[] => {
      if (pack.option.pack.block.chemistry !== chemistry) return [];
      const x = figureValue(pack, across, style);
      const y = figureValue(pack, up, style);
      return x === null || y === null ? [] : [{ x, y, pack }];
    });
    return dots.length === 0 ? [] : [{ chemistry, dots, colour: colours.series(place + 1) }];
  });
  const font = { family: colours.font };
  const axis = (figure: SearchFigure) => ({
    type: 'linear' as const,
    grace: '6%' as const,
    border: { color: colours.ghost },
    grid: { color: colours.line },
    title: { display: true, text: axisLabel(figure), color: colours.inkSoft, font },
    ticks: {
      color: colours.inkSoft,
      font,
      callback: (value: number | string) => formatFigure(Number(value), style.language, 4),
    },
  });
  return {
    chemistries: groups.map(({ chemistry, colour }) => ({
      name: chemistryName(chemistry),
      colour,
      mark: looks[chemistry].mark,
    })),
    data: {
      datasets: groups.map(({ chemistry, dots, colour }) => ({
        label: chemistryName(chemistry),
        data: dots,
        pointStyle: looks[chemistry].point,
        rotation: looks[chemistry].turn,
        borderColor: dots.map(({ pack }) => (pack.index === chosen ? colours.ink : colour)),
        backgroundColor: dots.map(({ pack }) => (pack.isBest ? colour : colours.sheet)),
        borderWidth: dots.map(({ pack }) => (pack.index === chosen ? 3 : 1.5)),
        radius: dots.map(({ pack }) => (pack.index === chosen ? 9 : pack.isBest ? 6 : 4)),
        hitRadius: 8,
        hoverRadius: 8,
      })),
    },
    options: {
      animation: false,
      maintainAspectRatio: false,
      backgroundColor: colours.sheet,
      color: colours.ink,
      font,
      scales: { x: axis(across), y: axis(up) },
      onClick(_event, elements) {
        const [hit] = elements;
        const dot = hit === undefined ? undefined : groups[hit.datasetIndex]?.dots[hit.index];
        if (dot !== undefined) onChoose(dot.pack.index);
      },
      plugins: {
        zoom: { zoom: { wheel: { enabled: false } }, pan: { enabled: false } },
        tooltip: {
          callbacks: {
            label({ raw }) {
              const { pack } = raw as Dot;
              return `${pack.option.name}: ${figureWords(pack, up, style)}, ${figureWords(pack, across, style)}`;
            },
          },
        },
      },
    },
  };
}
