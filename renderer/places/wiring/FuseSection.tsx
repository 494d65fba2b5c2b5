import { useState } from 'react';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import {
  coordinate,
  coordinationSvg,
  drawCoordination,
  fuseClasses,
  type Coordination,
  type CoordinationRow,
  type WiringStudy,
} from '#core/wiring/index.ts';
import { IconButton } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { SeverityMark } from '../../controls/SeverityMark.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';
import { QuantityTabs } from '../run/QuantityTabs.tsx';
import { coordinationCsv } from './coordination-csv.ts';
import { SaveMenu } from './SaveMenu.tsx';
import { TimeCurrentChart } from './TimeCurrentChart.tsx';

interface FuseSectionProps {
  readonly wiring: Wiring;
  readonly wired: WiringStudy;
  readonly selected: string | null;
}

/** Time-current coordination of one fuse: chart, table twin, and what it says in words. */
export const FuseSection = ({ wiring, wired, selected }: FuseSectionProps) => {
  const text = useText(wiringTexts).fuses;
  const language = useSettings((state) => state.language);
  const [picked, setPicked] = useState<{ id: string; under: string | null } | null>(null);
  const [isTable, setIsTable] = useState(false);
  const fused = wiring.branches.filter((branch) => branch.fuse !== null);
  // A branch chosen in the diagram leads; a fuse chosen here holds until another branch is chosen there.
  const wish = picked !== null && picked.under === selected ? picked.id : selected;
  const shown = fused.find(({ id }) => id === wish) ?? fused[0];
  const chart =
    shown === undefined ? null : coordinate(wired, shown, wiring.startSeconds, language);
  const seconds = (value: number | null): string =>
    value === null ? text.never : formatFigure(value, language);
  const labelOf = (row: CoordinationRow): string =>
    row.label in text.marks ? text.marks[row.label as keyof typeof text.marks] : row.label;
  const drawn = (of: Coordination) => drawCoordination(of, text, language);
  const said = (of: Coordination) => of.readings.map((reading) => reading.text).join(' ');
  return (
    <Section
      title={text.title}
      lead={text.lead}
      actions={
        chart === null || shown === undefined ? undefined : (
          <>
            <IconButton
              icon={isTable ? 'picture' : 'table'}
              label={isTable ? text.showChart : text.showTable}
              isOn={isTable}
              onPress={() => setIsTable(!isTable)}
            />
            <SaveMenu
              name={`${text.title}, ${shown.name}`}
              picture={() =>
                coordinationSvg(drawn(chart), `${text.title}, ${shown.name}`, said(chart))
              }
              table={() => coordinationCsv(chart, text)}
            />
          </>
        )
      }
    >
      {chart === null || shown === undefined ? (
        <p className="soft">{text.none}</p>
      ) : (
        <>
          <QuantityTabs
            label={text.pick}
            selected={shown.id}
            entries={fused.map(({ id, name }) => ({ id, label: name }))}
            onSelect={(id) => setPicked({ id, under: selected })}
          />
          <div className="fuse-split">
            {isTable ? (
              <DataTable
                caption={`${text.title}, ${shown.name}`}
                columns={[
                  { id: 'at', label: text.at },
                  { id: 'current', label: text.current, unit: 'A', isNumber: true },
                  { id: 'earliest', label: text.earliest, unit: 's', isNumber: true },
                  { id: 'latest', label: text.latest, unit: 's', isNumber: true },
                  { id: 'rated', label: text.rated, unit: 's', isNumber: true },
                  { id: 'harmed', label: text.harmed, unit: 's', isNumber: true },
                ]}
                rows={chart.rows.map((row) => ({
                  id: `${row.label} ${row.currentA}`,
                  cells: {
                    at: labelOf(row),
                    current: formatFigure(row.currentA, language),
                    earliest: seconds(row.fuseEarliestS),
                    latest: seconds(row.fuseLatestS),
                    rated: seconds(row.wireRatedS),
                    harmed: seconds(row.wireHarmedS),
                  },
                }))}
              />
            ) : (
              <TimeCurrentChart
                drawing={drawn(chart)}
                words={`${text.title}, ${shown.name}. ${said(chart)}`}
              />
            )}
            <ul className="fuse-readings">
              {chart.readings.map((reading) => (
                <li key={reading.text} className={`fuse-reading reading-${reading.verdict}`}>
                  {reading.verdict === 'good' ? (
                    <span aria-hidden="true">✓</span>
                  ) : (
                    <SeverityMark severity={reading.verdict} />
                  )}
                  <span className="only-spoken">{`${text.verdicts[reading.verdict]}: `}</span>
                  <span>{reading.text}</span>
                </li>
              ))}
              <li className="faint">{text.gates(fuseClasses[chart.fuse.class].source)}</li>
            </ul>
          </div>
        </>
      )}
    </Section>
  );
};
