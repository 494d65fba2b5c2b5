import { MenuTrigger, Menu, MenuItem, Popover, Button as Base } from 'react-aria-components';
import { newReading, readingKinds } from '#core/bench/index.ts';
import { buildBlockModel, readUniform } from '#core/battery/index.ts';
import { freshId } from '#core/plan/fresh-id.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { ReadingKind } from '#core/plan/schema/reading.ts';
import { Icon } from '../../controls/icons.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { today } from '../../state/today.ts';
import { benchTexts } from '../../text/bench.ts';
import { useText } from '../../text/use-text.ts';
import { ReadingCard } from './ReadingCard.tsx';

interface ReadingsSectionProps {
  readonly option: Option;
}

/** Readings taken on the option's pack, newest first, and the ways to add one. */
export const ReadingsSection = ({ option }: ReadingsSectionProps) => {
  const text = useText(benchTexts).readings;
  const readings = usePlan((plan) => plan.bench?.readings) ?? [];
  const own = readings
    .flatMap((reading, index) => (reading.optionId === option.id ? [index] : []))
    .toReversed();
  const add = (kind: ReadingKind): void =>
    edit(`${text.add}: ${text.kinds[kind].name}`, (plan) => {
      plan.bench ??= { readings: [], fits: [], health: [] };
      const { readings: kept } = plan.bench;
      kept.push(
        newReading(kind, {
          id: freshId(
            kind,
            kept.map(({ id }) => id),
          ),
          date: today(),
          optionId: option.id,
          outingId: plan.headlineOuting,
          blockVoltageV: readUniform(buildBlockModel(option.pack.block).openCircuit, 1),
        }),
      );
    });
  return (
    <Section title={text.title} lead={text.lead} actions={<AddReading onAdd={add} />}>
      <p className="bench-care">{text.care}</p>
      {own.length === 0 ? (
        <EmptyState icon="bench" title={text.empty}>
          {text.emptyLead}
        </EmptyState>
      ) : (
        own.map((index) => <ReadingCard key={readings[index]!.id} index={index} option={option} />)
      )}
    </Section>
  );
};

const AddReading = ({ onAdd }: { readonly onAdd: (kind: ReadingKind) => void }) => {
  const text = useText(benchTexts).readings;
  return (
    <MenuTrigger>
      <Base className="button button-plain" data-field="bench">
        <Icon name="plus" />
        {text.add}
      </Base>
      <Popover className="popover bench-kinds" placement="bottom end">
        <Menu
          className="list"
          aria-label={text.add}
          onAction={(key) => {
            const kind = readingKinds.find((entry) => entry === key);
            if (kind !== undefined) onAdd(kind);
          }}
        >
          {readingKinds.map((kind) => (
            <MenuItem
              key={kind}
              id={kind}
              className="list-item bench-kind"
              textValue={text.kinds[kind].name}
            >
              <span>{text.kinds[kind].name}</span>
              <span className="bench-tells">{text.kinds[kind].tells}</span>
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
};
