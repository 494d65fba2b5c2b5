import { newDrive } from '#core/plan/drive-defaults.ts';
import { Button } from '../../../controls/Button.tsx';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { EmptyState, Section } from '../../../controls/Section.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';
import { ControlFields } from './ControlFields.tsx';
import { entriesOf, surfaceEntries } from './entries.ts';
import { GearRows } from './GearRows.tsx';
import { MotorFields } from './MotorFields.tsx';
import { ScaledNote } from '../ways/ScaledNote.tsx';
import { ReadingScaleFields } from './ReadingScaleFields.tsx';
import { VoltageSection } from './VoltageSection.tsx';
import './drive.css';

/** What turns the pack's current into motion, and what another voltage makes of it. */
export const DriveSection = () => {
  const text = useText(driveTexts);
  const drive = usePlan((plan) => plan.machine.drive);
  if (drive === null) {
    return (
      <Section title={text.title} lead={text.lead}>
        <EmptyState
          icon="machine"
          title={text.none}
          action={
            <Button
              icon="plus"
              field="machine.drive"
              onPress={() => edit(text.add, (plan) => void (plan.machine.drive = newDrive()))}
            >
              {text.add}
            </Button>
          }
        >
          {text.noneLead}
        </EmptyState>
      </Section>
    );
  }
  return (
    <>
      <DriveInputs />
      <VoltageSection />
    </>
  );
};

const DriveInputs = () => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const path = 'machine.drive';
  return (
    <Section title={text.title} lead={text.lead}>
      <div className="drive-parts">
        <h3 className="drive-part-title">{text.masses}</h3>
        <div className="field-grid">
          <QuantityField path={`${path}.masses.machineKg`} />
          <QuantityField path={`${path}.masses.riderKg`} />
          <QuantityField path={`${path}.masses.payloadKg`} />
          <QuantityField path={`${path}.wheel.diameterMm`} />
          <QuantityField path={`${path}.wheel.drivenSharePercent`} />
          <ChoiceField path={`${path}.wheel.grip`} entries={entriesOf(text.tread)} />
          <QuantityField path={`${path}.wheel.dragAreaM2`} assumed="0.5 m²" />
          <QuantityField path={`${path}.masses.rotatingPercent`} />
        </div>
        <MotorFields />
        <GearRows />
        <ControlFields />
        <h3 className="drive-part-title">{text.goal}</h3>
        <div className="field-grid">
          <QuantityField path={`${path}.speedLimitKmh`} />
          <QuantityField path={`${path}.steepestGradePercent`} />
          <ChoiceField path={`${path}.steepestSurface`} entries={surfaceEntries(language)} />
          <QuantityField path={`${path}.resistancePercent`} />
        </div>
        <ScaledNote />
        <Disclosure title={text.scaleTitle}>
          <ReadingScaleFields />
        </Disclosure>
        <div className="row-end">
          <Button onPress={() => edit(text.remove, (plan) => void (plan.machine.drive = null))}>
            {text.remove}
          </Button>
        </div>
      </div>
    </Section>
  );
};
