import { QuantityField } from '../../controls/QuantityField.tsx';
import { Section } from '../../controls/Section.tsx';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { AccessoriesSection } from './AccessoriesSection.tsx';
import { BrakeSection } from './drive/BrakeSection.tsx';
import { DriveSection } from './drive/DriveSection.tsx';
import { StopChainSection } from './drive/StopChainSection.tsx';
import { ConverterSection } from './ConverterSection.tsx';
import { OutingsSection } from './OutingsSection.tsx';
import './machine.css';

/** What the pack has to feed: controller, cable, accessories with their converter, and the outings. */
export const MachinePlace = () => {
  const text = useText(machineTexts);
  return (
    <div className="place-body machine-columns">
      <div className="machine-main">
        <OutingsSection />
        <DriveSection />
        <AccessoriesSection />
      </div>
      <div className="machine-side">
        <Section title={text.controllerTitle} lead={text.controllerLead}>
          <div className="field-grid">
            <QuantityField path="machine.controller.cutoffVoltageV" />
            <QuantityField path="machine.controller.restartVoltageV" />
            <QuantityField path="machine.controller.batteryCurrentLimitA" />
            <QuantityField path="machine.controller.maximumVoltageV" />
            <QuantityField path="machine.harnessResistanceOhm" />
            <QuantityField path="machine.controller.idleCurrentA" />
          </div>
          <Disclosure title={text.details} holds="machine.controller">
            <div className="field-grid">
              <TextField path="machine.controller.name" />
              <QuantityField path="machine.controller.cutoffDelayS" />
              <QuantityField path="machine.controller.minimumVoltageV" />
              <QuantityField path="machine.controller.motorCurrentLimitA" />
            </div>
          </Disclosure>
        </Section>
        <BrakeSection />
        <StopChainSection />
        <ConverterSection />
        <Section title={text.bayTitle} lead={text.bayLead}>
          <div className="field-grid">
            <QuantityField path="machine.bay.lengthMm" emptyWords={text.noLimit} />
            <QuantityField path="machine.bay.widthMm" emptyWords={text.noLimit} />
            <QuantityField path="machine.bay.heightMm" emptyWords={text.noLimit} />
            <QuantityField path="machine.bay.massLimitKg" emptyWords={text.noLimit} />
          </div>
        </Section>
        <Section title={text.machineTitle}>
          <div className="field-grid">
            <TextField path="name" />
            <TextField path="machine.name" />
            <TextField path="currency" />
            <TextField path="machine.note" lines />
          </div>
        </Section>
      </div>
    </div>
  );
};
