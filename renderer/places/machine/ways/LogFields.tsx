import { useState } from 'react';
import { logFigures } from '#core/drive/log-load.ts';
import type { LogLoad } from '#core/plan/schema/leg-load.ts';
import { Button } from '../../../controls/Button.tsx';
import { ChoiceField } from '../../../controls/ChoiceField.tsx';
import { TextField } from '../../../controls/TextField.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFigure, formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { waysTexts } from '../../../text/ways.ts';
import { entriesOf } from '../drive/entries.ts';
import { attachLog } from './take-load.ts';
import { LogDialog } from './LogDialog.tsx';

interface LogFieldsProps {
  readonly outing: number;
  readonly leg: number;
  readonly load: LogLoad;
}

/** What the attached log says, and how it is replayed. */
export const LogFields = ({ outing, leg, load }: LogFieldsProps) => {
  const text = useText(waysTexts);
  const language = useSettings((state) => state.language);
  const [picks, setPicks] = useState(false);
  const path = `outings.${outing}.legs.${leg}.load`;
  const figures = logFigures(load);
  const amps = (value: number): string => `${formatFigure(value, language)} A`;
  return (
    <div className="leg-details">
      <div className="field-grid">
        <TextField path={`${path}.name`} />
        {load.voltageV.length === 0 ? null : (
          <ChoiceField path={`${path}.replay`} entries={entriesOf(text.replay)} />
        )}
        <div className="field-button">
          <Button onPress={() => setPicks(true)}>{text.logOther}</Button>
        </div>
      </div>
      <p className="drive-fit">
        {text.logFigures(
          formatMinutes(figures.lastsS / 60, language),
          amps(figures.meanA),
          amps(figures.peakA),
          `${formatFigure(figures.chargeAh, language)} A·h`,
        )}
      </p>
      {load.voltageV.length === 0 ? <p className="soft">{text.noVolts}</p> : null}
      {picks ? (
        <LogDialog
          onTake={(log) => attachLog(text.logTaken, outing, leg, log)}
          onClose={() => setPicks(false)}
        />
      ) : null}
    </div>
  );
};
