import { SeriesMark } from '../../../controls/SeriesMark.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { appTexts } from '../../../text/app.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFixed, formatMinutes, thinSpace } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { EstimatedPercentile } from '#core/compare/spread/percentile-error.ts';
import type { PlanSpread } from '#core/compare/spread/spread.ts';
import { Histogram } from './Histogram.tsx';
import { HistogramAxis } from './HistogramAxis.tsx';

/** One row for each option: where its cases lie, to one scale, and the figures read from them. */
export const SpreadTable = ({ spread }: { readonly spread: PlanSpread }) => {
  const text = useText(compareTexts);
  const app = useText(appTexts);
  const language = useSettings((state) => state.language);
  const edges = spread.options.map(({ histogram }) => histogram.edgesMin);
  const goalMin = spread.goalMin > 0 ? spread.goalMin : null;
  const from = Math.min(...edges.map((edge) => edge[0]!), goalMin ?? Infinity);
  const to = Math.max(...edges.map((edge) => edge.at(-1)!), goalMin ?? 0);
  const room = 0.04 * (to - from);
  const scale = { from: Math.max(0, from - room), to: to + room };
  const figure = ({ value, error }: EstimatedPercentile) => (
    <span className="spread-figure">
      <b>{formatMinutes(value, language)}</b>
      <span className="faint">{text.error(formatFixed(error, language, 1))}</span>
    </span>
  );
  return (
    <div className="table-box" tabIndex={0} role="group" aria-label={text.title}>
      <table className="table spread-table">
        <caption className="only-spoken">{text.title}</caption>
        <thead>
          <tr>
            <th scope="col">{text.option}</th>
            <th scope="col" className="spread-cell">
              {text.classes}
            </th>
            {[text.low, text.likely, text.high].map((label) => (
              <th key={label} scope="col" className="number" title={text.tenth}>
                {label}
              </th>
            ))}
            <th scope="col" className="number">
              {text.chance}
            </th>
            <th scope="col">{text.ends}</th>
          </tr>
        </thead>
        <tbody>
          {spread.options.map((option, index) => (
            <tr key={option.id}>
              <th scope="row">
                <span className="option-cell">
                  <SeriesMark index={index} />
                  {option.name}
                </span>
              </th>
              <td className="spread-cell">
                <Histogram option={option} index={index} goalMin={goalMin} scale={scale} />
              </td>
              <td className="number">{figure(option.low)}</td>
              <td className="number">{figure(option.likely)}</td>
              <td className="number">{figure(option.high)}</td>
              <td className="number">
                {option.goalPercent === null
                  ? text.noGoal
                  : `${formatFixed(option.goalPercent, language, 0)}${thinSpace}%`}
              </td>
              <td>
                {option.endings
                  .filter(({ percent }, place) => place < 2 && percent >= 0.5)
                  .map(
                    ({ cause, percent }) =>
                      `${app.ended[cause]} ${formatFixed(percent, language, 0)}${thinSpace}%`,
                  )
                  .join(', ')}
              </td>
            </tr>
          ))}
          <tr className="spread-axis-row" aria-hidden="true">
            <td />
            <td className="spread-cell">
              <HistogramAxis scale={scale} goalMin={goalMin} />
            </td>
            <td colSpan={5} />
          </tr>
        </tbody>
      </table>
    </div>
  );
};
