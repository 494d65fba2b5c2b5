import { useMemo } from 'react';
import { freshId } from '#core/plan/fresh-id.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { FoundWire } from '#core/plan/schema/wire-register.ts';
import {
  conflictWords,
  deduceWires,
  functionWords,
  meterFrame,
  newFoundWire,
  reasonWords,
  registerConflicts,
  registerSteps,
  stepWords,
  type Deduction,
} from '#core/wiring/index.ts';
import { Button } from '../../controls/Button.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';
import { WireRow } from './WireRow.tsx';

interface RegisterSectionProps {
  readonly wires: readonly FoundWire[];
  readonly option: Option;
}

/** Unknown wires with their readings; what they are, what contradicts, what to test next. */
export const RegisterSection = ({ wires, option }: RegisterSectionProps) => {
  const text = useText(wiringTexts).register;
  const language = useSettings((state) => state.language);
  const plan = usePlan((whole) => whole);
  const deductions = useMemo(
    () => deduceWires(wires, meterFrame(plan, option)),
    [wires, plan, option],
  );
  const conflicts = registerConflicts(wires, deductions);
  const next = registerSteps(wires, deductions);
  const labels = (ids: readonly string[]): string =>
    ids.map((id) => wires.find((wire) => wire.id === id)?.label ?? id).join(', ');
  const functionOf = ({ deduced, certain, reason }: Deduction): string =>
    deduced === null
      ? `${text.open}: ${reasonWords[reason][language]}`
      : `${certain ? '' : `${text.probably} `}${functionWords[deduced][language]} (${reasonWords[reason][language]})`;
  const add = (): void =>
    edit(text.added, (draft) => {
      const id = freshId(
        'wire',
        wires.map((wire) => wire.id),
      );
      draft.wiring?.register.push(newFoundWire(id, `W${wires.length + 1}`));
    });
  return (
    <Section
      title={text.title}
      lead={text.lead}
      actions={
        <Button icon="plus" field="wiring.register" isDisabled={wires.length >= 120} onPress={add}>
          {text.add}
        </Button>
      }
    >
      {wires.length === 0 ? (
        <EmptyState icon="wiring" title={text.empty}>
          {text.emptyLead}
        </EmptyState>
      ) : (
        <>
          <ul className="wire-rows">
            {wires.map((wire, index) => (
              <WireRow
                key={wire.id}
                wire={wire}
                index={index}
                others={wires.filter(({ id }) => id !== wire.id)}
                verdict={functionOf(deductions[index]!)}
                isOpen={deductions[index]!.deduced === null}
              />
            ))}
          </ul>
          <div className="register-split">
            <div>
              <h3 className="wiring-head">{text.conflicts}</h3>
              {conflicts.length === 0 ? <p className="soft">{text.noConflicts}</p> : null}
              <ul className="plain-list">
                {conflicts.map((conflict) => (
                  <li
                    key={`${conflict.kind} ${conflict.wireIds.join(' ')} ${conflict.about}`}
                    className="register-conflict"
                  >
                    {conflictWords[conflict.kind][language]}
                    {conflict.wireIds.length === 0 ? '' : ` (${labels(conflict.wireIds)})`}
                  </li>
                ))}
              </ul>
            </div>
            <div>
              <h3 className="wiring-head">{text.next}</h3>
              {next.length === 0 ? <p className="soft">{text.done}</p> : null}
              <ol className="plain-list">
                {next.map((step) => (
                  <li key={step.test}>
                    {stepWords[step.test][language]} <strong>{labels(step.wireIds)}</strong>
                  </li>
                ))}
              </ol>
            </div>
          </div>
        </>
      )}
    </Section>
  );
};
