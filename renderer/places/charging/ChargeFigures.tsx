import type { ChargeResult } from '#core/charge/charge-result.ts';
import { Figure } from '../../controls/Figure.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatFixed, formatMinutes } from '../../text/format.ts';
import { chargeFigureWorking, type ChargeFigure } from '../../workings/charge-figure-workings.ts';
import type { Charger } from '#core/plan/schema/charger.ts';
import { useText } from '../../text/use-text.ts';

interface ChargeFiguresProps {
  readonly charge: ChargeResult;
  readonly charger: Charger;
  readonly optionIndex: number;
  readonly cost: number | null;
}

/** Times, charge, energy and cost of a charge. */
export const ChargeFigures = ({ charge, charger, optionIndex, cost }: ChargeFiguresProps) => {
  const text = useText(chargingTexts).curve;
  const language = useSettings((state) => state.language);
  const currency = usePlan((plan) => plan.currency);
  const hours = (value: number | null) =>
    value === null ? text.never : formatMinutes(value * 60, language);
  const percent = (value: number) => `${formatFigure(value, language)} %`;
  const isEndless = charge.endedBy === 'unplugged';
  const opens = (figure: ChargeFigure) => ({
    working: () =>
      chargeFigureWorking(figure, { charge, charger, optionIndex, cost, currency }, language),
  });
  return (
    <div className="figure-row charge-figures">
      <Figure
        label={text.done}
        {...opens('done')}
        value={isEndless ? text.never : hours(charge.hours)}
        note={
          isEndless
            ? text.ends.unplugged
            : `${text.ends[charge.endedBy]}; ${text.doneNote(percent(charge.endPercent))}`
        }
      />
      <Figure label={text.to80} {...opens('to80')} value={hours(charge.hoursTo80)} />
      <Figure label={text.to98} {...opens('to98')} value={hours(charge.hoursTo98)} />
      <Figure
        label={text.intoPack}
        {...opens('into')}
        value={formatFigure(charge.inAh, language)}
        unit="A·h"
        {...(charge.chargeEfficiencyPercent === null
          ? {}
          : { note: text.efficiency(percent(charge.chargeEfficiencyPercent)) })}
      />
      <Figure
        label={text.mains}
        {...opens('mains')}
        value={formatFigure(charge.mainsWh, language)}
        unit="W·h"
      />
      {cost === null ? null : (
        <Figure
          label={text.cost}
          {...opens('cost')}
          value={formatFixed(cost, language, 2)}
          unit={currency}
        />
      )}
      <Figure
        label={text.highest}
        {...opens('highest')}
        value={formatFigure(charge.highestPackV, language, 4)}
        unit="V"
      />
    </div>
  );
};
