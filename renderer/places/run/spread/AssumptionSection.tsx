import { useEffect, useState } from 'react';
import { Choice } from '../../../controls/ChoiceField.tsx';
import { Section } from '../../../controls/Section.tsx';
import { useCompare, wantCompare } from '../../../state/compare-store.ts';
import { usePlace } from '../../../state/place-store.ts';
import { compareTexts } from '../../../text/compare.ts';
import { useText } from '../../../text/use-text.ts';
import { MeasureAdvice } from './MeasureAdvice.tsx';
import { TornadoTable } from './TornadoTable.tsx';
import './spread.css';

/** What each assumption does to the run time of an option, and what to measure first. */
export const AssumptionSection = () => {
  const text = useText(compareTexts);
  const sensitivity = useCompare((state) => state.sensitivity);
  const isFresh = useCompare((state) => state.fresh.has('sensitivity'));
  const chosen = usePlace((state) => state.optionId);
  const [picked, setPicked] = useState<string | null>(null);
  useEffect(() => wantCompare('sensitivity'), []);
  const shown =
    sensitivity?.find(({ id }) => id === picked) ??
    sensitivity?.find(({ id }) => id === chosen) ??
    sensitivity?.[0];
  return (
    <Section
      title={text.assumptionsTitle}
      lead={text.assumptionsLead}
      actions={
        sensitivity === null || shown === undefined ? undefined : (
          <div className="spread-option">
            <Choice
              label={text.option}
              hideLabel
              value={shown.id}
              entries={sensitivity.map(({ id, name }) => ({ value: id, label: name }))}
              onChoose={setPicked}
            />
          </div>
        )
      }
    >
      {shown === undefined ? (
        <p className="soft">{text.computing}</p>
      ) : (
        <div className="spread-body" data-stale={!isFresh} aria-busy={!isFresh}>
          {isFresh ? null : <p className="spread-outdated">{text.outdated}</p>}
          <MeasureAdvice sensitivity={shown} />
          <TornadoTable
            sensitivity={shown}
            index={sensitivity?.findIndex(({ id }) => id === shown.id) ?? 0}
          />
          <p className="soft spread-key">{text.barKey}</p>
        </div>
      )}
    </Section>
  );
};
