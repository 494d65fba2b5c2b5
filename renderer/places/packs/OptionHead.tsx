import { memo, useState } from 'react';
import { IconButton } from '../../controls/Button.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { TextField } from '../../controls/TextField.tsx';
import {
  duplicateOption,
  moveOption,
  optionLimit,
  removeOption,
} from '../../state/option-actions.ts';
import { usePlan } from '../../state/plan-store.ts';
import { keepOwnPart } from '../../state/own-part-actions.ts';
import { ownPartTexts } from '../../text/own-parts.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { fetched } from '../../controls/Fetched.tsx';
import { Schematic } from './Schematic.tsx';

const DifferencesDialog = fetched(
  async () => (await import('./DifferencesDialog.tsx')).DifferencesDialog,
);

/** Head of an option's column: its mark, name, commands and the drawing of its blocks. */
export const OptionHead = memo(function OptionHead({
  option,
  index,
}: {
  readonly option: Option;
  readonly index: number;
}) {
  const text = useText(packsTexts);
  const own = useText(ownPartTexts);
  const total = usePlan((plan) => plan.options.length);
  const [showsDifferences, setShowsDifferences] = useState(false);
  const differing = option.pack.differences.length + option.pack.groupDifferences.length;
  return (
    <div className="option-head">
      <div className="option-title">
        <SeriesMark index={index} />
        <TextField path={`options.${index}.name`} hideLabel />
        <Menu
          label={text.actions(option.name)}
          groups={[
            [
              {
                id: 'duplicate',
                label: text.duplicate,
                isDisabled: total >= optionLimit,
                run: () => duplicateOption(index),
              },
              {
                id: 'left',
                label: text.moveLeft,
                isDisabled: index === 0,
                run: () => moveOption(index, -1),
              },
              {
                id: 'right',
                label: text.moveRight,
                isDisabled: index === total - 1,
                run: () => moveOption(index, 1),
              },
            ],
            [
              {
                id: 'keep',
                label: text.saveBlock,
                run: () => keepOwnPart('blocks', option.pack.block),
              },
              {
                id: 'keep-charger',
                label: own.keepCharger,
                isDisabled: option.charger === null,
                run: () => {
                  if (option.charger !== null) keepOwnPart('chargers', option.charger);
                },
              },
            ],
            [
              {
                id: 'remove',
                label: text.remove,
                isDisabled: total <= 1,
                run: () => removeOption(index),
              },
            ],
          ]}
        >
          <IconButton icon="more" label={text.actions(option.name)} />
        </Menu>
      </div>
      <div className="option-drawing">
        <Schematic pack={option.pack} />
      </div>
      <Button
        look="quiet"
        label={text.differTitle(option.name)}
        onPress={() => setShowsDifferences(true)}
      >
        {differing === 0 ? text.differNone : text.differCount(differing)}
      </Button>
      {showsDifferences ? (
        <DifferencesDialog
          option={option}
          index={index}
          onClose={() => setShowsDifferences(false)}
        />
      ) : null}
    </div>
  );
});
