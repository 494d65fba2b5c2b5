import { IconButton } from '../../controls/Button.tsx';
import { Menu } from '../../controls/Menu.tsx';
import { saveCsv, type CsvTable } from '../../charts/csv.ts';
import { exportAs } from '../../charts/export-chart.ts';
import { usePlan } from '../../state/plan-store.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface SaveMenuProps {
  /** What is saved, for the name of the file and of the menu. */
  readonly name: string;
  readonly picture: () => string;
  readonly table: () => CsvTable;
}

/** Saves what a section shows: the drawing as SVG, its table twin as CSV. */
export const SaveMenu = ({ name, picture, table }: SaveMenuProps) => {
  const text = useText(wiringTexts).save;
  const planName = usePlan((plan) => plan.name);
  const file = `${planName} ${name}`;
  return (
    <Menu
      label={text.menu(name)}
      groups={[
        [
          { id: 'svg', label: text.picture, run: () => void exportAs('svg', file, picture()) },
          { id: 'csv', label: text.table, run: () => void saveCsv(file, table()) },
        ],
      ]}
    >
      <IconButton icon="more" label={text.menu(name)} />
    </Menu>
  );
};
