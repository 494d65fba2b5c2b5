import { ChoiceField, Choice } from '../../../controls/ChoiceField.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { editField, readField } from '../../../state/plan-path.ts';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';
import type { LegLoad } from '#core/plan/schema/leg-load.ts';
import { entriesOf, surfaceEntries } from './entries.ts';

/** The fields of a leg that is driven, or given by clamp-meter amps; nothing for the other kinds. */
export const LegDriveFields = ({ path }: { readonly path: string }) => {
  const text = useText(driveTexts);
  const language = useSettings((state) => state.language);
  const load = usePlan((plan) => readField(plan, path)) as LegLoad | null | undefined;
  const gears = usePlan((plan) => plan.machine.drive?.gears);
  if (load?.kind === 'surface-amps') {
    return (
      <div className="field-grid leg-details">
        <ChoiceField path={`${path}.surface`} entries={surfaceEntries(language)} />
        <QuantityField path={`${path}.starts`} />
        <QuantityField path={`${path}.peakA`} />
        <QuantityField path={`${path}.peakS`} />
      </div>
    );
  }
  if (load?.kind !== 'drive') return null;
  return (
    <div className="leg-details">
      <div className="field-grid">
        <Choice
          label={text.commandTitle}
          value={load.command.kind}
          entries={entriesOf(text.command)}
          onChoose={(kind) =>
            editField(
              text.commandTitle,
              `${path}.command`,
              kind === 'speed' ? { kind, targetSpeedKmh: 5 } : { kind, throttlePercent: 100 },
            )
          }
        />
        <QuantityField
          path={`${path}.command.${load.command.kind === 'speed' ? 'targetSpeedKmh' : 'throttlePercent'}`}
        />
        <ChoiceField path={`${path}.surface`} entries={surfaceEntries(language)} />
        <QuantityField path={`${path}.gradePercent`} />
        {gears === undefined || gears.length < 2 ? null : (
          <Choice
            label={text.gear}
            value={load.gearId ?? ''}
            entries={[
              { value: '', label: text.firstGear },
              ...gears.map(({ id, name }) => ({ value: id, label: name })),
            ]}
            onChoose={(id) => editField(text.gear, `${path}.gearId`, id === '' ? null : id)}
          />
        )}
        <QuantityField path={`${path}.starts`} />
      </div>
      <Disclosure title={text.legMore} holds={path}>
        <div className="field-grid">
          <QuantityField path={`${path}.haltS`} />
          <QuantityField path={`${path}.distanceM`} emptyWords={text.notSet} />
          <QuantityField path={`${path}.loadPercent`} />
          <QuantityField path={`${path}.headwindKmh`} />
        </div>
      </Disclosure>
    </div>
  );
};
