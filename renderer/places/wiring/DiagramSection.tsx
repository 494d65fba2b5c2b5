import { useMemo, useState } from 'react';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import {
  diagramOf,
  diagramSvg,
  wiringStates,
  type WiringState,
  type WiringStudy,
} from '#core/wiring/index.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { editField } from '../../state/plan-path.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { branchCsv } from './branch-csv.ts';
import { BranchTable } from './BranchTable.tsx';
import { DiagramView } from './DiagramView.tsx';
import { SaveMenu } from './SaveMenu.tsx';

interface DiagramSectionProps {
  readonly wiring: Wiring;
  readonly wired: WiringStudy;
  readonly selected: string | null;
  readonly onSelect: (branchId: string) => void;
  readonly onPropose: () => void;
}

/** The wiring as a drawing or a table, in one state of the machine at a time. */
export const DiagramSection = ({
  wiring,
  wired,
  selected,
  onSelect,
  onPropose,
}: DiagramSectionProps) => {
  const text = useText(wiringTexts);
  const language = useSettings((state) => state.language);
  const harnessOhm = usePlan((plan) => plan.machine.harnessResistanceOhm);
  const [state, setState] = useState<WiringState>('cruising');
  const [isTable, setIsTable] = useState(false);
  const diagram = useMemo(() => diagramOf(wired, state, language), [wired, state, language]);
  const possible = state === 'short-circuit' || wired.states[state] !== null;
  const milliohm = (ohm: number): string => formatFigure(ohm * 1000, language);
  const differs = wired.harnessOhm !== null && Math.abs(wired.harnessOhm / harnessOhm - 1) > 0.02;
  return (
    <Section
      title={text.diagram.title}
      lead={text.diagram.lead}
      actions={
        <>
          <Button onPress={onPropose}>{text.diagram.again}</Button>
          <IconButton
            icon={isTable ? 'picture' : 'table'}
            label={isTable ? text.diagram.picture : text.diagram.table}
            isOn={isTable}
            onPress={() => setIsTable(!isTable)}
          />
          <SaveMenu
            name={`${text.diagram.title}, ${text.states[state]}`}
            picture={() => diagramSvg(diagram, `${text.diagram.title}, ${text.states[state]}`)}
            table={() => branchCsv(wired)}
          />
        </>
      }
    >
      <QuantityTabs
        label={text.diagram.state}
        selected={state}
        entries={wiringStates.map((id) => ({ id, label: text.states[id] }))}
        onSelect={setState}
      />
      {possible ? null : <p className="wiring-answer">{text.diagram.impossible}</p>}
      {isTable ? (
        <BranchTable wiring={wiring} wired={wired} state={state} onSelect={onSelect} />
      ) : (
        <DiagramView
          diagram={diagram}
          title={text.diagram.title}
          wiring={wiring}
          selected={selected}
          onSelect={onSelect}
        />
      )}
      {wired.harnessOhm === null ? null : (
        <div className="wiring-harness">
          <Figure
            label={text.diagram.harness}
            value={milliohm(wired.harnessOhm)}
            unit="mΩ"
            note={text.diagram.harnessNote(milliohm(harnessOhm))}
          />
          {differs ? (
            <Button
              onPress={() =>
                editField(
                  text.diagram.takeHarness,
                  'machine.harnessResistanceOhm',
                  Number(wired.harnessOhm!.toPrecision(3)),
                )
              }
            >
              {text.diagram.takeHarness}
            </Button>
          ) : null}
        </div>
      )}
    </Section>
  );
};
