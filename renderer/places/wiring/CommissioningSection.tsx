import type { Option } from '#core/plan/schema/option.ts';
import type { CommissioningReading, Wiring } from '#core/plan/schema/wiring.ts';
import {
  commissioningSteps,
  packVoltageStep,
  type CommissioningStep,
  type WiringStudy,
} from '#core/wiring/index.ts';
import { Choice } from '../../controls/ChoiceField.tsx';
import { QuantityInput } from '../../controls/QuantityInput.tsx';
import { Section } from '../../controls/Section.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface CommissioningSectionProps {
  readonly wiring: Wiring;
  readonly option: Option;
  readonly wired: WiringStudy;
}

const readingRange = { min: -1e9, max: 1e9, aboveMin: false };

/** The meter steps in their order, each with what is expected and room for the reading. */
export const CommissioningSection = ({ wiring, option, wired }: CommissioningSectionProps) => {
  const text = useText(wiringTexts);
  const language = useSettings((state) => state.language);
  const plan = usePlan((whole) => whole);
  const steps = commissioningSteps(plan, wiring, option, wired, language);
  const count = (verdict: CommissioningStep['verdict']): number =>
    steps.filter((step) => step.verdict === verdict).length;
  const phases = [...new Set(steps.map((step) => step.phase))];
  return (
    <Section title={text.steps.title} lead={text.steps.lead}>
      <p className="wiring-answer" role="status">
        {text.steps.counts(count('passed'), count('failed'), count('open'))}
      </p>
      {phases.map((phase) => (
        <div key={phase} className="step-phase">
          <h3 className="wiring-head">{text.steps.phases[phase]}</h3>
          <ol className="step-rows">
            {steps
              .filter((step) => step.phase === phase)
              .map((step) => (
                <StepRow key={step.id} step={step} />
              ))}
          </ol>
        </div>
      ))}
    </Section>
  );
};

const StepRow = ({ step }: { readonly step: CommissioningStep }) => {
  const text = useText(wiringTexts).steps;
  const language = useSettings((state) => state.language);
  const figure = (value: number): string => formatFigure(value, language);
  const { expected, reading } = step;
  const wanted =
    expected.kind === 'answer'
      ? text.yes
      : expected.max === null
        ? text.atLeast(`${figure(expected.min)} ${expected.unit}`)
        : `${figure(expected.min)} – ${figure(expected.max)} ${expected.unit}`;
  return (
    <li className="step-row" data-verdict={step.verdict}>
      <div className="step-what">
        <strong>{step.what}</strong>
        <p className="soft">{step.how}</p>
      </div>
      <div className="step-expected">
        <span className="soft">{text.expected}</span>
        <span>{wanted}</span>
      </div>
      {expected.kind === 'answer' ? (
        <Choice
          label={`${text.reading}: ${step.what}`}
          hideLabel
          field={step.field === null ? undefined : `wiring.${step.field}`}
          value={reading?.passed ?? 'open'}
          entries={[
            { value: 'open', label: text.verdicts.open },
            { value: 'yes', label: text.yes },
            { value: 'no', label: text.no },
          ]}
          onChoose={(value) =>
            record(step, { passed: value === 'yes' || value === 'no' ? value : null })
          }
        />
      ) : (
        <QuantityInput
          label={`${text.reading}: ${step.what}`}
          hideLabel
          // The rule about the last connector leads to its very step.
          {...(step.id === packVoltageStep ? { field: 'wiring.readings' } : {})}
          value={reading?.value ?? null}
          storedUnit={expected.unit}
          shownUnit={expected.unit}
          range={readingRange}
          nullable
          integer={false}
          emptyWords="–"
          onCommit={(value) => record(step, { value })}
        />
      )}
      <span className="step-verdict">{text.verdicts[step.verdict]}</span>
    </li>
  );
};

/** Puts a reading into the plan; an emptied one is taken out again. */
function record(step: CommissioningStep, change: Partial<CommissioningReading>): void {
  edit(
    step.what,
    (plan) => {
      if (plan.wiring === null) return;
      if (step.field !== null) {
        plan.wiring[step.field] = change.passed ?? 'unknown';
        return;
      }
      const { readings } = plan.wiring;
      const at = readings.findIndex((entry) => entry.step === step.id);
      const next = {
        step: step.id,
        value: null,
        passed: null,
        note: '',
        ...readings[at],
        ...change,
      };
      const isEmpty = next.value === null && next.passed === null && next.note === '';
      if (at < 0) {
        if (!isEmpty) readings.push(next);
      } else if (isEmpty) readings.splice(at, 1);
      else readings[at] = next;
    },
    `reading ${step.id}`,
  );
}
