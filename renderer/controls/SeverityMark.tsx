import type { Severity } from '#core/findings/finding.ts';
import './severity.css';

/** Shape as well as colour: an octagon stops, a triangle warns, a disc notes. */
const shapes: Readonly<Record<Severity, string>> = {
  stop: 'M5.2 1.5h5.6L14.5 5.2v5.6L10.8 14.5H5.2L1.5 10.8V5.2z',
  warn: 'M8 1.5 15 14H1z',
  note: 'M8 1.5a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13z',
};

export const SeverityMark = ({ severity }: { readonly severity: Severity }) => (
  <svg
    className={`severity severity-${severity}`}
    viewBox="0 0 16 16"
    aria-hidden="true"
    focusable="false"
  >
    <path d={shapes[severity]} fill="currentColor" />
  </svg>
);
