import { useState } from 'react';
import { newDifference } from '#core/plan/defaults.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { edit } from '../../state/plan-store.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { GroupDifferences } from './GroupDifferences.tsx';
import { Schematic } from './Schematic.tsx';

interface DifferencesDialogProps {
  readonly option: Option;
  readonly index: number;
  readonly onClose: () => void;
}

const fields = ['capacityPercent', 'resistancePercent', 'startPercent', 'restVoltageV', 'ageYears'];

/** Which block is weaker, older or less full than the rest, pointed at in the drawing. */
export const DifferencesDialog = ({ option, index, onClose }: DifferencesDialogProps) => {
  const text = useText(packsTexts);
  const { differences } = option.pack;
  const [at, setAt] = useState({
    string: differences[0]?.string ?? 1,
    position: differences[0]?.position ?? 1,
  });
  const found = differences.findIndex(
    ({ string, position }) => string === at.string && position === at.position,
  );
  const name = text.differAt(at.string, at.position);
  const change = (isDifferent: boolean): void =>
    edit(`${text.differ}: ${name}`, (plan) => {
      const list = plan.options[index]?.pack.differences;
      if (list === undefined) return;
      if (isDifferent) list.push(newDifference(at.string, at.position));
      else list.splice(found, 1);
    });
  return (
    <Dialog title={text.differTitle(option.name)} isOpen onClose={onClose} size="large">
      <p className="soft">{text.differLead}</p>
      <div className="differences">
        <Schematic
          pack={option.pack}
          pressed={at}
          onPress={(string, position) => setAt({ string, position })}
        />
        <h3 className="differences-name">{name}</h3>
        {found < 0 ? (
          <div>
            <Button icon="plus" onPress={() => change(true)}>
              {text.differAdd}
            </Button>
          </div>
        ) : (
          <>
            <div className="field-grid">
              {fields.map((field) => (
                <QuantityField
                  key={field}
                  path={`options.${index}.pack.differences.${found}.${field}`}
                />
              ))}
            </div>
            <div>
              <Button onPress={() => change(false)}>{text.differRemove}</Button>
            </div>
          </>
        )}
        <GroupDifferences option={option} index={index} at={at} />
      </div>
    </Dialog>
  );
};
