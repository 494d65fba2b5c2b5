import { assumedRiseAtRatedK } from '#core/drive/resistor-heat.ts';
import type { ResistorHeat } from '#core/drive/resistor-heat.ts';
import type { Stopping } from '#core/drive/stopping.ts';
import { Figure } from '../../../controls/Figure.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFigure } from '../../../text/format.ts';
import { stopTexts } from '../../../text/stop.ts';
import { useText } from '../../../text/use-text.ts';
import { heatWorking } from '../../../workings/stop-working.ts';

const coldC = 25;

interface StopFiguresProps {
  readonly stop: Stopping;
  readonly heat: ResistorHeat | null;
  /** Settled rise on the descent [K]; null where nothing is known of it. */
  readonly descentK: number | null;
  readonly creepKmh: number;
  readonly gradePercent: number | null;
  readonly stopsPerHour: number;
  readonly riseAtRatedK: number | null;
}

/** One stop in figures: deceleration, current, way, what the resistor takes and how hot it gets, and the creep downhill. */
export const StopFigures = (props: StopFiguresProps) => {
  const { stop, heat, descentK, creepKmh, gradePercent, stopsPerHour } = props;
  const text = useText(stopTexts);
  const language = useSettings((state) => state.language);
  const figure = (value: number): string => formatFigure(value, language);
  const ratedK = props.riseAtRatedK ?? assumedRiseAtRatedK;
  const limit = `${figure(coldC + ratedK)} °C`;
  const heatNote = (riseK: number, usual: string): string =>
    riseK > ratedK ? text.tooHot(limit) : usual;
  return (
    <div className="stop-figures" role="status">
      <Figure label={text.deceleration} value={figure(stop.decelerationMps2)} unit="m/s²" />
      <Figure
        label={text.peakCurrent}
        value={figure(stop.peakMotorA)}
        unit="A"
        note={
          stop.eachMotorPeakA < stop.peakMotorA
            ? text.eachMotor(`${figure(stop.eachMotorPeakA)} A`)
            : undefined
        }
      />
      {stop.distanceM === null ? (
        <Figure label={text.way} value="–" note={text.neverStands} />
      ) : (
        <Figure label={text.way} value={figure(stop.distanceM)} unit="m" />
      )}
      {stop.resistorPeakW > 0 ? (
        <>
          <Figure label={text.peakPower} value={figure(stop.resistorPeakW)} unit="W" />
          <Figure label={text.energy} value={figure(stop.resistorJ)} unit="J" />
        </>
      ) : null}
      {heat === null ? null : (
        <>
          <Figure
            label={text.oneStop}
            value={figure(coldC + heat.oneStopK)}
            unit="°C"
            note={heatNote(heat.oneStopK, text.fromCold)}
            working={() => heatWorking(heat, stopsPerHour, 'oneStop', language)}
          />
          <Figure
            label={text.repeated}
            value={figure(coldC + heat.repeatedK)}
            unit="°C"
            note={heatNote(heat.repeatedK, text.repeatedNote(figure(stopsPerHour)))}
            working={() => heatWorking(heat, stopsPerHour, 'repeated', language)}
          />
        </>
      )}
      {descentK === null ? null : (
        <Figure
          label={text.descent}
          value={figure(coldC + descentK)}
          unit="°C"
          note={heatNote(descentK, text.fromCold)}
        />
      )}
      {gradePercent === null || gradePercent === 0 ? null : (
        <CreepFigure creepKmh={creepKmh} grade={`${figure(gradePercent)} %`} />
      )}
    </div>
  );
};

const CreepFigure = ({
  creepKmh,
  grade,
}: {
  readonly creepKmh: number;
  readonly grade: string;
}) => {
  const text = useText(stopTexts);
  const language = useSettings((state) => state.language);
  const note = text.creepNote(grade);
  if (creepKmh === 0) return <Figure label={text.creep} value="–" note={text.holds} />;
  if (!Number.isFinite(creepKmh))
    return <Figure label={text.creep} value="–" note={text.rollsFree} />;
  return (
    <Figure label={text.creep} value={formatFigure(creepKmh, language)} unit="km/h" note={note} />
  );
};
