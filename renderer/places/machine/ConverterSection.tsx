import { useState } from 'react';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { ToggleField } from '../../controls/Toggle.tsx';
import { keepOwnPart } from '../../state/own-part-actions.ts';
import { edit, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { machineTexts } from '../../text/machine.ts';
import { ownPartTexts } from '../../text/own-parts.ts';
import { useText } from '../../text/use-text.ts';
import { describeConverter } from '../parts/describe-part.ts';
import { useConverterParts } from '../parts/part-lists.ts';
import { PartPicker } from '../parts/PartPicker.tsx';

export const ConverterSection = () => {
  const text = useText(machineTexts);
  const own = useText(ownPartTexts);
  const language = useSettings((state) => state.language);
  const converter = usePlan((plan) => plan.machine.converter);
  const parts = useConverterParts();
  const [picks, setPicks] = useState(false);
  const path = 'machine.converter';
  return (
    <Section
      title={text.converterTitle}
      lead={text.converterLead}
      actions={
        <Button onPress={() => setPicks(true)} label={text.pickConverter} field={path}>
          {converter === null ? text.pickConverter : text.change}
        </Button>
      }
    >
      {converter === null ? (
        <EmptyState icon="charging" title={text.noConverter}>
          {text.noConverterLead}
        </EmptyState>
      ) : (
        <>
          <div className="field-grid">
            <TextField path={`${path}.name`} />
            <QuantityField path={`${path}.outputVoltageV`} />
            <QuantityField path={`${path}.ratedCurrentA`} />
            <QuantityField path={`${path}.minimumInputV`} />
            <QuantityField path={`${path}.maximumInputV`} />
            {converter.loss.kind === 'sheet' ? (
              <>
                <QuantityField path={`${path}.loss.efficiencyPercent`} />
                <QuantityField path={`${path}.loss.idleCurrentA`} />
              </>
            ) : (
              <>
                <QuantityField path={`${path}.loss.idleLossW`} />
                <QuantityField path={`${path}.loss.dropV`} />
                <QuantityField path={`${path}.loss.lossResistanceOhm`} />
              </>
            )}
          </div>
          <Disclosure title={text.details} holds={path}>
            <div className="field-grid">
              <Choice
                label={text.lossKind}
                value={converter.loss.kind}
                entries={(['sheet', 'coefficients'] as const).map((value) => ({
                  value,
                  label: text.lossKinds[value],
                }))}
                onChoose={(kind) =>
                  edit(text.lossKind, (plan) => {
                    if (plan.machine.converter === null) return;
                    plan.machine.converter.loss =
                      kind === 'sheet'
                        ? { kind, efficiencyPercent: 90, idleCurrentA: 0.015 }
                        : {
                            kind: 'coefficients',
                            idleLossW: 0.3,
                            dropV: 0.5,
                            lossResistanceOhm: 0.04,
                          };
                  })
                }
              />
              <QuantityField path={`${path}.peakCurrentA`} />
              <QuantityField path={`${path}.maximumDutyPercent`} />
              <QuantityField path={`${path}.dropoutResistanceOhm`} />
              <QuantityField path={`${path}.price`} />
              <ToggleField path={`${path}.alwaysOn`} />
            </div>
            <div className="row-end">
              <Button onPress={() => keepOwnPart('converters', converter)}>
                {own.keepConverter}
              </Button>
              <Button
                onPress={() =>
                  edit(text.removeConverter, (plan) => {
                    plan.machine.converter = null;
                    for (const accessory of plan.machine.accessories) {
                      if (accessory.supply === 'converter') accessory.supply = 'pack';
                    }
                  })
                }
              >
                {text.removeConverter}
              </Button>
            </div>
          </Disclosure>
        </>
      )}
      {picks ? (
        <PartPicker
          title={text.pickConverter}
          parts={parts}
          describe={(part) => describeConverter(part, language)}
          onClose={() => setPicks(false)}
          onPick={(part) =>
            edit(text.pickConverter, (plan) => {
              plan.machine.converter = part;
            })
          }
        />
      ) : null}
    </Section>
  );
};
