import type { ReactNode } from 'react';
import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { ExplainButton } from './ExplainButton.tsx';
import { WorkingView } from './WorkingView.tsx';
import type { Working } from './working.ts';
import './figure.css';

export interface FigureProps {
  readonly label: string;
  /** Formatted, without unit. */
  readonly value: ReactNode;
  readonly unit?: string;
  /** A line under the figure: low to high, a difference, a cause. */
  readonly note?: ReactNode;
  /** Made only when asked for. */
  readonly working?: () => Working;
  readonly size?: 'hero' | 'normal' | 'inline';
  readonly isStale?: boolean;
}

/** A result: label, number, unit. Pressed, it shows how it came about. */
export const Figure = (props: FigureProps) => {
  const { label, value, unit, note, working, size = 'normal', isStale = false } = props;
  const number = (
    <>
      <span className="figure-value">{value}</span>
      {unit === undefined ? null : <span className="figure-unit">{unit}</span>}
    </>
  );
  return (
    <div className={`figure figure-${size}`} data-stale={isStale}>
      {size === 'inline' ? null : <span className="figure-label">{label}</span>}
      {working === undefined ? (
        <span className="figure-number">{number}</span>
      ) : (
        <WorkingButton label={label} working={working}>
          {number}
        </WorkingButton>
      )}
      {note === undefined ? null : <span className="figure-note">{note}</span>}
    </div>
  );
};

interface WorkingButtonProps {
  readonly label: string;
  readonly working: () => Working;
  readonly children: ReactNode;
}

/** Makes any piece of text open its working. */
export const WorkingButton = ({ label, working, children }: WorkingButtonProps) => {
  const text = useText(controlTexts);
  return (
    <ExplainButton
      className="figure-number figure-button"
      title={label}
      renderExplanation={() => <WorkingView working={working()} />}
    >
      {children}
      <span className="only-spoken">{`, ${text.openWorking(label)}`}</span>
    </ExplainButton>
  );
};
