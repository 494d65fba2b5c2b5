import { memo, useId, useState } from 'react';
import { editField, readField } from '../state/plan-path.ts';
import { usePlan } from '../state/plan-store.ts';
import { useFieldWords } from '../text/field-words.ts';
import { FieldFrame } from './FieldFrame.tsx';

interface TextInputProps {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (value: string) => void;
  readonly help?: string | undefined;
  readonly hideLabel?: boolean | undefined;
  readonly lines?: boolean | undefined;
  readonly field?: string | undefined;
  readonly maxLength?: number;
  readonly autoFocus?: boolean;
}

/** A line or a paragraph of text; taken over on blur or Enter. */
export const TextInput = (props: TextInputProps) => {
  const { label, value, onCommit, help, lines = false, hideLabel = false, field } = props;
  const id = useId();
  // What is typed belongs to the value it was typed over: an undo makes it void.
  const [typing, setTyping] = useState({ over: value, text: null as string | null });
  const draft = typing.over === value ? typing.text : null;
  const setDraft = (text: string | null): void => setTyping({ over: value, text });
  const commit = (): void => {
    // Control characters can only be pasted; the plan refuses them.
    const clean = lines ? draft : (draft?.replaceAll(/\p{Cc}/gu, ' ') ?? null);
    setDraft(null);
    if (clean !== null && clean !== value) onCommit(clean);
  };
  const shared = {
    id,
    value: draft ?? value,
    'data-field': field,
    'data-draft': draft !== null && draft !== value,
    maxLength: props.maxLength ?? (lines ? 4000 : 120),
    onBlur: commit,
    ...(hideLabel ? { 'aria-label': label } : {}),
  };
  return (
    <FieldFrame id={id} label={label} help={help} hideLabel={hideLabel} wide={lines}>
      {lines ? (
        <textarea
          className="text-area"
          {...shared}
          onChange={(event) => setDraft(event.target.value)}
        />
      ) : (
        <div className="input-box">
          <input
            type="text"
            autoComplete="off"
            // A dialog that asks for one text puts the cursor there.
            autoFocus={props.autoFocus ?? false}
            {...shared}
            onChange={(event) => setDraft(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') commit();
              else if (event.key === 'Escape' && draft !== null) {
                event.stopPropagation();
                setDraft(null);
              }
            }}
          />
        </div>
      )}
    </FieldFrame>
  );
};

interface TextFieldProps {
  readonly path: string;
  readonly label?: string;
  readonly hideLabel?: boolean;
  readonly lines?: boolean;
}

const PlanText = ({ path, label, hideLabel, lines }: TextFieldProps) => {
  const value = usePlan((plan) => readField(plan, path));
  const words = useFieldWords(path);
  if (typeof value !== 'string') return null;
  const title = label ?? words.title;
  return (
    <TextInput
      label={title}
      help={words.help}
      value={value}
      hideLabel={hideLabel}
      lines={lines}
      field={path}
      onCommit={(next) => editField(title, path, next)}
    />
  );
};

/** A text of the plan; kept as it is while its own value is. */
export const TextField = memo(PlanText);
