import { fetched } from '../../controls/Fetched.tsx';
import { EmptyState } from '../../controls/Section.tsx';
import { useIsStale, useStudy } from '../../state/shown-study.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { ChartSection } from './ChartSection.tsx';
import './run.css';

/** The chart is there before what stands below it. */
const RunDetails = fetched(async () => (await import('./RunDetails.tsx')).RunDetails);

/** The runs of all options: discharge, how they end, what accessories cost, where the energy goes, why less than the label. */
export const RunPlace = () => {
  const text = useText(runTexts);
  const { study } = useStudy();
  const stale = useIsStale();
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
      <RunDetails study={study} />
    </div>
  );
};
