import type { ReactNode } from 'react';
import type { Routine } from '#core/plan/schema/week.ts';
import type { SeasonResult } from '#core/week/index.ts';
import { Button } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatFixed } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { seasonWorking, type SeasonFigure } from '../../workings/season-working.ts';

interface RoutineTableProps {
  readonly seasons: readonly SeasonResult[];
  readonly proposed: Routine['trigger'] | null;
  readonly chosen: Routine['trigger'];
  readonly onTake: (trigger: Routine['trigger']) => void;
}

/** The ways of plugging in, each simulated over the season, with what each figure rests on. */
export const RoutineTable = ({ seasons, proposed, chosen, onTake }: RoutineTableProps) => {
  const words = useText(chargingTexts).routine;
  const language = useSettings((state) => state.language);
  const currency = usePlan((plan) => plan.currency);
  const figure = (value: number, digits = 3) => formatFigure(value, language, digits);
  const rowOf = (season: SeasonResult) => ({
    id: season.trigger,
    cells: {
      trigger: (
        <>
          {words.triggers[season.trigger]}
          {season.trigger === proposed ? <span className="badge">{words.proposed}</span> : null}
        </>
      ),
      lost: opens(
        'lost',
        season,
        words.lost,
        words.lostOf(season.failedOutings, season.outings),
        '',
      ),
      lowest: opens('lowest', season, words.lowest, figure(season.lowestPercent, 2), ' %'),
      depth: opens('depth', season, words.depth, figure(season.meanDepthPercent, 2), ' %'),
      cycles: opens('cycles', season, words.cycles, figure(season.equivalentCycles, 2), ''),
      seasons: opens('seasons', season, words.seasons, figure(season.expectedSeasons, 2), ''),
      full: opens('full', season, words.withoutFull, figure(season.longestWithoutFullDays, 2), ''),
      unattended: opens(
        'unattended',
        season,
        words.unattended,
        figure(season.unattendedHours, 3),
        ' h',
      ),
      energy: opens('energy', season, words.energy, figure(season.mainsKWh), ' kW·h'),
      cost:
        season.cost === null
          ? '–'
          : opens(
              'cost',
              season,
              words.cost,
              formatFixed(season.cost, language, 2),
              ` ${currency}`,
            ),
      take:
        season.trigger === chosen ? (
          <span className="soft">{words.chosen}</span>
        ) : (
          <Button
            look="quiet"
            label={`${words.take}: ${words.triggers[season.trigger]}`}
            onPress={() => onTake(season.trigger)}
          >
            {words.take}
          </Button>
        ),
    },
  });
  function opens(
    name: SeasonFigure,
    season: SeasonResult,
    label: string,
    value: string,
    unit: string,
  ): ReactNode {
    return (
      <Figure
        size="inline"
        label={`${label}, ${words.triggers[season.trigger]}`}
        value={value}
        working={() => seasonWorking(name, season, label, `${value}${unit}`, language)}
      />
    );
  }
  return (
    <DataTable
      caption={words.title}
      hideCaption
      columns={[
        { id: 'trigger', label: words.plugIn },
        { id: 'lost', label: words.lost, isNumber: true },
        { id: 'lowest', label: words.lowest, unit: '%', isNumber: true },
        { id: 'depth', label: words.depth, unit: '%', isNumber: true },
        { id: 'cycles', label: words.cycles, isNumber: true },
        { id: 'seasons', label: words.seasons, isNumber: true },
        { id: 'full', label: words.withoutFull, isNumber: true },
        { id: 'unattended', label: words.unattended, unit: 'h', isNumber: true },
        { id: 'energy', label: words.energy, unit: 'kW·h', isNumber: true },
        { id: 'cost', label: words.cost, unit: currency, isNumber: true },
        { id: 'take', label: '' },
      ]}
      rows={seasons.map(rowOf)}
    />
  );
};
