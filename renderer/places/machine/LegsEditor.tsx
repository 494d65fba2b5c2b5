import { useMemo, useState } from 'react';
import { logFigures } from '#core/drive/log-load.ts';
import { cruisePowerW } from '#core/drive/cruise-power.ts';
import { newLeg } from '#core/plan/defaults.ts';
import type { Leg } from '#core/plan/schema/outing.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { edit, undo, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { showToast } from '../../state/toast-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { machineTexts } from '../../text/machine.ts';
import { useText } from '../../text/use-text.ts';
import { waysTexts } from '../../text/ways.ts';
import { LogDialog } from './ways/LogDialog.tsx';
import { LogFields } from './ways/LogFields.tsx';
import { attachLog, chooseKind } from './ways/take-load.ts';
import { WaysSection } from './ways/WaysSection.tsx';
import { LegDriveFields } from './drive/LegDriveFields.tsx';
import { LegBar } from './LegBar.tsx';
import { LoadFields } from './LoadFields.tsx';
import { averagePowerW, type LoadKind } from './load-kinds.ts';

const plainKinds: readonly LoadKind[] = [
  'power',
  'current',
  'resistance',
  'surface-amps',
  'log',
  'none',
];

/** The legs of an outing in order, with a bar that shows one round to time and power. */
export const LegsEditor = ({ outingIndex }: { readonly outingIndex: number }) => {
  const text = useText(machineTexts);
  const language = useSettings((state) => state.language);
  const legs = usePlan((plan) => plan.outings[outingIndex]?.legs ?? []);
  const isDriven = usePlan((plan) => plan.machine.drive !== null);
  const waysText = useText(waysTexts);
  const [logFor, setLogFor] = useState<number | null>(null);
  const { study } = useStudy();
  const duration = useFieldWords('outings.0.legs.0.durationMin');
  const change = (name: string, recipe: (list: Leg[]) => void): void =>
    edit(name, (plan) => {
      const list = plan.outings[outingIndex]?.legs;
      if (list !== undefined) recipe(list);
    });
  const move = (index: number, by: number): void =>
    change(text.legMoved, (list) => {
      const [leg] = list.splice(index, 1);
      if (leg !== undefined) list.splice(index + by, 0, leg);
    });
  const remove = (index: number, name: string): void => {
    change(text.removedLeg(name), (list) => list.splice(index, 1));
    showToast(text.removedLeg(name), { label: text.bringBack, run: undo });
  };
  const supplyV = study?.options[0]?.nominalVoltageV ?? 24;
  const roundMin = legs.reduce((sum, leg) => sum + leg.durationMin, 0);
  const machine = usePlan((plan) => plan.machine);
  const option = usePlan((plan) => plan.options[0]);
  // For the drawing a driven leg stands with the power of its even rolling, a log with its mean.
  const drawn = useMemo(
    () =>
      legs.map((leg) => {
        if (leg.load?.kind === 'log') {
          const { meanA, energyWh, lastsS } = logFigures(leg.load);
          const powerW = energyWh === null ? meanA * supplyV : (3600 * energyWh) / lastsS;
          return { ...leg, load: { kind: 'power' as const, powerW } };
        }
        if (leg.load?.kind !== 'drive' || option === undefined) return leg;
        const powerW = cruisePowerW(machine, option, leg.load, supplyV);
        return powerW === null ? leg : { ...leg, load: { kind: 'power' as const, powerW } };
      }),
    [legs, machine, option, supplyV],
  );
  const watts = drawn.some((leg, index) => leg !== legs[index])
    ? null
    : averagePowerW(legs, supplyV);
  return (
    <div className="legs">
      <LegBar legs={drawn} supplyV={supplyV} />
      {watts === null ? null : (
        <p className="soft">
          {text.legsTitle(formatMinutes(roundMin, language), `${formatFigure(watts, language)} W`)}
        </p>
      )}
      <div className="row row-names leg-row" aria-hidden="true">
        <span />
        <span>{text.leg}</span>
        <span>{duration.title}</span>
        <span>{text.loadTitle}</span>
      </div>
      <ol className="rows">
        {legs.map((leg, index) => {
          const path = `outings.${outingIndex}.legs.${index}`;
          return (
            <li key={leg.id} className="row leg-row">
              <span className="leg-number" aria-hidden="true">
                {index + 1}
              </span>
              <TextField path={`${path}.name`} label={`${text.leg} ${index + 1}`} hideLabel />
              <QuantityField
                path={`${path}.durationMin`}
                label={`${duration.title}, ${leg.name}`}
                hideLabel
              />
              <LoadFields
                path={`${path}.load`}
                name={leg.name}
                kinds={isDriven ? ['drive', ...plainKinds] : plainKinds}
                onKind={(kind) => {
                  if (kind === 'log' && !leg.otherLoads.some((other) => other.kind === 'log'))
                    setLogFor(index);
                  else chooseKind(text.loadKind, outingIndex, index, kind);
                }}
              />
              <span className="row-tools">
                <IconButton
                  icon="up"
                  label={text.moveUp(leg.name)}
                  isDisabled={index === 0}
                  onPress={() => move(index, -1)}
                />
                <IconButton
                  icon="down"
                  label={text.moveDown(leg.name)}
                  isDisabled={index === legs.length - 1}
                  onPress={() => move(index, 1)}
                />
                <IconButton
                  icon="trash"
                  label={text.removeLeg(leg.name)}
                  isDisabled={legs.length <= 1}
                  onPress={() => remove(index, leg.name)}
                />
              </span>
              {leg.load?.kind === 'log' ? (
                <LogFields outing={outingIndex} leg={index} load={leg.load} />
              ) : (
                <LegDriveFields path={`${path}.load`} />
              )}
            </li>
          );
        })}
      </ol>
      {logFor === null ? null : (
        <LogDialog
          onTake={(log) => attachLog(waysText.logTaken, outingIndex, logFor, log)}
          onClose={() => setLogFor(null)}
        />
      )}
      <div>
        <Button
          icon="plus"
          isDisabled={legs.length >= 100}
          onPress={() => change(text.addLeg, (list) => list.push(newLeg(list.map(({ id }) => id))))}
        >
          {text.addLeg}
        </Button>
      </div>
      <WaysSection outingIndex={outingIndex} />
    </div>
  );
};
