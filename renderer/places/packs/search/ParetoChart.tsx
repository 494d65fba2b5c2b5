import { useMemo, useState } from 'react';
import { Scatter } from 'react-chartjs-2';
import type { FoundPack } from '#core/compare/search/candidate.ts';
import { useTheme } from '../../../app/theme.ts';
import '../../../charts/register-charts.ts';
import { chartColours } from '../../../charts/chart-colours.ts';
import { paintedGround } from '../../../charts/direct-labels.ts';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { optionLimit } from '../../../state/option-actions.ts';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFixed } from '../../../text/format.ts';
import { packsTexts } from '../../../text/packs.ts';
import { searchTexts, type SearchFigure } from '../../../text/search.ts';
import { useText } from '../../../text/use-text.ts';
import { figureUnit, figureWords, searchFigures } from './found-figures.ts';
import { paretoChart } from './pareto-chart.ts';

interface ParetoChartProps {
  readonly found: readonly FoundPack[];
  readonly chosen: number | null;
  readonly onChoose: (index: number) => void;
  readonly onTake: (pack: FoundPack) => void;
}

const plugins = [paintedGround];

/** Every found pack as a dot on two axes of choice; the unbeaten ones filled. A pressed dot is told below. */
export const ParetoChart = ({ found, chosen, onChoose, onTake }: ParetoChartProps) => {
  const text = useText(searchTexts);
  const packs = useText(packsTexts);
  const { language, units } = useSettings();
  const currency = usePlan((plan) => plan.currency);
  const isFull = usePlan((plan) => plan.options.length >= optionLimit);
  const theme = useTheme();
  const [across, setAcross] = useState<SearchFigure>('massKg');
  const [up, setUp] = useState<SearchFigure>('runTimeMin');
  const style = useMemo(() => ({ language, units, currency }), [language, units, currency]);
  const chart = useMemo(
    () =>
      paretoChart(found, {
        across,
        up,
        chosen,
        onChoose,
        style,
        axisLabel: (figure) => `${text.figures[figure]} [${figureUnit(figure, style)}]`,
        chemistryName: (chemistry) => packs.chemistries[chemistry],
        colours: chartColours(theme),
      }),
    [found, across, up, chosen, onChoose, style, text, packs, theme],
  );
  const told = found.find(({ index }) => index === chosen);
  const best = found.filter(({ isBest }) => isBest);
  const entries = searchFigures.map((figure) => ({ value: figure, label: text.figures[figure] }));
  const pick = (value: string): SearchFigure =>
    searchFigures.find((figure) => figure === value) ?? 'runTimeMin';
  const summary = text.chartSummary(
    formatFixed(found.length, language, 0),
    formatFixed(best.length, language, 0),
    best
      .slice(0, 3)
      .map((pack) => `${pack.option.name}, ${figureWords(pack, 'runTimeMin', style)}.`)
      .join(' '),
  );
  return (
    <figure className="pareto">
      <div className="pareto-axes">
        <Choice label={text.up} value={up} entries={entries} onChoose={(to) => setUp(pick(to))} />
        <Choice
          label={text.across}
          value={across}
          entries={entries}
          onChoose={(to) => setAcross(pick(to))}
        />
        <ul className="pareto-key">
          {chart.chemistries.map(({ name, colour, mark }) => (
            <li key={name}>
              <span aria-hidden="true" style={{ color: colour }}>
                {mark}
              </span>{' '}
              {name}
            </li>
          ))}
        </ul>
      </div>
      <div className="pareto-box">
        <Scatter
          data={chart.data}
          options={chart.options}
          plugins={plugins}
          role="img"
          aria-label={summary}
        />
      </div>
      <figcaption className="soft search-care">{text.chartKey}</figcaption>
      {told === undefined ? null : (
        <p className="pareto-told" role="status">
          <b>{told.option.name}</b>
          {searchFigures.map((figure) => (
            <span key={figure}>
              {text.figures[figure]}{' '}
              <b>
                {figureWords(told, figure, style)}
                {figure === 'runTimeMin' ? '' : ` ${figureUnit(figure, style)}`}
              </b>
            </span>
          ))}
          <Button
            look="main"
            label={text.takeNamed(told.option.name)}
            isDisabled={isFull}
            onPress={() => onTake(told)}
          >
            {text.take}
          </Button>
        </p>
      )}
    </figure>
  );
};
