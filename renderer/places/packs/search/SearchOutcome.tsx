import { useState } from 'react';
import type { FoundPack } from '#core/compare/search/candidate.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { EmptyState } from '../../../controls/Section.tsx';
import { Toggle } from '../../../controls/Toggle.tsx';
import { addOption } from '../../../state/option-actions.ts';
import { planStore, undo } from '../../../state/plan-store.ts';
import { useSearch } from '../../../state/search-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { showToast } from '../../../state/toast-store.ts';
import { formatFixed } from '../../../text/format.ts';
import { searchTexts } from '../../../text/search.ts';
import { useText } from '../../../text/use-text.ts';
import { FellOut } from './FellOut.tsx';
import { FoundTable } from './FoundTable.tsx';
import { ParetoChart } from './ParetoChart.tsx';

/** What a search has found: chart, table twin, and why the rest fell out. */
export const SearchOutcome = ({ plan }: { readonly plan: Plan }) => {
  const text = useText(searchTexts);
  const language = useSettings((state) => state.language);
  const { result, searched, stage, isBrokenOff, failure } = useSearch();
  const [onlyBest, setOnlyBest] = useState(true);
  const [chosen, setChosen] = useState<number | null>(null);
  const count = (value: number): string => formatFixed(value, language, 0);
  const take = (pack: FoundPack): void => {
    addOption(structuredClone(pack.option));
    const step = planStore.getState().past.at(-1);
    showToast(text.taken(pack.option.name), {
      label: text.undo,
      run: () => {
        if (planStore.getState().past.at(-1) === step) undo();
      },
    });
  };
  if (result === null) {
    return (
      <EmptyState icon="packs" title={text.title}>
        {failure === null ? text.empty : text.failed(failure)}
      </EmptyState>
    );
  }
  const { found, notRunCount } = result;
  const shown = onlyBest ? found.filter(({ isBest }) => isBest) : found;
  // Taking a pack changes the options only; that makes no search out of date.
  const isStale =
    stage !== 'idle' ||
    searched === null ||
    searched.machine !== plan.machine ||
    searched.outings !== plan.outings;
  return (
    <div className="search-outcome" data-stale={isStale} aria-busy={stage !== 'idle'}>
      <p className="search-found" role="status">
        <b>
          {found.length === 0
            ? text.none
            : text.found(count(found.length), count(result.candidateCount))}
        </b>{' '}
        {notRunCount === 0 ? null : text.notRun(count(notRunCount))}
        {failure === null ? null : <span className="search-trouble">{text.failed(failure)}</span>}
        {isBrokenOff ? <span className="search-trouble"> {text.broken}</span> : null}
        {isStale && stage === 'idle' ? <span className="search-trouble"> {text.stale}</span> : null}
      </p>
      {found.length === 0 ? null : (
        <>
          <ParetoChart found={found} chosen={chosen} onChoose={setChosen} onTake={take} />
          <Toggle label={text.onlyBest} isOn={onlyBest} onChange={setOnlyBest} />
          <FoundTable found={shown} chosen={chosen} onChoose={setChosen} onTake={take} />
        </>
      )}
      <FellOut result={result} />
      <p className="soft search-care">{text.care}</p>
    </div>
  );
};
