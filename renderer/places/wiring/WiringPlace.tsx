import { useState } from 'react';
import { prefillWiring } from '#core/wiring/index.ts';
import { Button } from '../../controls/Button.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { usePlace } from '../../state/place-store.ts';
import { edit, planStore, usePlan } from '../../state/plan-store.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';
import { OptionPick } from '../charging/OptionPick.tsx';
import { BranchSection } from './BranchSection.tsx';
import { CommissioningSection } from './CommissioningSection.tsx';
import { DevicesSection } from './DevicesSection.tsx';
import { DiagramSection } from './DiagramSection.tsx';
import { FuseSection } from './FuseSection.tsx';
import { RegisterSection } from './RegisterSection.tsx';
import { SwitchSection } from './SwitchSection.tsx';
import { WiringFindings } from './WiringFindings.tsx';
import { useWiringStudy } from './use-wiring-study.ts';
import '../charging/charging.css';
import './wiring.css';

/** From the battery terminal to motor, accessory and charge port: wires, fuses, switches, and the meter steps. */
export const WiringPlace = () => {
  const text = useText(wiringTexts);
  const options = usePlan((plan) => plan.options);
  const wiring = usePlan((plan) => plan.wiring);
  const [picked, setPicked] = useState<string | null>(null);
  const [branchId, setBranchId] = useState<string | null>(null);
  const atHand = useWiringStudy(picked);
  // A finding that leads to a branch opens that branch.
  const wanted = usePlace((state) => state.wantedField);
  const [answered, setAnswered] = useState<string | null>(null);
  if (wanted !== answered) {
    setAnswered(wanted);
    const place = /^wiring\.branches\.(\d+)/.exec(wanted ?? '')?.[1];
    const target = place === undefined ? undefined : wiring?.branches[Number(place)];
    if (target !== undefined) setBranchId(target.id);
  }
  if (atHand === null) return null;
  const { option, run, wired, ambientC } = atHand;
  const propose = (name: string): void => {
    if (run === null) return;
    const { plan } = planStore.getState();
    const proposal = prefillWiring(plan, option, run, ambientC);
    edit(name, (draft) => {
      const before = draft.wiring;
      draft.wiring =
        before === null
          ? proposal
          : {
              ...proposal,
              register: before.register,
              readings: before.readings,
              chargeInhibit: before.chargeInhibit,
              portPolarity: before.portPolarity,
            };
    });
  };
  return (
    <div className="place-body wiring">
      <OptionPick
        label={text.option}
        selected={option.id}
        entries={options.map(({ id, name }, index) => ({
          id,
          label: name,
          mark: <SeriesMark index={index} />,
        }))}
        onSelect={setPicked}
      />
      <p className="wiring-caution">{text.caution}</p>
      {wiring === null ? (
        <Section title={text.diagram.title}>
          <EmptyState
            icon="wiring"
            title={text.empty.title}
            action={
              <Button
                look="main"
                field="wiring"
                isDisabled={run === null}
                onPress={() => propose(text.empty.propose)}
              >
                {text.empty.propose}
              </Button>
            }
          >
            {run === null ? text.waiting : text.empty.lead}
          </EmptyState>
        </Section>
      ) : (
        <>
          {wired === null ? (
            <p className="soft">{text.waiting}</p>
          ) : (
            <DiagramSection
              wiring={wiring}
              wired={wired}
              selected={branchId}
              onSelect={setBranchId}
              onPropose={() => propose(text.diagram.againDone)}
            />
          )}
          <WiringFindings />
          <BranchSection wiring={wiring} wired={wired} selected={branchId} onSelect={setBranchId} />
          <DevicesSection wiring={wiring} />
          {wired === null ? null : (
            <>
              <FuseSection wiring={wiring} wired={wired} selected={branchId} />
              <SwitchSection wiring={wiring} wired={wired} />
            </>
          )}
          <RegisterSection wires={wiring.register} option={option} />
          {wired === null ? null : (
            <CommissioningSection wiring={wiring} option={option} wired={wired} />
          )}
        </>
      )}
    </div>
  );
};
