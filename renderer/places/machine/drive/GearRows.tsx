import { newGear } from '#core/plan/drive-defaults.ts';
import { freshId } from '#core/plan/fresh-id.ts';
import type { Gear } from '#core/plan/schema/drive.ts';
import { Button, IconButton } from '../../../controls/Button.tsx';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { TextField } from '../../../controls/TextField.tsx';
import { edit, undo, usePlan } from '../../../state/plan-store.ts';
import { showToast } from '../../../state/toast-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useFieldWords } from '../../../text/field-words.ts';
import { machineTexts } from '../../../text/machine.ts';
import { useText } from '../../../text/use-text.ts';
import { entriesOf } from './entries.ts';

const none: readonly Gear[] = [];

const change = (name: string, recipe: (list: Gear[]) => void): void =>
  edit(name, (plan) => {
    if (plan.machine.drive !== null) recipe(plan.machine.drive.gears);
  });

/** Positions of the gear selector. */
export const GearRows = () => {
  const text = useText(driveTexts);
  const machine = useText(machineTexts);
  const gears = usePlan((plan) => plan.machine.drive?.gears ?? none);
  const ratio = useFieldWords('machine.drive.gears.0.ratio').title;
  const efficiency = useFieldWords('machine.drive.gears.0.efficiencyPercent').title;
  const series = useFieldWords('machine.drive.gears.0.motorsInSeries').title;
  const direction = useFieldWords('machine.drive.gears.0.direction').title;
  const duty = useFieldWords('machine.drive.gears.0.highestDutyPercent').title;
  return (
    <>
      <h3 className="drive-part-title">{text.gears}</h3>
      <div className="row row-names gear-row" aria-hidden="true">
        <span>{text.gear}</span>
        <span>{ratio}</span>
        <span>{efficiency}</span>
        <span>{series}</span>
        <span>{direction}</span>
        <span>{duty}</span>
        <span />
      </div>
      <ol className="rows">
        {gears.map((gear, index) => {
          const path = `machine.drive.gears.${index}`;
          return (
            <li key={gear.id} className="row gear-row">
              <TextField path={`${path}.name`} label={`${text.gear} ${index + 1}`} hideLabel />
              <QuantityField path={`${path}.ratio`} label={`${ratio}, ${gear.name}`} hideLabel />
              <QuantityField
                path={`${path}.efficiencyPercent`}
                label={`${efficiency}, ${gear.name}`}
                hideLabel
              />
              <QuantityField
                path={`${path}.motorsInSeries`}
                label={`${series}, ${gear.name}`}
                hideLabel
              />
              <ChoiceField
                path={`${path}.direction`}
                label={`${direction}, ${gear.name}`}
                hideLabel
                entries={entriesOf(text.direction)}
              />
              <QuantityField
                path={`${path}.highestDutyPercent`}
                label={`${duty}, ${gear.name}`}
                hideLabel
              />
              <IconButton
                icon="trash"
                label={text.removeGear(gear.name)}
                isDisabled={gears.length <= 1}
                onPress={() => {
                  change(text.removeGear(gear.name), (list) => void list.splice(index, 1));
                  showToast(text.removeGear(gear.name), { label: machine.bringBack, run: undo });
                }}
              />
            </li>
          );
        })}
      </ol>
      <div>
        <Button
          icon="plus"
          isDisabled={gears.length >= 6}
          onPress={() =>
            change(text.addGear, (list) => {
              const id = freshId(
                'gear',
                list.map((gear) => gear.id),
              );
              const last = list.at(-1);
              list.push({ ...(last ?? newGear()), id, name: text.newGear });
            })
          }
        >
          {text.addGear}
        </Button>
      </div>
    </>
  );
};
