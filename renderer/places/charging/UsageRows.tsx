import type { Usage } from '#core/plan/schema/week.ts';
import { IconButton } from '../../controls/Button.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { edit, undo, usePlan } from '../../state/plan-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { chargingTexts, type ChargingTexts } from '../../text/charging.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { useText } from '../../text/use-text.ts';
import { DayToggles } from './DayToggles.tsx';
import { TimeField } from './TimeField.tsx';

/** Takes a use out of the week; the toast brings it back. */
export function removeUse(id: string, name: string, text: ChargingTexts['week']): void {
  edit(text.removed(name), (plan) => {
    if (plan.week !== null) plan.week.usage = plan.week.usage.filter((use) => use.id !== id);
  });
  showToast(text.removed(name), { label: text.bringBack, run: undo });
}

/** The outings of the week, one a row. */
export const UsageRows = ({ usage }: { readonly usage: readonly Usage[] }) => {
  const text = useText(chargingTexts).week;
  const outings = usePlan((plan) => plan.outings);
  const lasts = useFieldWords('week.usage.0.durationMin');
  const chance = useFieldWords('week.usage.0.chancePercent');
  const entries = outings.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <div className="charging-rows" role="list">
      <div className="charging-row use-row row-heads" aria-hidden="true">
        <span>{text.outing}</span>
        <span>{text.onDays}</span>
        <span>{text.begins}</span>
        <span>{lasts.title}</span>
        <span>{chance.title}</span>
        <span />
      </div>
      {usage.map((use, index) => {
        const path = `week.usage.${index}`;
        const name = outings.find(({ id }) => id === use.outingId)?.name ?? use.outingId;
        return (
          <div key={use.id} className="charging-row use-row" role="listitem">
            <ChoiceField
              path={`${path}.outingId`}
              label={`${text.outing} ${index + 1}`}
              hideLabel
              entries={entries}
            />
            <DayToggles path={`${path}.days`} label={`${text.onDays}, ${name}`} days={use.days} />
            <TimeField path={`${path}.startMin`} label={`${text.begins}, ${name}`} />
            <QuantityField
              path={`${path}.durationMin`}
              label={`${lasts.title}, ${name}`}
              hideLabel
              emptyWords={text.usual}
            />
            <QuantityField
              path={`${path}.chancePercent`}
              label={`${chance.title}, ${name}`}
              hideLabel
            />
            <IconButton
              icon="trash"
              label={text.remove(name)}
              onPress={() => removeUse(use.id, name, text)}
            />
          </div>
        );
      })}
    </div>
  );
};
