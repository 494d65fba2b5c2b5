import { Button as Base } from 'react-aria-components';
import { IconButton } from '../controls/Button.tsx';
import { goToField } from '../state/place-store.ts';
import { setSetting, useSettings } from '../state/settings-store.ts';
import { doorTexts } from '../text/doors.ts';
import { useText } from '../text/use-text.ts';
import './doors.css';

/** The three questions people come with, each a door to the place where the answer stands. Shown until put away. */
export const Doors = () => {
  const text = useText(doorTexts);
  const isClosed = useSettings((state) => state.doorsClosed);
  if (isClosed) return null;
  const open: Readonly<Record<keyof typeof text.doors, () => void>> = {
    pack: () => goToField('packs', 'options.0.pack.seriesCount'),
    accessories: () => goToField('machine', 'machine.accessories'),
    charge: () => goToField('charging', 'week'),
  };
  return (
    <nav className="doors" aria-label={text.title}>
      {(Object.keys(open) as (keyof typeof open)[]).map((key) => (
        <Base key={key} className="door" onPress={open[key]}>
          <span className="door-question">{text.doors[key].question}</span>
          <span className="door-way">{text.doors[key].way}</span>
        </Base>
      ))}
      <IconButton icon="close" label={text.close} onPress={() => setSetting('doorsClosed', true)} />
    </nav>
  );
};
