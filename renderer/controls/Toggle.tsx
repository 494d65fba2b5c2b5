import { Switch } from 'react-aria-components';
import { editField, readField } from '../state/plan-path.ts';
import { usePlan } from '../state/plan-store.ts';
import { useFieldWords } from '../text/field-words.ts';

interface ToggleProps {
  readonly label: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
  readonly hideLabel?: boolean | undefined;
  readonly field?: string | undefined;
}

export const Toggle = ({ label, isOn, onChange, hideLabel = false, field }: ToggleProps) => (
  <Switch
    className="toggle"
    isSelected={isOn}
    onChange={onChange}
    data-field={field}
    {...(hideLabel ? { 'aria-label': label } : {})}
  >
    <span className="toggle-track" aria-hidden="true">
      <span className="toggle-knob" />
    </span>
    {hideLabel ? null : label}
  </Switch>
);

interface ToggleFieldProps {
  readonly path: string;
  readonly label?: string;
  readonly hideLabel?: boolean;
}

/** A yes or no of the plan. */
export const ToggleField = ({ path, label, hideLabel }: ToggleFieldProps) => {
  const value = usePlan((plan) => readField(plan, path));
  const words = useFieldWords(path);
  if (typeof value !== 'boolean') return null;
  const title = label ?? words.title;
  return (
    <Toggle
      label={title}
      isOn={value}
      hideLabel={hideLabel}
      field={path}
      onChange={(next) => editField(title, path, next)}
    />
  );
};
