import { useState } from 'react';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { useText } from '../../text/use-text.ts';
import { OptionPick } from '../charging/OptionPick.tsx';
import { FitSection } from './FitSection.tsx';
import { HealthSection } from './HealthSection.tsx';
import { LogsSection } from './LogsSection.tsx';
import { RoadSection } from './RoadSection.tsx';
import { ReadingsSection } from './ReadingsSection.tsx';
import { VerdictSection } from './VerdictSection.tsx';
import './bench.css';

/** After the build: readings and logs, what they say about the plan, and the fit that takes them into it. */
export const BenchPlace = () => {
  const text = useText(benchTexts);
  const options = usePlan((plan) => plan.options);
  const [picked, setPicked] = useState<string | null>(null);
  const at = Math.max(
    0,
    options.findIndex(({ id }) => id === picked),
  );
  const option = options[at];
  if (option === undefined) return null;
  return (
    <div className="place-body bench">
      <OptionPick
        label={text.option}
        selected={option.id}
        entries={options.map(({ id, name }, index) => ({
          id,
          label: name,
          mark: <SeriesMark index={index} />,
        }))}
        onSelect={setPicked}
      />
      <div className="bench-columns">
        <div className="bench-column">
          <ReadingsSection option={option} />
          <VerdictSection option={option} />
        </div>
        <div className="bench-column">
          <LogsSection option={option} />
          <FitSection option={option} optionIndex={at} />
          <RoadSection option={option} />
          <HealthSection option={option} />
        </div>
      </div>
    </div>
  );
};
