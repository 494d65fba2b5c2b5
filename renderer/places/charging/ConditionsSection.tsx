import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { FieldFrame } from '../../controls/FieldFrame.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { Section } from '../../controls/Section.tsx';
import { Toggle, ToggleField } from '../../controls/Toggle.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { useText } from '../../text/use-text.ts';
import { MonthField } from './MonthField.tsx';
import { TimeField } from './TimeField.tsx';

/** Place of charging, climate, season, packs and tariff. */
export const ConditionsSection = () => {
  const text = useText(chargingTexts);
  const words = text.conditions;
  const cheap = usePlan((plan) => plan.week?.tariff.cheap ?? null);
  const packCount = usePlan((plan) => plan.week?.packCount ?? 1);
  const packs = useFieldWords('week.packCount');
  const from = useFieldWords('week.tariff.cheap.fromMin');
  const until = useFieldWords('week.tariff.cheap.toMin');
  const setCheap = (isOn: boolean): void =>
    edit(words.hasCheap, (plan) => {
      const tariff = plan.week?.tariff;
      if (tariff === undefined) return;
      tariff.cheap = isOn
        ? {
            pricePerKWh: Math.round((tariff.pricePerKWh ?? 0.3) * 70) / 100,
            fromMin: 1320,
            toMin: 360,
          }
        : null;
    });
  const setPacks = (count: string): void =>
    edit(packs.title, (plan) => {
      if (plan.week !== null) plan.week.packCount = Number(count);
    });
  return (
    <Section title={words.title} lead={words.lead}>
      <div className="field-grid">
        <ChoiceField
          path="week.place.kind"
          entries={Object.entries(words.places).map(([value, label]) => ({ value, label }))}
        />
        <QuantityField path="week.place.openingCm2" />
        <QuantityField path="week.place.chargeTemperatureC" emptyWords={words.asOutdoors} />
        <QuantityField path="week.climate.warmestMonthC" />
        <QuantityField path="week.climate.coldestMonthC" />
        <MonthField path="week.climate.warmestMonth" />
        <MonthField path="week.season.firstMonth" />
        <QuantityField path="week.season.weeks" />
        <QuantityField path="week.season.seed" />
        <QuantityField path="week.minimumPercent" />
        <QuantityField path="week.routine.untilPercent" emptyWords={words.full} />
        <Choice
          label={packs.title}
          help={packs.help}
          value={String(packCount)}
          field="week.packCount"
          entries={[
            { value: '1', label: '1' },
            { value: '2', label: '2' },
          ]}
          onChoose={setPacks}
        />
        <QuantityField path="week.tariff.pricePerKWh" />
        {cheap === null ? null : (
          <>
            <QuantityField path="week.tariff.cheap.pricePerKWh" />
            <FieldFrame id="cheap-from" label={`${words.cheap}: ${from.title}`}>
              <TimeField path="week.tariff.cheap.fromMin" label={`${words.cheap}: ${from.title}`} />
            </FieldFrame>
            <FieldFrame id="cheap-to" label={`${words.cheap}: ${until.title}`}>
              <TimeField path="week.tariff.cheap.toMin" label={`${words.cheap}: ${until.title}`} />
            </FieldFrame>
          </>
        )}
      </div>
      <div className="toggle-row">
        <ToggleField path="week.place.onEscapeRoute" />
        <ToggleField path="week.isolatedWhenParked" />
        {packCount > 1 ? <ToggleField path="week.sharedCharger" /> : null}
        <Toggle
          label={words.hasCheap}
          isOn={cheap !== null}
          onChange={setCheap}
          field="week.tariff.cheap"
        />
      </div>
    </Section>
  );
};
