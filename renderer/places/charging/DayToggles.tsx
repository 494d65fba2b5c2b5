import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { weekdays, type Weekday } from '#core/plan/schema/week.ts';
import { editField } from '../../state/plan-path.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';

interface DayTogglesProps {
  readonly path: string;
  readonly label: string;
  readonly days: readonly Weekday[];
  /** At least one day must stay. */
  readonly needsOne?: boolean;
}

/** Days of the week, each on or off. */
export const DayToggles = ({ path, label, days, needsOne = true }: DayTogglesProps) => {
  const text = useText(chargingTexts);
  return (
    <ToggleButtonGroup
      className="day-toggles"
      selectionMode="multiple"
      disallowEmptySelection={needsOne}
      aria-label={label}
      selectedKeys={days}
      onSelectionChange={(keys) =>
        editField(
          label,
          path,
          weekdays.filter((day) => keys.has(day)),
        )
      }
    >
      {weekdays.map((day) => (
        <ToggleButton key={day} id={day} className="day-toggle" aria-label={text.daysLong[day]}>
          {text.days[day]}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
};
