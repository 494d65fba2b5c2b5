import { newGroupDifference } from '#core/plan/defaults.ts';
import type { GroupDifference, Option } from '#core/plan/schema/option.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { fieldWords } from '../../text/field-words.ts';
import { groupTexts } from '../../text/groups.ts';
import { useText } from '../../text/use-text.ts';

interface GroupDifferencesProps {
  readonly option: Option;
  readonly index: number;
  /** The block whose groups are shown, counted from 1. */
  readonly at: { readonly string: number; readonly position: number };
}

const fields = ['capacityPercent', 'resistancePercent', 'startPercent'] as const;

/** Cell groups of one block that differ from their neighbours. */
export const GroupDifferences = ({ option, index, at }: GroupDifferencesProps) => {
  const text = useText(groupTexts);
  const language = useSettings((state) => state.language);
  const { groupDifferences, block } = option.pack;
  const own = groupDifferences.flatMap((each, place) =>
    each.string === at.string && each.position === at.position ? [{ each, place }] : [],
  );
  const taken = new Set(own.map(({ each }) => each.group));
  const free = Array.from({ length: block.cellGroups }, (_, group) => group + 1).find(
    (group) => !taken.has(group),
  );
  const path = `options.${index}.pack.groupDifferences`;
  const titleOf = (field: string): string => fieldWords(`${path}.0.${field}`, language).title;
  const change = (recipe: (list: GroupDifference[]) => void): void =>
    edit(text.changed, (plan) => {
      const list = plan.options[index]?.pack.groupDifferences;
      if (list !== undefined) recipe(list);
    });
  return (
    <section className="groups" aria-label={text.title}>
      <h3 className="differences-name">{text.title}</h3>
      <p className="soft">{own.length === 0 ? `${text.lead} ${text.none}` : text.lead}</p>
      {own.length === 0 ? null : (
        <DataTable
          caption={text.title}
          hideCaption
          columns={[
            { id: 'group', label: text.group },
            ...fields.map((field) => ({ id: field, label: titleOf(field) })),
            { id: 'remove', label: '' },
          ]}
          rows={own.map(({ each, place }) => ({
            id: String(place),
            cells: {
              group: <QuantityField path={`${path}.${place}.group`} label={text.group} hideLabel />,
              ...Object.fromEntries(
                fields.map((field) => [
                  field,
                  <QuantityField
                    key={field}
                    path={`${path}.${place}.${field}`}
                    label={`${titleOf(field)}, ${text.groupAt(each.group)}`}
                    hideLabel
                  />,
                ]),
              ),
              remove: (
                <IconButton
                  icon="trash"
                  label={text.remove(each.group)}
                  onPress={() => change((list) => list.splice(place, 1))}
                />
              ),
            },
          }))}
        />
      )}
      <div>
        <Button
          icon="plus"
          isDisabled={free === undefined}
          onPress={() => {
            if (free === undefined) return;
            change((list) => list.push(newGroupDifference(at.string, at.position, free)));
          }}
        >
          {text.add}
        </Button>
      </div>
    </section>
  );
};
