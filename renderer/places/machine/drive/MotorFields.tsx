import { useState } from 'react';
import { fitMotor } from '#core/drive/motor-constants.ts';
import { motorHeat } from '#core/drive/motor-heat.ts';
import { motorPoints } from '#core/drive/motor-points.ts';
import { Button } from '../../../controls/Button.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { TextField } from '../../../controls/TextField.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { formatFigure } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { describeMotor } from '../../parts/describe-part.ts';
import { useMotorParts } from '../../parts/part-lists.ts';
import { PartPicker } from '../../parts/PartPicker.tsx';

const path = 'machine.drive.motor';
/** Share by which label and readings may differ before a word is said: what labels are worth. */
const largestGap = 0.08;

/** The motor's readings, and what they make of it. */
export const MotorFields = () => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const motor = usePlan((plan) => plan.machine.drive?.motor);
  const parts = useMotorParts();
  const [picks, setPicks] = useState(false);
  if (motor === undefined) return null;
  const fit = fitMotor(motor);
  const points = fit.ok ? motorPoints(motor, fit.constants) : null;
  const heat = fit.ok ? motorHeat(motor, fit.constants) : null;
  const figure = (value: number, unit: string): string =>
    `${formatFigure(value, language)} ${unit}`;
  return (
    <>
      <div className="drive-part-head">
        <h3 className="drive-part-title">{text.motors}</h3>
        <Button onPress={() => setPicks(true)}>{text.motorPick}</Button>
      </div>
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
        {points === null ? null : (
          <>
            {' '}
            {text.motorPoints(
              figure(points.stallA, 'A'),
              figure(100 * points.bestEfficiency, '%'),
              figure(points.bestA, 'A'),
              points.rated === null
                ? '?'
                : `${figure(points.rated.rpm, 'rpm')}, ${figure(points.rated.shaftW, 'W')}`,
            )}
          </>
        )}
      </p>
      {points?.rated != null && points.rated.rpmGap > largestGap && motor.ratedRpm !== null ? (
        <p className="drive-care" role="status">
          {text.ratedGap(figure(motor.ratedRpm, 'rpm'), figure(points.rated.rpm, 'rpm'))}
        </p>
      ) : null}
      {picks ? (
        <PartPicker
          title={text.motorPick}
          parts={parts}
          describe={(part) => describeMotor(part, language)}
          onClose={() => setPicks(false)}
          onPick={(part) =>
            edit(text.motorPick, (plan) => {
              if (plan.machine.drive !== null) plan.machine.drive.motor = part;
            })
          }
        />
      ) : null}
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
