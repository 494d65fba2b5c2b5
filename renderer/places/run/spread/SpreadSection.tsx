import { Choice } from '../../../controls/ChoiceField.tsx';
import { Section } from '../../../controls/Section.tsx';
import { setCaseCount, useCompare } from '../../../state/compare-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { formatFixed } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { ClassTable } from './ClassTable.tsx';
import { PairSentences } from './PairSentences.tsx';
import { SpreadTable } from './SpreadTable.tsx';
import './spread.css';

/** Cases that are offered; the error of the percentiles falls with their square root. */
const caseCounts = [200, 500, 2000, 10000];

/** Low, likely and high of every option, where the cases lie, and how the options compare case by case. */
export const SpreadSection = () => {
  const text = useText(compareTexts);
  const language = useSettings((state) => state.language);
  const spread = useCompare((state) => state.spread);
  const caseCount = useCompare((state) => state.caseCount);
  const isFresh = useCompare((state) => state.fresh.has('spread'));
  const cases = (count: number): string => text.casesEntry(formatFixed(count, language, 0));
  return (
    <Section
      title={text.title}
      lead={text.lead(formatFixed(caseCount, language, 0))}
      actions={
        <div className="spread-cases">
          <Choice
            label={text.cases}
            hideLabel
            value={String(caseCount)}
            entries={caseCounts.map((count) => ({ value: String(count), label: cases(count) }))}
            onChoose={(count) => setCaseCount(Number(count))}
          />
        </div>
      }
    >
      {spread === null ? (
        <p className="soft">{text.computing}</p>
      ) : (
        <div className="spread-body" data-stale={!isFresh} aria-busy={!isFresh}>
          {isFresh ? null : <p className="spread-outdated">{text.outdated}</p>}
          <SpreadTable spread={spread} />
          <PairSentences spread={spread} />
          <ClassTable spread={spread} />
        </div>
      )}
    </Section>
  );
};
