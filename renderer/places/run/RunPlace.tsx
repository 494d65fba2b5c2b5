import { useEffect, useState } from 'react';
import { fetched } from '../../controls/Fetched.tsx';
import { EmptyState } from '../../controls/Section.tsx';
import { afterPaint } from '../../state/after-paint.ts';
import { useIsStale, useStudy } from '../../state/shown-study.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { ChartSection } from './ChartSection.tsx';
import './run.css';

/** Comes behind the chart. */
const RunDetails = fetched(async () => (await import('./RunDetails.tsx')).RunDetails);

/** The runs of all options: discharge, how they end, what accessories cost, where the energy goes, why less than the label. */
export const RunPlace = () => {
  const text = useText(runTexts);
  const { study } = useStudy();
  const stale = useIsStale();
  const hasChart = study !== null;
  const [hasDetails, setDetails] = useState(false);
  useEffect(() => (hasChart ? afterPaint(() => setDetails(true)) : undefined), [hasChart]);
  if (study === null) {
    return (
      <EmptyState icon="run" title={text.chartTitle}>
        {text.waiting}
      </EmptyState>
    );
  }
  return (
    <div className="place-body" data-stale={stale}>
      <ChartSection study={study} />
      {hasDetails ? <RunDetails study={study} /> : null}
    </div>
  );
};
