import { Button } from '../../../controls/Button.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFigure } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { waysTexts } from '../../../text/ways.ts';

/** Where the road resistance comes from while it is the one a reading gave, and the way back. */
export const ScaledNote = () => {
  const text = useText(waysTexts);
  const language = useSettings((state) => state.language);
  const drive = usePlan((plan) => plan.machine.drive);
  const scaled = drive?.scaledTo ?? null;
  // Typed over since, it no longer comes from the reading.
  if (drive === null || scaled === null || drive.resistancePercent !== scaled.toPercent)
    return null;
  const figure = (value: number, unit: string): string =>
    `${formatFigure(value, language)} ${unit}`;
  return (
    <div className="scaled-note">
      <p className="drive-fit">
        {text.provenance(
          scaled.source,
          figure(scaled.readA, 'A'),
          figure(scaled.modelA, 'A'),
          figure(scaled.fromPercent, '%'),
          figure(scaled.toPercent, '%'),
        )}
      </p>
      <Button
        onPress={() =>
          edit(text.takeBack, (plan) => {
            const target = plan.machine.drive;
            if (target === null) return;
            target.resistancePercent = scaled.fromPercent;
            target.scaledTo = null;
          })
        }
      >
        {text.takeBack}
      </Button>
    </div>
  );
};
