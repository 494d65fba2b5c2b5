import type { Option } from '#core/plan/schema/option.ts';
import type { OptionCharging } from '#core/study/study-charging.ts';
import { chargeCard } from '#core/week/charge-card.ts';
import { Section } from '../../controls/Section.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';

interface CardSectionProps {
  readonly option: Option;
  readonly charging: OptionCharging;
}

/** The card for the wall beside the charger. */
export const CardSection = ({ option, charging }: CardSectionProps) => {
  const text = useText(chargingTexts).card;
  const language = useSettings((state) => state.language);
  const plan = usePlan((all) => all);
  const outing = plan.outings.find(({ id }) => id === plan.headlineOuting);
  const card = chargeCard(plan, option, charging.charge, outing?.ambientC ?? 20, language);
  return (
    <Section title={text.title} lead={text.lead}>
      <div className="charge-card">
        <dl className="card-lines">
          {card.lines.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        <div>
          <h3 className="charging-head">{text.todo}</h3>
          <ol className="plain-list numbered">
            {card.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </div>
        <div className="card-care">
          <h3 className="charging-head">{text.care}</h3>
          <ul className="plain-list">
            {card.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </div>
      </div>
    </Section>
  );
};
