import { useState } from 'react';
import { WorkingButton } from '../../controls/Figure.tsx';
import { accessoryWorking } from '../../workings/accessory-working.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { ToggleField } from '../../controls/Toggle.tsx';
import { edit, undo, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { showToast } from '../../state/toast-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { formatDifference } from '../../text/format.ts';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { freshId } from '#core/plan/fresh-id.ts';
import { describeAccessory } from '../parts/describe-part.ts';
import { useAccessoryParts } from '../parts/part-lists.ts';
import { PartPicker } from '../parts/PartPicker.tsx';
import { LoadFields } from './LoadFields.tsx';

/** Accessories as rows with a switch each, and what all of them cost together. */
export const AccessoriesSection = () => {
  const text = useText(machineTexts);
  const language = useSettings((state) => state.language);
  const accessories = usePlan((plan) => plan.machine.accessories);
  const parts = useAccessoryParts();
  const { study } = useStudy();
  const supply = useFieldWords('machine.accessories.0.supply');
  const name = useFieldWords('machine.accessories.0.name');
  const duty = useFieldWords('machine.accessories.0.dutyPercent');
  const [picks, setPicks] = useState(false);
  const remove = (index: number, gone: string): void => {
    edit(text.removedAccessory(gone), (plan) => {
      plan.machine.accessories.splice(index, 1);
    });
    showToast(text.removedAccessory(gone), { label: text.bringBack, run: undo });
  };
  return (
    <Section
      title={text.accessoriesTitle}
      lead={text.accessoriesLead}
      actions={
        <Button
          icon="plus"
          isDisabled={accessories.length >= 40}
          onPress={() => setPicks(true)}
          field="machine.accessories"
        >
          {text.addAccessory}
        </Button>
      }
    >
      {accessories.length === 0 ? (
        <EmptyState icon="bench" title={text.noAccessories}>
          {text.noAccessoriesLead}
        </EmptyState>
      ) : (
        <>
          <div className="row row-names accessory-row" aria-hidden="true">
            <span className="row-switch">{text.on}</span>
            <span>{name.title}</span>
            <span>{text.loadTitle}</span>
            <span>{text.share}</span>
            <span>{supply.title}</span>
          </div>
          <ul className="rows">
            {accessories.map((accessory, index) => {
              const path = `machine.accessories.${index}`;
              return (
                <li key={accessory.id} className="row accessory-row" data-off={!accessory.on}>
                  <ToggleField
                    path={`${path}.on`}
                    label={`${text.on}: ${accessory.name}`}
                    hideLabel
                  />
                  <TextField path={`${path}.name`} hideLabel />
                  <LoadFields
                    path={`${path}.load`}
                    name={accessory.name}
                    kinds={['power', 'current', 'resistance']}
                  />
                  <QuantityField
                    path={`${path}.dutyPercent`}
                    label={`${duty.title}, ${accessory.name}`}
                    hideLabel
                  />
                  <ChoiceField
                    path={`${path}.supply`}
                    label={`${supply.title}, ${accessory.name}`}
                    hideLabel
                    entries={(['converter', 'pack', 'mid-point'] as const).map((value) => ({
                      value,
                      label: text.supply[value],
                    }))}
                  />
                  <IconButton
                    icon="trash"
                    label={text.removeAccessory(accessory.name)}
                    onPress={() => remove(index, accessory.name)}
                  />
                </li>
              );
            })}
          </ul>
          {study === null ? null : (
            <p className="accessory-cost" aria-live="polite">
              {study.options.map((option) => (
                <span key={option.id}>
                  <WorkingButton
                    label={option.name}
                    working={() => accessoryWorking(option, language)}
                  >
                    {text.accessoriesCost(
                      `${formatDifference(-option.accessoryCostMin, language)} min`,
                      option.name,
                    )}
                  </WorkingButton>
                </span>
              ))}
            </p>
          )}
        </>
      )}
      {picks ? (
        <PartPicker
          title={text.pickAccessory}
          parts={parts}
          describe={(accessory) => describeAccessory(accessory, language)}
          onClose={() => setPicks(false)}
          onPick={(accessory) =>
            edit(text.addedAccessory, (plan) => {
              const list = plan.machine.accessories;
              const id = freshId(
                accessory.id,
                list.map((entry) => entry.id),
              );
              const supplied = plan.machine.converter === null ? 'pack' : accessory.supply;
              list.push({ ...accessory, id, supply: supplied });
            })
          }
        />
      ) : null}
    </Section>
  );
};
