import { joinFindings } from '#core/findings/join-findings.ts';
import { FindingCard } from '../../app/FindingCard.tsx';
import { placeOfField } from '../../app/place-of-field.ts';
import { Button } from '../../controls/Button.tsx';
import { Section } from '../../controls/Section.tsx';
import { severities } from '../../state/findings-of.ts';
import { showFindings } from '../../state/findings-view.ts';
import { useStudy } from '../../state/shown-study.ts';
import { findingTexts } from '../../text/findings.ts';
import { useText } from '../../text/use-text.ts';

/** What the rules say of this wiring, where it is mended; the questions stand in the full list. */
export const WiringFindings = () => {
  const text = useText(findingTexts);
  const { study } = useStudy();
  const here = joinFindings(study?.findings ?? []).filter(
    ({ fields: [first] }) => first !== undefined && placeOfField(first) === 'wiring',
  );
  const standing = severities.flatMap((severity) =>
    here.filter(({ finding }) => finding.status === 'finding' && finding.severity === severity),
  );
  const open = here.filter(({ finding }) => finding.status === 'not-checked');
  return (
    <Section
      title={text.inWiring}
      lead={standing.length === 0 ? text.inWiringNone : text.inWiringLead}
      actions={
        <Button look="quiet" onPress={() => showFindings()}>
          {open.length === 0 ? text.showAll : `${text.showAll}, ${text.openQuestions(open.length)}`}
        </Button>
      }
    >
      {standing.length === 0 ? null : (
        <ul className="finding-list">
          {standing.map((joined) => (
            <FindingCard
              key={`${joined.finding.id}${joined.finding.what}`}
              joined={joined}
              showOption
            />
          ))}
        </ul>
      )}
    </Section>
  );
};
