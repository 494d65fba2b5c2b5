import { useEffect, useState } from 'react';
import type { WayRow } from '#core/drive/compare-ways.ts';
import { outingInWay, sharedLegs, wayOf, withLoad, type LoadWay } from '#core/drive/load-ways.ts';
import type { AverageScale } from '#core/drive/scale-to-average.ts';
import { Button } from '../../../controls/Button.tsx';
import { DataTable } from '../../../controls/DataTable.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { SeriesMark } from '../../../controls/SeriesMark.tsx';
import { edit, planStore, undo, usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { showToast } from '../../../state/toast-store.ts';
import { askForScale, askForWays, useWays } from '../../../state/ways-store.ts';
import { formatFigure, formatMinutes } from '../../../text/format.ts';
import { machineTexts } from '../../../text/machine.ts';
import { useText } from '../../../text/use-text.ts';
import { waysTexts } from '../../../text/ways.ts';
import { scaledPercent } from './scaled-percent.ts';

/** The outing by amps, log and model beside each other; open only when asked for. */
export const WaysSection = ({ outingIndex }: { readonly outingIndex: number }) => {
  const text = useText(waysTexts);
  const isWorthIt = usePlan(
    (plan) => plan.outings[outingIndex]?.legs.some((leg) => leg.otherLoads.length > 0) ?? false,
  );
  return (
    <Disclosure title={text.title} note={text.lead} isOpenAtFirst={isWorthIt}>
      <WaysTable outingIndex={outingIndex} />
    </Disclosure>
  );
};

const WaysTable = ({ outingIndex }: { readonly outingIndex: number }) => {
  const text = useText(waysTexts);
  const language = useSettings((state) => state.language);
  const machine = usePlan((plan) => plan.machine);
  const options = usePlan((plan) => plan.options);
  const outing = usePlan((plan) => plan.outings[outingIndex]);
  const ways = useWays();
  useEffect(() => {
    if (outing === undefined) return undefined;
    return askForWays(machine, options, outing);
  }, [machine, options, outing]);
  if (outing === undefined) return null;
  if (ways.failure !== null) return <p className="bench-trouble">{ways.failure}</p>;
  if (ways.outingId !== outing.id)
    return (
      <p className="soft" role="status">
        {text.working}
      </p>
    );
  const { rows } = ways;
  const figure = (value: number | null): string =>
    value === null ? '?' : formatFigure(value, language);
  return (
    <div className="ways" data-stale={ways.stale}>
      <DataTable
        caption={text.title}
        hideCaption
        columns={[
          { id: 'way', label: text.way },
          { id: 'option', label: text.option },
          { id: 'minutes', label: text.minutes, isNumber: true },
          { id: 'average', label: text.average, unit: 'A', isNumber: true },
          { id: 'peak', label: text.peak, unit: 'A', isNumber: true },
          { id: 'tools', label: '' },
        ]}
        rows={rows.flatMap((row) =>
          row.runs.map(({ optionId, runTimeMin, averageA, peakA }, at) => ({
            id: `${row.way} ${optionId}`,
            cells: {
              way:
                at > 0 ? (
                  <span className="only-spoken">{text.ways[row.way]}</span>
                ) : (
                  <>
                    {text.ways[row.way]}
                    <span className="soft ways-known">{text.known(row.known, row.of)}</span>
                  </>
                ),
              option: (
                <>
                  <SeriesMark index={at} /> {options[at]?.name}
                </>
              ),
              minutes: runTimeMin === null ? '?' : formatMinutes(runTimeMin, language),
              average: figure(averageA),
              peak: figure(peakA),
              tools: at > 0 ? null : <WayTools outingIndex={outingIndex} row={row} rows={rows} />,
            },
          })),
        )}
      />
      <p className="soft">{rows.length < 2 ? text.onlyOne : text.round}</p>
    </div>
  );
};

interface WayToolsProps {
  readonly outingIndex: number;
  readonly row: WayRow;
  readonly rows: readonly WayRow[];
}

/** Lets a way count, or scales the motor model to its average. */
const WayTools = ({ outingIndex, row, rows }: WayToolsProps) => {
  const text = useText(waysTexts);
  const machineText = useText(machineTexts);
  const language = useSettings((state) => state.language);
  const outing = usePlan((plan) => plan.outings[outingIndex]);
  const [failure, setFailure] = useState<Extract<AverageScale, { ok: false }>['reason'] | null>(
    null,
  );
  if (outing === undefined) return null;
  const counting = outing.legs.filter(({ load }) => load !== null && wayOf(load) === row.way);
  const countLegs = (way: LoadWay): void =>
    edit(text.count, (plan) => {
      const target = plan.outings[outingIndex];
      if (target === undefined) return;
      const taken = outingInWay(target, way).outing.legs;
      target.legs = target.legs.map((leg, at) => withLoad(leg, taken[at]?.load ?? null));
    });
  const mayScale =
    row.way !== 'model' &&
    rows.some(({ way }) => way === 'model') &&
    sharedLegs(outing, row.way).length > 0;
  const scale = async (): Promise<void> => {
    const { plan } = planStore.getState();
    const before = plan.machine.drive?.resistancePercent;
    if (before === undefined) return;
    const answer = await askForScale(plan, outing, row.way);
    if (!answer.ok) return setFailure(answer.reason);
    setFailure(null);
    const toPercent = scaledPercent(answer.resistancePercent);
    edit(text.scale, (draft) => {
      const { drive } = draft.machine;
      if (drive === null) return;
      drive.resistancePercent = toPercent;
      drive.scaledTo = {
        source: text.scaledFrom(text.ways[row.way], outing.name).slice(0, 200),
        readA: answer.readA,
        modelA: answer.modelA,
        fromPercent: before,
        toPercent,
      };
    });
    const done = text.scaled(`${formatFigure(toPercent, language)} %`);
    showToast(done, { label: machineText.bringBack, run: undo });
  };
  return (
    <span className="ways-tools">
      {counting.length === row.known ? (
        <span className="soft">{text.counts}</span>
      ) : (
        <Button label={text.countLabel(text.ways[row.way])} onPress={() => countLegs(row.way)}>
          {text.count}
        </Button>
      )}
      {mayScale ? (
        <Button label={text.scaleLabel(text.ways[row.way])} onPress={() => void scale()}>
          {text.scale}
        </Button>
      ) : null}
      {failure === null ? null : <span role="status">{text.fails[failure]}</span>}
    </span>
  );
};
