import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { QuantityField } from '../../../controls/QuantityField.tsx';
import { Section } from '../../../controls/Section.tsx';
import { usePlan } from '../../../state/plan-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';
import { entriesOf } from './entries.ts';

const path = 'machine.drive.stopChain';

/** What stops the motor when the controller does not. */
export const StopChainSection = () => {
  const text = useText(driveTexts);
  const chain = usePlan((plan) => plan.machine.drive?.stopChain);
  if (chain === undefined) return null;
  const stands = chain.isolator !== 'none' && chain.isolator !== 'unknown';
  return (
    <Section title={text.chain} lead={text.chainLead}>
      <div className="field-grid">
        <ChoiceField path={`${path}.isolator`} entries={entriesOf(text.isolator)} />
        {stands ? (
          <>
            <ChoiceField path={`${path}.isolatorReachable`} entries={entriesOf(text.answers)} />
            <QuantityField path={`${path}.isolatorDcVoltageV`} />
            <QuantityField path={`${path}.isolatorBreakingA`} />
          </>
        ) : null}
        <ChoiceField path={`${path}.throttleFaultDetection`} entries={entriesOf(text.answers)} />
        <ChoiceField path={`${path}.startInterlock`} entries={entriesOf(text.answers)} />
      </div>
    </Section>
  );
};
