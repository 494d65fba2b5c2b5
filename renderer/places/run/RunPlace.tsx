import { EmptyState } from '../../controls/Section.tsx';
import { useIsStale, useStudy } from '../../state/shown-study.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { AccessorySection } from './AccessorySection.tsx';
import { ChartSection } from './ChartSection.tsx';
import { DriveRunSection } from './DriveRunSection.tsx';
import { EndsSection } from './EndsSection.tsx';
import { LedgerSection } from './LedgerSection.tsx';
import { WhySection } from './WhySection.tsx';
import { AssumptionSection } from './spread/AssumptionSection.tsx';
import { SpreadSection } from './spread/SpreadSection.tsx';
import './run.css';

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
      <SpreadSection />
      <AssumptionSection />
      <DriveRunSection study={study} />
      <div className="run-pair">
        <EndsSection study={study} />
        <AccessorySection study={study} />
      </div>
      <div className="run-pair">
        <LedgerSection study={study} />
        <WhySection study={study} />
      </div>
    </div>
  );
};
