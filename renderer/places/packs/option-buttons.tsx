import { searchTexts } from '../../text/search.ts';
import { useState } from 'react';
import { newOption, newPack } from '#core/plan/defaults.ts';
import { Button } from '../../controls/Button.tsx';
import { fetched } from '../../controls/Fetched.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { addOption, optionLimit } from '../../state/option-actions.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { ownPartTexts } from '../../text/own-parts.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { describeBlock } from '../parts/describe-part.ts';
import { useBlockParts } from '../parts/part-lists.ts';
import { PartPicker } from '../parts/PartPicker.tsx';

const OwnPartsDialog = fetched(
  async () => (await import('../parts/OwnPartsDialog.tsx')).OwnPartsDialog,
);
const SearchDialog = fetched(async () => (await import('./search/SearchDialog.tsx')).SearchDialog);

/** Opens the list of own parts. */
export const OwnParts = () => {
  const text = useText(ownPartTexts);
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button look="quiet" onPress={() => setOpen(true)}>
        {text.open}
      </Button>
      {isOpen ? <OwnPartsDialog onClose={() => setOpen(false)} /> : null}
    </>
  );
};

/** Adds an option from the library or from plain figures. */
export const AddOption = () => {
  const text = useText(packsTexts);
  const language = useSettings((state) => state.language);
  const isFull = usePlan((plan) => plan.options.length >= optionLimit);
  const parts = useBlockParts();
  const [picks, setPicks] = useState(false);
  const [searches, setSearches] = useState(false);
  const search = useText(searchTexts);
  return (
    <>
      <Menu
        label={text.add}
        groups={[
          [
            { id: 'library', label: text.addFromLibrary, run: () => setPicks(true) },
            { id: 'plain', label: text.addEmpty, run: () => addOption() },
            { id: 'search', label: search.open, run: () => setSearches(true) },
          ],
        ]}
      >
        <Button icon="plus" isDisabled={isFull}>
          {text.add}
        </Button>
      </Menu>
      {searches ? <SearchDialog onClose={() => setSearches(false)} /> : null}
      {picks ? (
        <PartPicker
          title={text.pickBlock}
          parts={parts}
          describe={(block) => describeBlock(block, language)}
          onClose={() => setPicks(false)}
          onPick={(block) =>
            addOption({
              ...newOption([], newPack(block, block.cellGroups > 6 ? 1 : 2)),
              name: block.name,
            })
          }
        />
      ) : null}
    </>
  );
};
