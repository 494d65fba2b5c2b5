import { useState } from 'react';
import { scaleToReading } from '#core/drive/scale-to-reading.ts';
import { surfaceById } from '#core/drive/surfaces.ts';
import type { Reading } from '#core/plan/schema/reading.ts';
import type { SurfaceId } from '#core/plan/schema/surface.ts';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { QuantityInput } from '../../../controls/QuantityInput.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { formatFigure } from '../../../text/format.ts';
import { shownUnit } from '../../../text/shown-unit.ts';
import { useText } from '../../../text/use-text.ts';
import { waysTexts } from '../../../text/ways.ts';
import { scaledPercent } from '../ways/scaled-percent.ts';
import { surfaceEntries } from './entries.ts';

const above = (max: number) => ({ min: 0, max, aboveMin: true });
const input = { nullable: false, integer: false } as const;

const none: readonly Reading[] = [];

/** Scales the road resistance so that the model draws what a clamp meter read at an even speed. */
export const ReadingScaleFields = () => {
  const text = useText(driveTexts);
  const ways = useText(waysTexts);
  const { language, units } = useSettings();
  const machine = usePlan((plan) => plan.machine);
  const option = usePlan((plan) => plan.options[0]);
  const readings = usePlan((plan) => plan.bench?.readings ?? none);
  const [surface, setSurface] = useState<SurfaceId>('worn-paving');
  const [speedKmh, setSpeed] = useState(5);
  const [packA, setAmps] = useState<number | null>(null);
  if (option === undefined || machine.drive === null) return null;
  const gearId = machine.drive.gears.at(-1)?.id ?? null;
  const scale =
    packA === null
      ? null
      : scaleToReading(machine, option, {
          surface,
          gradePercent: 0,
          gearId,
          speedKmh,
          packA,
          busV: null,
        });
  const figure = (value: number): string => formatFigure(value, language);
  // Readings of a timed stretch with the pack current beside it say all that is asked for here.
  const timed = readings.flatMap((reading) =>
    reading.kind === 'speed' && reading.packCurrentA !== null && reading.packCurrentA > 0
      ? [
          {
            id: reading.id,
            kmh: (3.6 * reading.distanceM) / reading.timeS,
            amps: reading.packCurrentA,
          },
        ]
      : [],
  );
  const take = (resistancePercent: number, modelA: number): void => {
    if (packA === null) return;
    const toPercent = scaledPercent(resistancePercent);
    edit(text.scaleTake, (plan) => {
      const { drive } = plan.machine;
      if (drive === null) return;
      drive.scaledTo = {
        source: ways.scaledToCruise(
          `${figure(speedKmh)} km/h`,
          surfaceById(surface).name[language],
        ),
        readA: packA,
        modelA,
        fromPercent: drive.resistancePercent,
        toPercent,
      };
      drive.resistancePercent = toPercent;
    });
  };
  const kmh = shownUnit('machine.drive.speedLimitKmh', 'km/h', units);
  return (
    <>
      <p className="soft">{text.scaleLead(machine.drive.gears.at(-1)?.name ?? '')}</p>
      <div className="field-grid">
        <Choice
          label={text.scaleSurface}
          value={surface}
          entries={surfaceEntries(language)}
          onChoose={(id) => setSurface(id as SurfaceId)}
        />
        {timed.length === 0 ? null : (
          <Choice
            label={text.scaleFromBench}
            value=""
            entries={[
              { value: '', label: text.scaleTyped },
              ...timed.map(({ id, kmh: speed, amps }) => ({
                value: id,
                label: `${figure(speed)} km/h, ${figure(amps)} A`,
              })),
            ]}
            onChoose={(id) => {
              const reading = timed.find((entry) => entry.id === id);
              if (reading === undefined) return;
              setSpeed(reading.kmh);
              setAmps(reading.amps);
            }}
          />
        )}
        <QuantityInput
          {...input}
          label={text.scaleSpeed}
          value={speedKmh}
          storedUnit="km/h"
          shownUnit={kmh}
          range={above(150)}
          onCommit={(next) => setSpeed(next ?? speedKmh)}
        />
        <QuantityInput
          {...input}
          nullable
          label={text.scaleAmps}
          value={packA}
          storedUnit="A"
          shownUnit="A"
          range={above(2000)}
          onCommit={setAmps}
        />
      </div>
      {scale === null ? null : (
        <div className="row-end" role="status">
          {scale.ok ? (
            <>
              <span>
                {text.scaleAnswer(figure(scale.modelA), `${figure(scale.resistancePercent)} %`)}
              </span>
              <Button onPress={() => take(scale.resistancePercent, scale.modelA)}>
                {text.scaleTake}
              </Button>
            </>
          ) : (
            <span>{text.scaleFails[scale.reason]}</span>
          )}
        </div>
      )}
    </>
  );
};
