import { freshId } from '#core/plan/fresh-id.ts';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import { newBranch, type WiringStudy } from '#core/wiring/index.ts';
import { Button } from '../../controls/Button.tsx';
import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { Section } from '../../controls/Section.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { edit, undo } from '../../state/plan-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';
import { ConnectorFields } from './ConnectorFields.tsx';
import { FuseFields } from './FuseFields.tsx';
import { SwitchFields } from './SwitchFields.tsx';
import { WireFields } from './WireFields.tsx';

interface BranchSectionProps {
  readonly wiring: Wiring;
  readonly wired: WiringStudy | null;
  readonly selected: string | null;
  readonly onSelect: (branchId: string) => void;
}

/** Everything about one branch: where it leads, its wire, fuse, switch, connector and joints. */
export const BranchSection = ({ wiring, wired, selected, onSelect }: BranchSectionProps) => {
  const text = useText(wiringTexts).branch;
  const { branches, devices } = wiring;
  const main = branches.find((branch) => branch.fuse !== null) ?? branches[0];
  const index = Math.max(
    0,
    branches.findIndex(({ id }) => id === (selected ?? main?.id)),
  );
  const branch = branches[index];
  const ends = devices.map(({ id, name }) => ({ value: id, label: name }));
  const add = (): void => {
    const id = freshId(
      'branch',
      branches.map((entry) => entry.id),
    );
    const from = branch?.from ?? devices[0]!.id;
    const to = devices.find((device) => device.id !== from)?.id ?? from;
    edit(text.added, (plan) => {
      plan.wiring?.branches.push(newBranch(id, text.newName, from, to, 1));
    });
    onSelect(id);
  };
  const remove = (): void => {
    if (branch === undefined) return;
    edit(text.removed(branch.name), (plan) => {
      plan.wiring?.branches.splice(index, 1);
    });
    showToast(text.removed(branch.name), { label: text.bringBack, run: undo });
  };
  const path = `wiring.branches.${index}`;
  const found = wired?.branches.find(({ id }) => id === branch?.id) ?? null;
  return (
    <Section
      title={branch === undefined ? text.title : `${text.title}: ${branch.name}`}
      lead={text.lead}
      actions={
        <>
          <Button
            icon="plus"
            isDisabled={branches.length >= 120 || devices.length < 2}
            field="wiring.branches"
            onPress={add}
          >
            {text.add}
          </Button>
          <Button icon="trash" isDisabled={branch === undefined} onPress={remove}>
            {text.remove}
          </Button>
        </>
      }
    >
      {branch === undefined ? null : (
        <div className="branch-editor" key={branch.id}>
          <div className="field-grid">
            <Choice
              label={text.pick}
              value={branch.id}
              entries={branches.map(({ id, name }) => ({ value: id, label: name }))}
              onChoose={onSelect}
            />
            <TextField path={`${path}.name`} />
            <ChoiceField
              path={`${path}.from`}
              entries={ends.filter(({ value }) => value !== branch.to)}
            />
            <ChoiceField
              path={`${path}.to`}
              entries={ends.filter(({ value }) => value !== branch.from)}
            />
          </div>
          <WireFields path={path} branch={branch} found={found} />
          <FuseFields path={path} branch={branch} />
          <SwitchFields path={path} branch={branch} />
          <ConnectorFields path={path} branch={branch} />
        </div>
      )}
    </Section>
  );
};
