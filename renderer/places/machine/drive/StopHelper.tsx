import { useState } from 'react';
import { stopHelp } from '#core/drive/stop-help.ts';
import { newBrakeResistor } from '#core/plan/drive-defaults.ts';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { Figure } from '../../../controls/Figure.tsx';
import { QuantityInput } from '../../../controls/QuantityInput.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { formatFigure } from '../../../text/format.ts';
import { shownUnit } from '../../../text/shown-unit.ts';
import { stopTexts } from '../../../text/stop.ts';
import { useText } from '../../../text/use-text.ts';
import { ohmWorking, ratingWorking } from '../../../workings/stop-working.ts';
import { StopFigures } from './StopFigures.tsx';

const positive = (max: number) => ({ min: 0, max, aboveMin: true });

/** From a wished deceleration to a resistor that can be bought. */
export const StopHelper = () => {
  const text = useText(driveTexts);
  const stopText = useText(stopTexts);
  const { language, units } = useSettings();
  const machine = usePlan((plan) => plan.machine);
  const option = usePlan((plan) => plan.options[0]);
  const [rate, setRate] = useState(1.2);
  const [speed, setSpeed] = useState<number | null>(null);
  const [stops, setStops] = useState(30);
  const [gearId, setGearId] = useState<string | null>(null);
  if (option === undefined || machine.drive === null) return null;
  const shown = stopHelp(machine, option, gearId, speed, rate, stops);
  if (shown === null) return null;
  const figure = (value: number): string => formatFigure(value, language);
  const kmh = shownUnit('machine.drive.speedLimitKmh', 'km/h', units);
  const { sizing } = shown;
  const { brakes, steepestGradePercent } = machine.drive;
  const resistor = brakes.onRelease === 'resistor' ? brakes.resistor : null;
  const common = { stopsPerHour: stops, gradePercent: steepestGradePercent };
  const take = (ohm: number, watts: number): void =>
    edit(text.takeResistor, (plan) => {
      const target = plan.machine.drive?.brakes;
      if (target === undefined) return;
      target.onRelease = 'resistor';
      target.resistor = {
        ...(target.resistor ?? newBrakeResistor()),
        resistanceOhm: ohm,
        ratedPowerW: watts,
      };
    });
  const input = { nullable: false, integer: false } as const;
  return (
    <div className="stop-helper">
      <div className="field-grid">
        <Choice
          label={text.gear}
          value={shown.gearId}
          entries={machine.drive.gears.map(({ id, name }) => ({ value: id, label: name }))}
          onChoose={setGearId}
        />
        <QuantityInput
          {...input}
          label={text.fromSpeed}
          value={shown.speedKmh}
          storedUnit="km/h"
          shownUnit={kmh}
          range={positive(150)}
          onCommit={setSpeed}
        />
        <QuantityInput
          {...input}
          label={text.wished}
          value={rate}
          storedUnit="m/s²"
          shownUnit="m/s²"
          range={positive(9)}
          onCommit={(next) => setRate(next ?? rate)}
        />
        <QuantityInput
          {...input}
          label={text.stopsPerHour}
          value={stops}
          storedUnit=""
          shownUnit=""
          range={{ min: 0, max: 1000, aboveMin: false }}
          onCommit={(next) => setStops(next ?? stops)}
        />
      </div>
      <h3 className="drive-part-title">{stopText.planned}</h3>
      <StopFigures
        {...common}
        stop={shown.planned.stop}
        heat={shown.planned.heat}
        descentK={shown.planned.descentK}
        creepKmh={shown.planned.creepKmh}
        riseAtRatedK={resistor?.riseAtRatedK ?? null}
      />
      {resistor !== null && resistor.ratedPowerW === null ? (
        <p className="soft">{stopText.noRating}</p>
      ) : null}
      <h3 className="drive-part-title">{stopText.wish}</h3>
      {sizing.ok ? (
        <>
          <div className="stop-figures">
            <Figure
              label={text.standardOhm}
              value={figure(sizing.standardOhm)}
              unit="Ω"
              note={`${text.wishedOhm} ${figure(sizing.wishedOhm)} Ω`}
              working={() => ohmWorking(shown, sizing, rate, language)}
            />
            <Figure
              label={text.rating}
              value={figure(sizing.ratedW)}
              unit="W"
              note={text.ratedBy[sizing.ratedBy]}
              working={() => ratingWorking(sizing, stops, language)}
            />
          </div>
          <StopFigures
            {...common}
            stop={sizing.stop}
            heat={shown.sizedHeat}
            descentK={null}
            creepKmh={shown.creepKmh}
            riseAtRatedK={null}
          />
          <div className="row-end">
            <Button onPress={() => take(sizing.standardOhm, sizing.ratedW)}>
              {text.takeResistor}
            </Button>
          </div>
        </>
      ) : (
        <p role="status">
          {(sizing.reason === 'rolls-out' ? text.rollsOut : text.tooWeak)(
            `${figure(sizing.reachableMps2)} m/s²`,
          )}
        </p>
      )}
      <p className="drive-care">{text.stopCare}</p>
    </div>
  );
};
