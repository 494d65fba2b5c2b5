import type { ChargeResult } from '#core/charge/charge-result.ts';
import { Figure } from '../../controls/Figure.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatFixed, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

/** Times, charge, energy and cost of a charge. */
export const ChargeFigures = ({
  charge,
  cost,
}: {
  readonly charge: ChargeResult;
  readonly cost: number | null;
}) => {
  const text = useText(chargingTexts).curve;
  const language = useSettings((state) => state.language);
  const currency = usePlan((plan) => plan.currency);
  const hours = (value: number | null) =>
    value === null ? text.never : formatMinutes(value * 60, language);
  const percent = (value: number) => `${formatFigure(value, language)} %`;
  const isEndless = charge.endedBy === 'unplugged';
  return (
    <div className="figure-row charge-figures">
      <Figure
        label={text.done}
        value={isEndless ? text.never : hours(charge.hours)}
        note={
          isEndless
            ? text.ends.unplugged
            : `${text.ends[charge.endedBy]}; ${text.doneNote(percent(charge.endPercent))}`
        }
      />
      <Figure label={text.to80} value={hours(charge.hoursTo80)} />
      <Figure label={text.toFull} value={hours(charge.hoursToFull)} />
      <Figure
        label={text.intoPack}
        value={formatFigure(charge.inAh, language)}
        unit="A·h"
        {...(charge.chargeEfficiencyPercent === null
          ? {}
          : { note: text.efficiency(percent(charge.chargeEfficiencyPercent)) })}
      />
      <Figure label={text.mains} value={formatFigure(charge.mainsWh, language)} unit="W·h" />
      {cost === null ? null : (
        <Figure label={text.cost} value={formatFixed(cost, language, 2)} unit={currency} />
      )}
      <Figure
        label={text.highest}
        value={formatFigure(charge.highestPackV, language, 4)}
        unit="V"
      />
    </div>
  );
};
