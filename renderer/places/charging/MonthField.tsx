import { Choice } from '../../controls/ChoiceField.tsx';
import { editField, readField } from '../../state/plan-path.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { localeOf } from '../../text/format.ts';

/** A month of the plan by its name. */
export const MonthField = ({ path }: { readonly path: string }) => {
  const value = usePlan((plan) => readField(plan, path));
  const words = useFieldWords(path);
  const language = useSettings((state) => state.language);
  const names = new Intl.DateTimeFormat(localeOf(language), { month: 'long', timeZone: 'UTC' });
  const entries = Array.from({ length: 12 }, (_, index) => ({
    value: String(index + 1),
    label: names.format(new Date(Date.UTC(2026, index, 15))),
  }));
  return (
    <Choice
      label={words.title}
      help={words.help}
      value={String(value)}
      entries={entries}
      field={path}
      onChoose={(month) => editField(words.title, path, Number(month))}
    />
  );
};
