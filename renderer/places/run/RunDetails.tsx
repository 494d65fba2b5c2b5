import type { PlanStudy } from '#core/study/study.ts';
import { AccessorySection } from './AccessorySection.tsx';
import { DriveRunSection } from './DriveRunSection.tsx';
import { EndsSection } from './EndsSection.tsx';
import { LedgerSection } from './LedgerSection.tsx';
import { AssumptionSection } from './spread/AssumptionSection.tsx';
import { SpreadSection } from './spread/SpreadSection.tsx';
import { WhySection } from './WhySection.tsx';

/** What stands below the chart: how sure it is, how the runs end, what accessories cost, where the energy goes. */
export const RunDetails = ({ study }: { readonly study: PlanStudy }) => (
  <>
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
  </>
);
