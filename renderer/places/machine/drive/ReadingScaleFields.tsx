import { useState } from 'react';
import { scaleToReading } from '#core/drive/scale-to-reading.ts';
import type { SurfaceId } from '#core/plan/schema/surface.ts';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { QuantityInput } from '../../../controls/QuantityInput.tsx';
import { editField } from '../../../state/plan-path.ts';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { formatFigure } from '../../../text/format.ts';
import { shownUnit } from '../../../text/shown-unit.ts';
import { useText } from '../../../text/use-text.ts';
import { surfaceEntries } from './entries.ts';

const above = (max: number) => ({ min: 0, max, aboveMin: true });
const input = { nullable: false, integer: false } as const;

/** Scales the road resistance so that the model draws what a clamp meter read at an even speed. */
export const ReadingScaleFields = () => {
  const text = useText(driveTexts);
  const { language, units } = useSettings();
  const machine = usePlan((plan) => plan.machine);
  const option = usePlan((plan) => plan.options[0]);
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
              <Button
                onPress={() =>
                  editField(
                    text.scaleTake,
                    'machine.drive.resistancePercent',
                    Math.round(10 * scale.resistancePercent) / 10,
                  )
                }
              >
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
