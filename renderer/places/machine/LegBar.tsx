import type { Leg } from '#core/plan/schema/outing.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { averagePowerW } from './load-kinds.ts';

interface LegBarProps {
  readonly legs: readonly Leg[];
  readonly supplyV: number;
}

/** One round: width is time, height is power. */
export const LegBar = ({ legs, supplyV }: LegBarProps) => {
  const text = useText(machineTexts);
  const language = useSettings((state) => state.language);
  const total = legs.reduce((sum, leg) => sum + leg.durationMin, 0);
  const powers = legs.map((leg) => averagePowerW([leg], supplyV) ?? 0);
  const highest = Math.max(...powers, 1);
  const spoken = legs
    .map((leg, index) => {
      const power = powers[index] ?? 0;
      const watts = power > 0 ? `${formatFigure(power, language)} W` : text.standing;
      return `${leg.name} ${formatMinutes(leg.durationMin, language)}, ${watts}`;
    })
    .join('; ');
  return (
    <div className="leg-bar" role="img" aria-label={text.legBar(spoken)}>
      {legs.map((leg, index) => (
        <span
          key={leg.id}
          className="leg-bar-part"
          style={{ width: `${(100 * leg.durationMin) / total}%` }}
        >
          <span
            className="leg-bar-power"
            style={{ height: `${Math.max(2, (100 * (powers[index] ?? 0)) / highest)}%` }}
          />
          <span className="leg-bar-number">{leg.durationMin / total > 0.05 ? index + 1 : ''}</span>
        </span>
      ))}
    </div>
  );
};
