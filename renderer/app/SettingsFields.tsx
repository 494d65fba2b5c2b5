import { Choice } from '../controls/ChoiceField.tsx';
import { failureText } from '../state/failure-text.ts';
import {
  chooseLanguage,
  setSetting,
  useSettings,
  type ThemeChoice,
} from '../state/settings-store.ts';
import { showToast } from '../state/toast-store.ts';
import { menuTexts } from '../text/menu.ts';
import { useText } from '../text/use-text.ts';
import type { Language } from '#core/plan/language.ts';
import type { UnitSystem } from '#core/units/display.ts';

/** Appearance, language and units: choices of the person, not of the plan. */
export const SettingsFields = () => {
  const text = useText(menuTexts);
  const { theme, language, units } = useSettings();
  return (
    <div className="settings-fields">
      <Choice
        label={text.theme}
        value={theme}
        entries={(['system', 'light', 'dark'] as const).map((value) => ({
          value,
          label: text.themes[value],
        }))}
        onChoose={(value) => setSetting('theme', value as ThemeChoice)}
      />
      <Choice
        label={text.language}
        value={language}
        entries={[
          { value: 'en', label: 'English' },
          { value: 'de', label: 'Deutsch' },
        ]}
        onChoose={(value) => {
          chooseLanguage(value as Language).catch((error: unknown) =>
            showToast(failureText(error)),
          );
        }}
      />
      <Choice
        label={text.units}
        value={units}
        entries={(['metric', 'us'] as const).map((value) => ({
          value,
          label: text.unitNames[value],
        }))}
        onChoose={(value) => setSetting('units', value as UnitSystem)}
      />
    </div>
  );
};
