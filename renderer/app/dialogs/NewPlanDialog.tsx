import { useState } from 'react';
import { startPlan, type StartAnswers } from '#core/plan/start-plan.ts';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { QuantityInput } from '../../controls/QuantityInput.tsx';
import { TextInput } from '../../controls/TextField.tsx';
import { showPlan } from '../../state/document-actions.ts';
import { closeDialog } from '../../state/document-store.ts';
import { goTo } from '../../state/place-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { newPlanTexts } from '../../text/new-plan.ts';
import { shownUnit } from '../../text/shown-unit.ts';
import { useText } from '../../text/use-text.ts';

const voltages = [12, 24, 36, 48];

/** A plan from eight answers, each with a value that makes sense already. */
export const NewPlanDialog = () => {
  const text = useText(newPlanTexts);
  const units = useSettings((state) => state.units);
  const [answers, setAnswers] = useState<StartAnswers>({
    name: text.nameAtFirst,
    nominalV: 24,
    drivingPowerW: 200,
    drivingPercent: 60,
    goalMin: 60,
    ambientC: 15,
    accessoryW: 20,
    cutoffVoltageV: null,
  });
  const set = (change: Partial<StartAnswers>): void => setAnswers((old) => ({ ...old, ...change }));
  const number = (
    key: 'drivingPowerW' | 'drivingPercent' | 'goalMin' | 'ambientC' | 'accessoryW',
    label: string,
    unit: string,
    min: number,
    max: number,
    help?: string,
  ) => (
    <QuantityInput
      label={label}
      help={help}
      value={answers[key]}
      onCommit={(value) => set({ [key]: value ?? answers[key] })}
      storedUnit={unit}
      shownUnit={shownUnit(key, unit, units)}
      range={{ min, max, aboveMin: false }}
      nullable={false}
      integer={false}
    />
  );
  return (
    <Dialog
      title={text.title}
      isOpen
      onClose={closeDialog}
      size="large"
      actions={
        <>
          <Button onPress={closeDialog}>{text.cancel}</Button>
          <Button
            look="main"
            onPress={() => {
              closeDialog();
              showPlan(startPlan(answers), true);
              goTo('packs');
              showToast(text.made);
            }}
          >
            {text.make}
          </Button>
        </>
      }
    >
      <p className="soft new-plan-lead">{text.lead}</p>
      <div className="field-grid field-grid-wide">
        <TextInput
          label={text.name}
          value={answers.name}
          onCommit={(name) => set({ name })}
          autoFocus
        />
        <Choice
          label={text.nominal}
          value={String(answers.nominalV)}
          entries={voltages.map((value) => ({ value: String(value), label: `${value} V` }))}
          onChoose={(value) => set({ nominalV: Number(value) })}
        />
        {number('drivingPowerW', text.power, 'W', 1, 20000, text.powerHelp)}
        {number('drivingPercent', text.share, '%', 1, 100, text.shareHelp)}
        {number('goalMin', text.goal, 'min', 1, 1440)}
        {number('ambientC', text.ambient, '°C', -30, 60, text.ambientHelp)}
        {number('accessoryW', text.accessories, 'W', 0, 2000, text.accessoriesHelp)}
        <QuantityInput
          label={text.cutoff}
          help={text.cutoffHelp}
          value={answers.cutoffVoltageV}
          onCommit={(cutoffVoltageV) => set({ cutoffVoltageV })}
          storedUnit="V"
          shownUnit="V"
          range={{ min: 1, max: answers.nominalV, aboveMin: false }}
          nullable
          integer={false}
        />
      </div>
    </Dialog>
  );
};
