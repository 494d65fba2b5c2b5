import { useDeferredValue } from 'react';
import { Section } from '../../controls/Section.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { controllerTexts } from '../../text/controller.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { TextField } from '../../controls/TextField.tsx';
import { Doors } from '../../app/Doors.tsx';
import { BlockRows, BmsRow } from './block-rows.tsx';
import { ChargerMoreRows, ChargerRows } from './charger-rows.tsx';
import { ControllerRows } from './controller-rows.tsx';
import { CompareTable } from './CompareTable.tsx';
import { MatrixGroup } from './MatrixGroup.tsx';
import { MatrixRow, QuantityRow } from './MatrixRow.tsx';
import { AddOption, OwnParts } from './option-buttons.tsx';
import { OptionHead } from './OptionHead.tsx';
import './packs.css';

const holds = {
  block:
    /pack\.block\.(chemistry|cellGroups|capacityAh|ratedHours|rating|resistanceOhm|massKg|price)/,
  limits: /pack\.block\.(continuous|peak|maximumCharge|chargeEnd|length|width|height)/,
  bms: /pack\.block\.bms/,
  pack: /pack\.(series|parallel)Count|note$/,
  use: /pack\.(ageYears|cyclesDone|.*Fuse)|startPercent|depthLimit|pack\.linkResistance/,
  controller: /controller/,
  charger: /charger$|charger\.(currentA|endVoltageV|cellGroups|chemistries)/,
  chargerMore:
    /charger\.(kind|efficiency|float|tail|compensation|maximumHours|price|equalises)|portLimit/,
};

const OptionHeads = () => {
  const options = useDeferredValue(usePlan((plan) => plan.options));
  return options.map((option, index) => (
    <th key={option.id} scope="col">
      <OptionHead option={option} index={index} />
    </th>
  ));
};

/**
 * All options as columns of one sheet, and how they compare. Nothing here reads the options as a whole: an edit renders
 * the cells of its own option and no others.
 */
export const PacksPlace = () => {
  const text = useText(packsTexts);
  const controllerText = useText(controllerTexts);
  const note = useFieldWords('options.0.note');
  const n = usePlan((plan) => plan.options.length);
  return (
    <div className="place-body">
      <Doors />
      <Section
        title={text.title}
        lead={text.lead}
        actions={
          <>
            <OwnParts />
            <AddOption />
          </>
        }
      >
        <div className="matrix-box" tabIndex={0} role="group" aria-label={text.title}>
          <table className="matrix">
            <thead>
              <tr>
                <td />
                <OptionHeads />
              </tr>
            </thead>
            <MatrixGroup title={text.groups.pack} columns={n} holds={holds.pack}>
              <QuantityRow path="pack.seriesCount" />
              <QuantityRow path="pack.parallelCount" />
              <MatrixRow
                label={note.title}
                renderCell={(option, index) => (
                  <TextField
                    path={`options.${index}.note`}
                    label={`${note.title}, ${option.name}`}
                    hideLabel
                    lines
                  />
                )}
              />
            </MatrixGroup>
            <MatrixGroup title={text.groups.block} columns={n} holds={holds.block}>
              <BlockRows />
            </MatrixGroup>
            <MatrixGroup title={text.groups.charger} columns={n} holds={holds.charger}>
              <ChargerRows />
            </MatrixGroup>
            <MatrixGroup
              title={text.groups.chargerMore}
              columns={n}
              holds={holds.chargerMore}
              isOpenAtFirst={false}
            >
              <ChargerMoreRows />
            </MatrixGroup>
            <MatrixGroup
              title={controllerText.group}
              columns={n}
              holds={holds.controller}
              isOpenAtFirst={false}
            >
              <ControllerRows />
            </MatrixGroup>
            <MatrixGroup
              title={text.groups.use}
              columns={n}
              holds={holds.use}
              isOpenAtFirst={false}
            >
              <QuantityRow path="startPercent" />
              <QuantityRow path="depthLimitPercent" emptyWords={text.untilCutoff} />
              <QuantityRow path="pack.ageYears" />
              <QuantityRow path="pack.cyclesDone" />
              <QuantityRow path="pack.linkResistanceOhm" />
              <QuantityRow path="pack.stringFuseA" emptyWords={text.noFuse} />
              <QuantityRow path="pack.mainFuseA" emptyWords={text.noFuse} />
            </MatrixGroup>
            <MatrixGroup
              title={text.groups.limits}
              columns={n}
              holds={holds.limits}
              isOpenAtFirst={false}
            >
              <QuantityRow path="pack.block.continuousDischargeA" />
              <QuantityRow path="pack.block.peakDischargeA" />
              <QuantityRow path="pack.block.maximumChargeA" />
              <QuantityRow path="pack.block.chargeEndVoltageV" />
              <QuantityRow path="pack.block.lengthMm" />
              <QuantityRow path="pack.block.widthMm" />
              <QuantityRow path="pack.block.heightMm" />
            </MatrixGroup>
            <MatrixGroup
              title={text.groups.bms}
              columns={n}
              holds={holds.bms}
              isOpenAtFirst={false}
            >
              <BmsRow />
              <QuantityRow path="pack.block.bms.continuousDischargeA" />
              <QuantityRow path="pack.block.bms.peakDischargeA" />
              <QuantityRow path="pack.block.bms.peakSeconds" />
              <QuantityRow path="pack.block.bms.continuousChargeA" />
              <QuantityRow path="pack.block.bms.groupLowV" />
              <QuantityRow path="pack.block.bms.groupHighV" />
              <QuantityRow path="pack.block.bms.reconnectV" />
            </MatrixGroup>
          </table>
        </div>
      </Section>
      <CompareTable />
    </div>
  );
};
