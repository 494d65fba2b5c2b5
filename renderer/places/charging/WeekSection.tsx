import { freshId } from '#core/plan/fresh-id.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { WeekStudy } from '#core/week/index.ts';
import { Button } from '../../controls/Button.tsx';
import { Section } from '../../controls/Section.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';
import { UsageRows } from './UsageRows.tsx';
import { WeekStrip } from './WeekStrip.tsx';
import { WindowRows } from './WindowRows.tsx';

interface WeekSectionProps {
  readonly option: Option;
  readonly study: WeekStudy | null;
}

/** The week as a strip to look at and drag, and as rows to type in. */
export const WeekSection = ({ option, study }: WeekSectionProps) => {
  const text = useText(chargingTexts).week;
  const week = usePlan((plan) => plan.week);
  const headline = usePlan((plan) => plan.headlineOuting);
  if (week === null) return null;
  const addUse = (): void =>
    edit(text.addUse, (plan) => {
      const id = freshId(
        'use',
        week.usage.map((use) => use.id),
      );
      plan.week?.usage.push({
        id,
        outingId: headline,
        days: ['wed'],
        startMin: 960,
        durationMin: null,
        chancePercent: 100,
      });
    });
  const addWindow = (): void =>
    edit(text.addWindow, (plan) => {
      const id = freshId(
        'window',
        week.windows.map((window) => window.id),
      );
      plan.week?.windows.push({
        id,
        name: text.newWindow,
        days: ['sat', 'sun'],
        fromMin: 1020,
        toMin: 1320,
        attended: true,
      });
    });
  return (
    <Section title={text.title} lead={text.lead}>
      <WeekStrip
        week={week}
        stretches={study?.proposedWeek ?? []}
        title={text.strip(option.name)}
      />
      <h3 className="charging-head">{text.useHead}</h3>
      <UsageRows usage={week.usage} />
      <div className="charging-end">
        <Button icon="plus" onPress={addUse} isDisabled={week.usage.length >= 60}>
          {text.addUse}
        </Button>
      </div>
      <h3 className="charging-head">{text.windowHead}</h3>
      <WindowRows windows={week.windows} />
      <div className="charging-end">
        <Button icon="plus" onPress={addWindow} isDisabled={week.windows.length >= 40}>
          {text.addWindow}
        </Button>
      </div>
    </Section>
  );
};
