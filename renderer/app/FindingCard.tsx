import { FieldLink } from '../controls/FieldLink.tsx';
import { SeverityMark } from '../controls/SeverityMark.tsx';
import { hideFindings } from '../state/findings-view.ts';
import { usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { appTexts } from '../text/app.ts';
import { fieldWords } from '../text/field-words.ts';
import { formatFigure, thinSpace } from '../text/format.ts';
import { useText } from '../text/use-text.ts';
import type { Finding } from '#core/findings/finding.ts';

interface FindingCardProps {
  readonly finding: Finding;
  readonly showOption: boolean;
}

export const FindingCard = ({ finding, showOption }: FindingCardProps) => {
  const text = useText(appTexts);
  const language = useSettings((state) => state.language);
  const options = usePlan((plan) => plan.options);
  const option = options.find(({ id }) => id === finding.optionId);
  const isOpen = finding.status === 'not-checked';
  return (
    <li className={`finding finding-${isOpen ? 'open' : finding.severity}`}>
      <div className="finding-head">
        {isOpen ? null : (
          <>
            <SeverityMark severity={finding.severity} />
            <span className="finding-severity">{text.severityWord[finding.severity]}</span>
          </>
        )}
        <span className="faint">{finding.id}</span>
        {showOption ? (
          <span className="finding-option">{option?.name ?? text.ofMachine}</span>
        ) : null}
      </div>
      <p className="finding-what">{finding.what}</p>
      {finding.consequence === '' ? null : (
        <p>
          <b>{text.consequence}:</b> {finding.consequence}
        </p>
      )}
      {finding.remedy === '' ? null : (
        <p>
          <b>{text.remedy}:</b> {finding.remedy}
        </p>
      )}
      {finding.facts.length === 0 ? null : (
        <dl className="finding-facts">
          {finding.facts.map((fact) => (
            <div key={fact.label}>
              <dt>{fact.label}</dt>
              <dd>
                {`${formatFigure(fact.value, language, 4)}${fact.unit === '' ? '' : thinSpace + fact.unit}`}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {finding.fields.length === 0 ? null : (
        <p className="finding-fields">
          {text.mend}{' '}
          {finding.fields.map((field) => (
            <FieldLink key={field} field={field} onFollow={hideFindings}>
              {fieldWords(field, language).title}
            </FieldLink>
          ))}
        </p>
      )}
      <p className="finding-source">
        {`${text.source}: ${finding.source} (${text.sourceClass[finding.sourceClass]})`}
      </p>
    </li>
  );
};
