import { useState } from 'react';
import { freshId } from '#core/plan/fresh-id.ts';
import { Button } from '../../controls/Button.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { Section } from '../../controls/Section.tsx';
import { Tabs } from '../../controls/Tabs.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { edit, undo, usePlan } from '../../state/plan-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { TemplateButtons } from './drive/TemplateButtons.tsx';
import { LegsEditor } from './LegsEditor.tsx';

/** The outings of the plan, one at a time; each a pattern of legs with its goal and temperature. */
export const OutingsSection = () => {
  const text = useText(machineTexts);
  const outings = usePlan((plan) => plan.outings);
  const headline = usePlan((plan) => plan.headlineOuting);
  const isDriven = usePlan((plan) => plan.machine.drive !== null);
  const [selected, setSelected] = useState(headline);
  const shown = outings.some(({ id }) => id === selected) ? selected : headline;
  const add = (): void => {
    const source = outings.find(({ id }) => id === shown) ?? outings[0];
    if (source === undefined) return;
    const id = freshId(
      'outing',
      outings.map((outing) => outing.id),
    );
    edit(text.addOuting, (plan) => {
      plan.outings.push({
        ...structuredClone(source),
        id,
        name: text.copyOf(source.name).slice(0, 120),
      });
    });
    setSelected(id);
  };
  return (
    <Section
      title={text.outingsTitle}
      lead={text.outingsLead}
      actions={
        <div className="section-tools">
          {isDriven ? <TemplateButtons onAdded={setSelected} /> : null}
          <Button icon="plus" isDisabled={outings.length >= 12} onPress={add}>
            {text.addOuting}
          </Button>
        </div>
      }
    >
      <Tabs
        label={text.outingsTitle}
        selected={shown}
        onSelect={setSelected}
        tabs={outings.map((outing, index) => ({
          id: outing.id,
          label: outing.name,
          body: <OutingBody index={index} isHeadline={outing.id === headline} />,
        }))}
      />
    </Section>
  );
};

const OutingBody = ({
  index,
  isHeadline,
}: {
  readonly index: number;
  readonly isHeadline: boolean;
}) => {
  const text = useText(machineTexts);
  const outing = usePlan((plan) => plan.outings[index]);
  const total = usePlan((plan) => plan.outings.length);
  if (outing === undefined) return null;
  const path = `outings.${index}`;
  const remove = (): void => {
    edit(text.removedOuting(outing.name), (plan) => {
      plan.outings.splice(index, 1);
      if (plan.headlineOuting === outing.id) plan.headlineOuting = plan.outings[0]?.id ?? '';
    });
    showToast(text.removedOuting(outing.name), { label: text.bringBack, run: undo });
  };
  return (
    <div className="outing">
      <div className="field-grid">
        <TextField path={`${path}.name`} />
        <QuantityField path={`${path}.goalMin`} />
        <QuantityField path={`${path}.ambientC`} />
        <QuantityField path={`${path}.restAfterMin`} />
        <QuantityField path={`${path}.longestMin`} />
      </div>
      <LegsEditor outingIndex={index} />
      <div className="row-end">
        <Button
          isDisabled={isHeadline}
          onPress={() =>
            edit(text.headline, (plan) => {
              plan.headlineOuting = outing.id;
            })
          }
        >
          {isHeadline ? text.isHeadline : text.headline}
        </Button>
        <Button isDisabled={total <= 1} onPress={remove}>
          {text.removeOuting}
        </Button>
      </div>
    </div>
  );
};
