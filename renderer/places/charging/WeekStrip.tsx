import { useRef } from 'react';
import type { Week } from '#core/plan/schema/week.ts';
import { clockText, type WeekStretch } from '#core/week/index.ts';
import { usePlan } from '../../state/plan-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';
import { UseHandle } from './UseHandle.tsx';
import { dayRows, type DayBar } from './week-bars.ts';

interface WeekStripProps {
  readonly week: Week;
  readonly stretches: readonly WeekStretch[];
  readonly title: string;
}

const hours = [0, 3, 6, 9, 12, 15, 18, 21, 24] as const;
const share = (minutes: number) => `${(100 * minutes) / 1440}%`;

const plainBar = (kind: 'window' | 'charge', entry: DayBar) => (
  <span
    key={entry.id}
    className={`strip-bar strip-${kind}`}
    style={{ left: share(entry.fromMin), width: share(entry.toMin - entry.fromMin) }}
  />
);

/** Seven days as rows of twenty-four hours: when the charger can be plugged in, when it works, and the outings. */
export const WeekStrip = ({ week, stretches, title }: WeekStripProps) => {
  const text = useText(chargingTexts);
  const outings = usePlan((plan) => plan.outings);
  const lane = useRef<HTMLDivElement>(null);
  const rows = dayRows(
    week,
    stretches,
    (id) => outings.find((outing) => outing.id === id)?.goalMin ?? 60,
  );
  const nameOf = (id: string) => outings.find((outing) => outing.id === id)?.name ?? id;
  return (
    <div className="week-strip" role="group" aria-label={title} aria-description={text.week.howTo}>
      <div className="strip-scale" aria-hidden="true">
        {hours.map((hour) => (
          <span key={hour} style={{ left: share(hour * 60) }}>
            {hour}
          </span>
        ))}
      </div>
      {rows.map(({ day, windows, charges, uses }, index) => (
        <div key={day} className="strip-row">
          <span className="strip-day">{text.days[day]}</span>
          <div className="strip-lane" ref={index === 0 ? lane : undefined}>
            {windows.map((entry) => plainBar('window', entry))}
            {charges.map((entry) => plainBar('charge', entry))}
            {uses.map((entry) => (
              <UseHandle
                key={entry.id}
                bar={entry}
                day={day}
                name={nameOf(entry.use.outingId)}
                lane={lane}
              />
            ))}
          </div>
          <span className="only-spoken">
            {charges
              .map(
                (entry) =>
                  `${text.week.charging} ${clockText(entry.fromMin)} – ${clockText(entry.toMin)}. `,
              )
              .join('')}
          </span>
        </div>
      ))}
      <div className="strip-legend" aria-hidden="true">
        <span className="legend-use">{text.week.use}</span>
        <span className="legend-fail">{text.week.tooLong}</span>
        <span className="legend-charge">{text.week.charging}</span>
        <span className="legend-window">{text.week.window}</span>
      </div>
    </div>
  );
};
