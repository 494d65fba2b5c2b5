import { outingTemplates, templateOuting } from '#core/drive/outing-templates.ts';
import type { OutingTemplate } from '#core/drive/outing-templates.ts';
import { freshId } from '#core/plan/fresh-id.ts';
import { Button } from '../../../controls/Button.tsx';
import { Menu } from '../../../controls/Menu.tsx';
import { edit, usePlan } from '../../../state/plan-store.ts';
import { driveTexts } from '../../../text/drive.ts';
import { useText } from '../../../text/use-text.ts';

/** Adds a driven outing of a usual kind and shows it in the strip. */
export const TemplateButtons = ({ onAdded }: { readonly onAdded: (id: string) => void }) => {
  const text = useText(driveTexts);
  const taken = usePlan((plan) => plan.outings);
  const add = (template: OutingTemplate): void => {
    const id = freshId(
      template,
      taken.map((outing) => outing.id),
    );
    edit(text.templates, (plan) => {
      plan.outings.push(
        templateOuting(template, id, { name: text.template[template], ...text.templateLegs }),
      );
      plan.headlineOuting = id;
    });
    onAdded(id);
  };
  return (
    <Menu
      label={text.templates}
      groups={[
        outingTemplates.map((template) => ({
          id: template,
          label: text.template[template],
          isDisabled: taken.length >= 12,
          run: () => add(template),
        })),
      ]}
    >
      <Button icon="plus">{text.templates}</Button>
    </Menu>
  );
};
