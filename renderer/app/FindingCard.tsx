import { FieldLink } from '../controls/FieldLink.tsx';
import { SeverityMark } from '../controls/SeverityMark.tsx';
import { usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { appTexts } from '../text/app.ts';
import { fieldWords } from '../text/field-words.ts';
import { findingTexts } from '../text/findings.ts';
import { formatFigure, thinSpace } from '../text/format.ts';
import { useText } from '../text/use-text.ts';
import type { Finding } from '#core/findings/finding.ts';
import type { JoinedFinding } from '#core/findings/join-findings.ts';
import { FindingCures } from './FindingCures.tsx';
import './findings.css';

interface FindingCardProps {
  readonly joined: JoinedFinding;
  readonly showOption: boolean;
  /** After a link was followed: the list may close. */
  readonly onFollow?: () => void;
  /** After a cure was taken over; the card goes away when the figures are there. */
  readonly onCured?: () => void;
}

/** One finding, for every option that has it: what, what follows, what to do, where it comes from, where to mend it. */
export const FindingCard = ({ joined, showOption, onFollow, onCured }: FindingCardProps) => {
  const text = useText(appTexts);
  const own = useText(findingTexts);
  const language = useSettings((state) => state.language);
  const options = usePlan((plan) => plan.options);
  const { finding, shares, sameWords, fields } = joined;
  const nameOf = (id: string | null): string =>
    options.find((option) => option.id === id)?.name ?? text.ofMachine;
  const isOpen = finding.status === 'not-checked';
  const whom =
    shares.length > 1 && shares.length === options.length
      ? own.everyOption
      : shares.map(({ optionId }) => nameOf(optionId)).join(', ');
  const remedies = new Set(shares.map((share) => share.finding.remedy));
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
          <span className="finding-option">
            {finding.optionId === null ? text.ofMachine : own.concerns(whom)}
          </span>
        ) : null}
      </div>
      {sameWords ? (
        <p className="finding-what">{finding.what}</p>
      ) : (
        <dl className="finding-each">
          {shares.map((share) => (
            <div key={share.optionId}>
              <dt>{nameOf(share.optionId)}</dt>
              <dd>
                <span className="finding-what">{share.finding.what}</span>
                {remedies.size > 1 ? ` ${share.finding.remedy}` : null}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {finding.consequence === '' ? null : (
        <p>
          <b>{text.consequence}:</b> {finding.consequence}
        </p>
      )}
      {finding.remedy === '' || remedies.size > 1 ? null : (
        <p>
          <b>{text.remedy}:</b> {finding.remedy}
        </p>
      )}
      {sameWords ? <Facts finding={finding} /> : null}
      <FindingCures joined={joined} nameOf={nameOf} onCured={onCured} />
      {fields.length === 0 ? null : (
        <p className="finding-fields">
          {text.mend}{' '}
          {fields.map((field) => (
            <FieldLink key={field} field={field} {...(onFollow === undefined ? {} : { onFollow })}>
              {fieldTitle(field)}
            </FieldLink>
          ))}
        </p>
      )}
      <p className="finding-source">
        {`${text.source}: ${finding.source} (${text.sourceClass[finding.sourceClass]})`}
      </p>
    </li>
  );

  /** Fields of several options carry the option's name, or the same title would stand there twice. */
  function fieldTitle(field: string): string {
    const { title } = fieldWords(field, language);
    const place = /^options\.(\d+)\./.exec(field)?.[1];
    const option = place === undefined ? undefined : options[Number(place)];
    return shares.length > 1 && option !== undefined ? `${title} (${option.name})` : title;
  }
};

const Facts = ({ finding }: { readonly finding: Finding }) => {
  const language = useSettings((state) => state.language);
  if (finding.facts.length === 0) return null;
  return (
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
  );
};
