import { useId, useRef, useState, type KeyboardEvent } from 'react';
import { useSettings } from '../state/settings-store.ts';
import { decimalMarkOf, formatTyped } from '../text/format.ts';
import { convertShown } from '../text/shown-unit.ts';
import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { Button } from './Button.tsx';
import { FieldFrame } from './FieldFrame.tsx';
import { inRange, rangeWords, spinKeys, spinStep, type QuantityRange } from './quantity-range.ts';
import { readQuantity } from './read-quantity.ts';
import { TroubleWords, type Trouble } from './TroubleWords.tsx';
import { TryValues } from './TryValues.tsx';

export interface QuantityInputProps {
  readonly label: string;
  readonly help?: string | undefined;
  /** Value in the stored unit; null is not known. */
  readonly value: number | null;
  readonly onCommit: (value: number | null) => void;
  readonly storedUnit: string;
  readonly shownUnit: string;
  readonly range: QuantityRange;
  readonly nullable: boolean;
  readonly integer: boolean;
  /** What the program takes when the value is not known, with its unit. */
  readonly assumed?: string | undefined;
  /** Words for an empty field, where "not known" is not what it means. */
  /** How far off the assumed value may be, in words. */
  readonly assumedSpread?: string | null | undefined;
  readonly emptyWords?: string | undefined;
  readonly hideLabel?: boolean | undefined;
  /** Path of the plan field, for links that lead here. */
  readonly field?: string | undefined;
  /** Edits the field under the key of a trial; with it the field offers its slider. Needs `field`. */
  readonly onTry?: ((value: number, key: string) => void) | undefined;
}

/** Text typed but not taken over, and what is wrong with it. */
interface Typing {
  readonly over: string;
  readonly text: string | null;
  readonly trouble: Trouble | null;
}

/** A number with its unit. Typed text stays until it is right; only right values reach `onCommit`. */
export const QuantityInput = (props: QuantityInputProps) => {
  const { label, help, value, storedUnit, shownUnit, range, nullable, integer, hideLabel } = props;
  const id = useId();
  const text = useText(controlTexts);
  const language = useSettings((state) => state.language);
  const written =
    value === null ? '' : formatTyped(convertShown(value, storedUnit, shownUnit), language);
  // What is typed belongs to the value it was typed over: an undo or another edit of the field makes it void.
  const [typing, setTyping] = useState<Typing>({ over: written, text: null, trouble: null });
  const isCurrent = typing.over === written;
  const draft = isCurrent ? typing.text : null;
  const trouble = isCurrent ? typing.trouble : null;
  const shown = draft ?? written;
  const box = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  const [isTrying, setTrying] = useState(false);
  const settle = (): void => setTyping({ over: written, text: null, trouble: null });
  const complain = (about: Trouble): void =>
    setTyping({ over: written, text: shown, trouble: about });

  const take = (next: number | null): void => {
    const words = (): string => rangeWords(range, storedUnit, shownUnit, language, text.fromTo);
    if (next === null && !nullable) return complain(text.needed(words()));
    if (next !== null && integer && !Number.isInteger(next)) return complain(text.whole(words()));
    if (next !== null && !inRange(next, range)) return complain(text.outOfRange(words()));
    settle();
    if (next !== value) props.onCommit(next);
  };

  const read = (typed: string) =>
    readQuantity(typed, storedUnit, shownUnit, decimalMarkOf(language));

  const commit = (): void => {
    if (draft === null || draft === written) return settle();
    const typed = read(draft);
    if (typed.kind === 'empty') return take(null);
    if (typed.kind === 'value') return take(typed.value);
    return complain(typed);
  };

  const spin = (direction: number): void => {
    const typed = draft === null ? null : read(draft);
    const from = typed?.kind === 'value' ? typed.value : (value ?? range.min ?? 0);
    const at = convertShown(from, storedUnit, shownUnit);
    const next = Number((at + direction * spinStep(at, integer)).toPrecision(10));
    const stored = convertShown(next, shownUnit, storedUnit);
    if (inRange(stored, range)) take(stored);
  };

  const assumedValue = (): number | null => {
    if (props.assumed === undefined) return null;
    const assumed = read(props.assumed);
    return assumed.kind === 'value' ? assumed.value : null;
  };
  const start = props.onTry === undefined ? null : (value ?? assumedValue());

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && event.altKey) {
      event.preventDefault();
      commit();
      if (start !== null) setTrying(true);
      return;
    }
    const step = spinKeys[event.key];
    if (step !== undefined) {
      event.preventDefault();
      spin(step);
    } else if (event.key === 'Enter') commit();
    else if (event.key === 'Escape' && draft !== null) {
      event.stopPropagation();
      settle();
    }
  };

  const empty =
    props.emptyWords ?? (props.assumed === undefined ? text.notKnown : text.assumed(props.assumed));
  const spread = value === null && draft === null ? (props.assumedSpread ?? null) : null;
  const hint = props.assumed === undefined ? undefined : text.emptyWhenUnknown;
  const short = props.assumed === undefined ? empty : text.assumedShort(props.assumed);
  return (
    <FieldFrame
      id={id}
      label={label}
      help={help}
      hideLabel={hideLabel ?? false}
      helpExtra={
        nullable && value !== null ? (
          <Button onPress={() => take(null)}>{props.emptyWords ?? text.setNotKnown}</Button>
        ) : undefined
      }
      error={<TroubleWords trouble={trouble} unit={shownUnit} typed={shown} onChoose={take} />}
      hasError={trouble !== null}
    >
      <div
        className="input-box input-box-number"
        data-invalid={trouble !== null}
        ref={box}
        onPointerEnter={() => setNear(true)}
        onPointerLeave={() => setNear(false)}
      >
        <input
          id={id}
          type="text"
          inputMode={range.min !== null && range.min < 0 ? 'text' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          role="spinbutton"
          aria-label={`${label}${shownUnit === '' ? '' : `, ${shownUnit}`}`}
          aria-valuenow={value ?? undefined}
          aria-valuetext={value === null ? empty : `${written} ${shownUnit}`.trim()}
          aria-invalid={trouble !== null}
          aria-keyshortcuts={start === null ? undefined : 'Alt+Enter'}
          aria-describedby={
            trouble !== null ? `${id}-error` : spread === null ? undefined : `${id}-note`
          }
          data-field={props.field}
          data-draft={draft !== null && draft !== written}
          placeholder={nullable ? short : ''}
          title={value === null ? empty : hint}
          value={shown}
          onChange={(event) =>
            setTyping({ over: written, text: event.target.value, trouble: null })
          }
          onFocus={(event) => event.target.select()}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        <span className="input-unit" aria-hidden="true">
          {shownUnit}
        </span>
        {start === null || props.onTry === undefined || !(isNear || isTrying) ? null : (
          <TryValues
            path={props.field ?? ''}
            label={label}
            start={start}
            storedUnit={storedUnit}
            shownUnit={shownUnit}
            range={range}
            integer={integer}
            onCommit={props.onTry}
            anchor={box}
            isOpen={isTrying}
            onOpen={setTrying}
          />
        )}
      </div>
      {spread === null ? null : (
        <span className="field-note" id={`${id}-note`}>
          {spread}
        </span>
      )}
    </FieldFrame>
  );
};
