import { seriesLook } from '../../../styles/series.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import type { InputEffect } from '#core/compare/sensitivity/sensitivity.ts';
import { placeOn, type MinuteScale } from './Histogram.tsx';

interface TornadoBarProps {
  readonly effect: InputEffect;
  readonly plannedMin: number;
  readonly scale: MinuteScale;
  readonly index: number;
}

/** Run time from the planned one to that at the low value (hatched) and at the high value (whole). */
export const TornadoBar = ({ effect, plannedMin, scale, index }: TornadoBarProps) => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const { atLowMin, atHighMin, label } = effect;
  const minutes = (value: number): string => formatMinutes(value, language);
  const reach = (to: number) => ({
    left: `${placeOn(scale, Math.min(to, plannedMin))}%`,
    width: `${placeOn(scale, Math.max(to, plannedMin)) - placeOn(scale, Math.min(to, plannedMin))}%`,
  });
  const colour = `var(--series-${seriesLook(index).number})`;
  return (
    <div
      className="tornado"
      role="img"
      aria-label={text.tornadoPart(label[language], minutes(atLowMin), minutes(atHighMin))}
      title={`${text.lowBar} ${minutes(atLowMin)}, ${text.highBar} ${minutes(atHighMin)}`}
    >
      <span className="tornado-bar tornado-low" style={{ ...reach(atLowMin), color: colour }} />
      <span className="tornado-bar" style={{ ...reach(atHighMin), backgroundColor: colour }} />
      <span className="tornado-planned" style={{ left: `${placeOn(scale, plannedMin)}%` }} />
    </div>
  );
};
