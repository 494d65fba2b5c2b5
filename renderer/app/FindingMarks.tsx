import { SeverityMark } from '../controls/SeverityMark.tsx';
import { countFindings, severities } from '../state/findings-of.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';
import type { Finding } from '#core/findings/finding.ts';

/** Counts by severity: shape, number and, for a screen reader, the word. */
export const FindingMarks = ({ findings }: { readonly findings: readonly Finding[] }) => {
  const text = useText(appTexts);
  const count = countFindings(findings);
  return (
    <span className="finding-marks">
      {severities
        .filter((severity) => count[severity] > 0)
        .map((severity) => (
          <span key={severity} className={`finding-mark finding-mark-${severity}`}>
            <SeverityMark severity={severity} />
            <span aria-hidden="true">{count[severity]}</span>
            <span className="only-spoken">{text.severity[severity](count[severity])}</span>
          </span>
        ))}
    </span>
  );
};
