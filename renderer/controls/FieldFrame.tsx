import type { ReactNode } from 'react';
import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { ExplainButton } from './ExplainButton.tsx';
import './field.css';

export interface FieldFrameProps {
  readonly id: string;
  readonly label: string;
  readonly help?: string | undefined;
  /** Shown under the help: a way to say that the value is not known, for instance. */
  readonly helpExtra?: ReactNode;
  /** The label is spoken but not shown, in a table whose row names the field. */
  readonly hideLabel?: boolean;
  readonly error?: ReactNode;
  readonly hasError?: boolean;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

/** Label above, control below, trouble under it. A label with help opens it when pressed. */
export const FieldFrame = (props: FieldFrameProps) => {
  const { id, label, help, helpExtra, hideLabel = false, error, children, wide = false } = props;
  const hasError = props.hasError ?? (error !== undefined && error !== null);
  return (
    <div className={`field${wide ? ' field-wide' : ''}`}>
      {hideLabel ? null : (
        <div className="field-head">
          <label className="field-label" htmlFor={id} id={`${id}-label`}>
            {label}
          </label>
          {help === undefined && helpExtra === undefined ? null : (
            <FieldHelp label={label} help={help} extra={helpExtra} />
          )}
        </div>
      )}
      {children}
      {!hasError ? null : (
        <div className="field-error" id={`${id}-error`} role="alert">
          {error}
        </div>
      )}
    </div>
  );
};

interface FieldHelpProps {
  readonly label: string;
  readonly help: string | undefined;
  readonly extra?: ReactNode;
}

/** A small button that explains a field. */
export const FieldHelp = ({ label, help, extra }: FieldHelpProps) => {
  const text = useText(controlTexts);
  return (
    <ExplainButton
      className="field-help"
      spoken={text.about(label)}
      title={label}
      renderExplanation={() => (
        <>
          {help === undefined ? null : <p>{help}</p>}
          {extra}
        </>
      )}
    >
      ?
    </ExplainButton>
  );
};
