import { newMotorControl } from '#core/plan/drive-defaults.ts';
import { Button } from '../../../controls/Button.tsx';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';
import { entriesOf } from './entries.ts';

const path = 'machine.controller.control';

/** Ramps, losses, limp stage and throttle curve of the machine's controller. */
export const ControlFields = () => {
  const text = useText(driveTexts);
  const control = usePlan((plan) => plan.machine.controller.control);
  return (
    <>
      <h3 className="drive-part-title">{text.control}</h3>
      <p className="soft">{text.controlLead}</p>
      {control === null ? (
        <div>
          <Button
            icon="plus"
            field={path}
            onPress={() =>
              edit(
                text.addControl,
                (plan) => void (plan.machine.controller.control = newMotorControl()),
              )
            }
          >
            {text.addControl}
          </Button>
        </div>
      ) : (
        <>
          <div className="field-grid">
            <ChoiceField path={`${path}.kind`} entries={entriesOf(text.controlKind)} />
            {control.kind === 'pwm' ? (
              <>
                <QuantityField path={`${path}.rampUpS`} assumed="0.5 s" />
                <QuantityField path={`${path}.rampDownS`} assumed="0.25 s" />
              </>
            ) : null}
            <QuantityField
              path={`${path}.efficiencyPercent`}
              assumed={control.kind === 'pwm' ? '96 %' : '100 %'}
            />
            <QuantityField path={`${path}.reducesBelowV`} />
            {control.reducesBelowV === null ? null : (
              <QuantityField path={`${path}.reducedCurrentPercent`} />
            )}
          </div>
          {control.kind === 'pwm' ? (
            <Disclosure title={text.throttle} holds={`${path}.throttle`}>
              <div className="field-grid">
                <QuantityField path={`${path}.throttle.pedalRestV`} />
                <QuantityField path={`${path}.throttle.pedalFullV`} />
                <QuantityField path={`${path}.throttle.startV`} />
                <QuantityField path={`${path}.throttle.fullV`} />
                <QuantityField path={`${path}.throttle.exponent`} />
              </div>
            </Disclosure>
          ) : null}
        </>
      )}
    </>
  );
};
