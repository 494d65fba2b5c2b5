import { Button, IconButton } from '../../controls/Button.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { removeOwnPart } from '../../state/own-part-actions.ts';
import { usePlan } from '../../state/plan-store.ts';
import { ownPartTexts, type OwnPartKind } from '../../text/own-parts.ts';
import { useText } from '../../text/use-text.ts';

/** The figures of a part that are worth changing in the list; the rest follows where it is used. */
const figures: Readonly<Record<OwnPartKind, readonly string[]>> = {
  blocks: ['capacityAh', 'ratedHours', 'resistanceOhm', 'massKg', 'price'],
  chargers: ['currentA', 'endVoltageV', 'cellGroups', 'price'],
  converters: ['outputVoltageV', 'ratedCurrentA', 'minimumInputV', 'maximumInputV', 'price'],
  accessories: ['dutyPercent'],
};
const kinds = ['blocks', 'chargers', 'converters', 'accessories'] as const;

/** Own parts of the plan: rename them, change their figures, take them out. */
export const OwnPartsDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const text = useText(ownPartTexts);
  const ownParts = usePlan((plan) => plan.ownParts);
  const shown = kinds.filter((kind) => ownParts[kind].length > 0);
  return (
    <Dialog
      title={text.title}
      isOpen
      onClose={onClose}
      size="large"
      actions={
        <Button look="main" onPress={onClose}>
          {text.done}
        </Button>
      }
    >
      <p className="soft part-lead">
        {shown.length === 0 ? `${text.lead} ${text.none}` : text.lead}
      </p>
      {shown.map((kind) => (
        <section key={kind} className="part-group">
          <h3 className="part-group-name">{text.kinds[kind]}</h3>
          {ownParts[kind].map(({ id, part }, index) => (
            <div key={id} className="own-part" role="group" aria-label={part.name}>
              <TextField path={`ownParts.${kind}.${index}.part.name`} />
              {figures[kind].map((field) => (
                <QuantityField key={field} path={`ownParts.${kind}.${index}.part.${field}`} />
              ))}
              <IconButton
                icon="trash"
                label={text.remove(part.name)}
                onPress={() => removeOwnPart(kind, index)}
              />
            </div>
          ))}
        </section>
      ))}
    </Dialog>
  );
};
