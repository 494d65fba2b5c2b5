import { useState } from 'react';
import { takeOutFit } from '#core/bench/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { QuantityInput } from '../../controls/QuantityInput.tsx';
import { Section } from '../../controls/Section.tsx';
import { cancelFit, startFit, useBench } from '../../state/bench-store.ts';
import { edit, planStore, undo } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFixed } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { FitResult } from './FitResult.tsx';
import { Progress } from './LogCard.tsx';
import { problemSentence } from './problem-sentence.ts';

interface FitSectionProps {
  readonly option: Option;
  readonly optionIndex: number;
}

/** Fits the chosen runs, shows what came out, and takes it into the plan on request. */
export const FitSection = ({ option, optionIndex }: FitSectionProps) => {
  const text = useText(benchTexts).fit;
  const language = useSettings((state) => state.language);
  const { logs, fitting, fitShare, problem, failure, answer } = useBench();
  const [temperatureC, setTemperature] = useState<number | null>(null);
  const [startPercent, setStart] = useState<number | null>(null);
  const isReady = logs.some((log) => log.state === 'ready' && log.chosen.length > 0);
  const { fitted } = option.pack.block;
  const takeOut = (): void => {
    const next = takeOutFit(planStore.getState().plan, option.id);
    edit(text.takeOut, (plan) => {
      Object.assign(plan, { options: next.options });
    });
    showToast(text.takenOut, { label: text.undo, run: undo });
  };
  return (
    <Section title={text.title} lead={text.lead}>
      {fitted === null ? null : (
        <p className="bench-in-plan">
          <span>{text.inPlan(fitted.source)}</span>
          <Button look="quiet" field={`options.${optionIndex}.pack.block.fitted`} onPress={takeOut}>
            {text.takeOut}
          </Button>
        </p>
      )}
      <div className="bench-start">
        <QuantityInput
          label={text.temperature}
          help={text.temperatureHelp}
          value={temperatureC}
          storedUnit="°C"
          shownUnit="°C"
          range={{ min: -30, max: 60, aboveMin: false }}
          nullable
          integer={false}
          emptyWords={text.fromOuting}
          onCommit={setTemperature}
        />
        <QuantityInput
          label={text.startCharge}
          help={text.startHelp}
          value={startPercent}
          storedUnit="%"
          shownUnit="%"
          range={{ min: 20, max: 100, aboveMin: false }}
          nullable
          integer={false}
          emptyWords={text.fromVolts}
          onCommit={setStart}
        />
        <Button
          look="main"
          isDisabled={!isReady || fitting}
          onPress={() => startFit(option.id, { temperatureC, startPercent })}
        >
          {text.start}
        </Button>
      </div>
      {isReady || fitting ? null : <p className="soft">{text.nothingChosen}</p>}
      {fitting ? (
        <Progress
          label={text.working(`${formatFixed(fitShare * 100, language, 0)} %`)}
          share={fitShare}
          cancel={text.cancel}
          onCancel={cancelFit}
        />
      ) : null}
      {problem === null ? null : (
        <p className="bench-trouble" role="alert">
          {problemSentence(problem, language, problem.field.replace(/^run /, ''))}
        </p>
      )}
      {failure === null ? null : (
        <p className="bench-trouble" role="alert">
          {failure}
        </p>
      )}
      {answer === null ? null : <FitResult answer={answer} isStale={fitting} />}
    </Section>
  );
};
