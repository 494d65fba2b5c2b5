import { fitMotor } from '#core/drive/motor-constants.ts';
import { motorHeat } from '#core/drive/motor-heat.ts';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { TextField } from '../../../controls/TextField.tsx';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { formatFigure } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';

const path = 'machine.drive.motor';

/** The motor's readings, and what they make of it. */
export const MotorFields = () => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const motor = usePlan((plan) => plan.machine.drive?.motor);
  if (motor === undefined) return null;
  const fit = fitMotor(motor);
  const heat = fit.ok ? motorHeat(motor, fit.constants) : null;
  const figure = (value: number, unit: string): string =>
    `${formatFigure(value, language)} ${unit}`;
  return (
    <>
      <h3 className="drive-part-title">{text.motors}</h3>
      <p className="soft">{text.motorsLead}</p>
      <div className="field-grid">
        <TextField path={`${path}.name`} />
        <QuantityField path="machine.drive.motorCount" />
        <QuantityField path={`${path}.ratedVoltageV`} />
        <QuantityField path={`${path}.noLoadRpm`} />
        <QuantityField path={`${path}.noLoadCurrentA`} />
        <QuantityField path={`${path}.windingOhm`} />
        <QuantityField path={`${path}.stallCurrentA`} />
        <QuantityField path={`${path}.ratedCurrentA`} />
        <QuantityField path={`${path}.ratedRpm`} />
        <QuantityField path={`${path}.ratedPowerW`} />
      </div>
      <p className="drive-fit" role="status">
        {fit.ok
          ? text.fitted(
              figure(fit.constants.resistanceOhm * 1000, 'mΩ'),
              figure(30 / Math.PI / fit.constants.backEmfVs, 'rpm'),
              figure(fit.constants.noLoadCurrentA, 'A'),
            )
          : text.fitFails(fit.problem)}
      </p>
      <Disclosure title={text.heat} holds={path}>
        <div className="field-grid">
          <QuantityField
            path={`${path}.heatResistanceKPerW`}
            assumed={heat === null ? undefined : figure(heat.resistanceKPerW, 'K/W')}
          />
          <QuantityField
            path={`${path}.heatTimeS`}
            assumed={heat === null ? undefined : figure(heat.timeS, 's')}
          />
          <QuantityField path={`${path}.maximumTemperatureC`} assumed="120 °C" />
          <QuantityField path={`${path}.maximumCurrentA`} />
          <QuantityField path={`${path}.massKg`} />
          <QuantityField path={`${path}.rpmPerVolt`} />
          <QuantityField path={`${path}.testVoltageV`} assumed={figure(motor.ratedVoltageV, 'V')} />
        </div>
      </Disclosure>
    </>
  );
};
