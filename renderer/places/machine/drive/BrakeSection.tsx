import { newBrakeResistor } from '#core/plan/drive-defaults.ts';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { Section } from '../../../controls/Section.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';
import { entriesOf } from './entries.ts';
import { StopHelper } from './StopHelper.tsx';

const path = 'machine.drive.brakes';

/** Brakes of the machine, and the helper that sizes a resistor. */
export const BrakeSection = () => {
  const text = useText(driveTexts);
  const brakes = usePlan((plan) => plan.machine.drive?.brakes);
  if (brakes === undefined) return null;
  return (
    <Section title={text.brakes} lead={text.brakesLead}>
      <div className="field-grid">
        <ChoiceField
          path={`${path}.onRelease`}
          entries={entriesOf(text.onRelease)}
          onChoose={(next) =>
            edit(text.brakes, (plan) => {
              const target = plan.machine.drive?.brakes;
              if (target === undefined) return;
              target.onRelease = next as typeof target.onRelease;
              if (next === 'resistor') target.resistor ??= newBrakeResistor();
            })
          }
        />
        <QuantityField path={`${path}.serviceDecelerationMps2`} />
        <ChoiceField path={`${path}.parking`} entries={entriesOf(text.parking)} />
        {brakes.onRelease === 'regeneration' ? (
          <QuantityField path={`${path}.regenerationLimitA`} />
        ) : null}
        {brakes.onRelease === 'resistor' && brakes.resistor !== null ? (
          <>
            <QuantityField path={`${path}.resistor.resistanceOhm`} />
            <QuantityField path={`${path}.resistor.ratedPowerW`} />
            <QuantityField path={`${path}.resistor.overloadFactor`} />
            <QuantityField path={`${path}.resistor.pulseEnergyJ`} />
            <QuantityField path={`${path}.resistor.heatTimeS`} assumed="150 s" />
            <QuantityField path={`${path}.resistor.riseAtRatedK`} assumed="250 K" />
          </>
        ) : null}
      </div>
      <Disclosure
        title={text.stopTitle}
        note={text.stopLead}
        isOpenAtFirst={brakes.onRelease === 'resistor'}
      >
        <StopHelper />
      </Disclosure>
    </Section>
  );
};
