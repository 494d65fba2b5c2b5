import type { ChartSeries } from '../../charts/chart-series.ts';
import { valueAtX } from '../../charts/thin-series.ts';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';

interface ReadoutProps {
  readonly series: readonly ChartSeries[];
  /** Minute read; null reads the end of each run. */
  readonly cursor: number | null;
  readonly unit: string;
}

/** The value of every option at the minute under the pointer; without one, at the end of its run. */
export const Readout = ({ series, cursor, unit }: ReadoutProps) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  return (
    <div className="readout" role="status" aria-label={text.readout}>
      {series.map(({ id, name, index, x, y }) => {
        const at = cursor ?? x.at(-1) ?? 0;
        const value = valueAtX(x, y, at);
        return (
          <div key={id} className="readout-entry">
            <SeriesMark index={index} />
            <span className="readout-name">{name}</span>
            <span className="faint">{formatMinutes(at, language)}</span>
            <span className="readout-value">
              {value === null ? '–' : `${formatFigure(value, language, 4)} ${unit}`}
            </span>
          </div>
        );
      })}
    </div>
  );
};
