import { freshId } from '#core/plan/fresh-id.ts';
import { newOption } from '#core/plan/defaults.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { optionTexts } from '../text/options.ts';
import { textNow } from '../text/use-text.ts';
import { chooseOption, usePlace } from './place-store.ts';
import { edit, planStore, undo } from './plan-store.ts';
import { showToast } from './toast-store.ts';

/** Most options a plan holds. */
export const optionLimit = 12;

const options = (): readonly Option[] => planStore.getState().plan.options;
const takenIds = (): string[] => options().map(({ id }) => id);

/** The option the user works on; the first one where none was chosen. */
export function chosenOptionIndex(): number {
  const { optionId } = usePlace.getState();
  return Math.max(
    0,
    options().findIndex(({ id }) => id === optionId),
  );
}

export function addOption(option?: Option): void {
  if (options().length >= optionLimit) return;
  const text = textNow(optionTexts);
  const id = freshId(option === undefined ? 'option' : option.name, takenIds());
  const made = {
    ...(option ?? newOption(takenIds())),
    id,
    ...(option ? {} : { name: text.newName }),
  };
  edit(text.added, (plan) => {
    plan.options.push(made);
  });
  chooseOption(id);
}

export function duplicateOption(index = chosenOptionIndex()): void {
  const source = options()[index];
  if (source === undefined || options().length >= optionLimit) return;
  const text = textNow(optionTexts);
  const id = freshId(source.id, takenIds());
  const copy = { ...structuredClone(source), id, name: text.copyOf(source.name).slice(0, 120) };
  edit(text.duplicated, (plan) => {
    plan.options.splice(index + 1, 0, copy);
  });
  chooseOption(id);
}

/** Takes an option out at once; the toast brings it back. The last option stays. */
export function removeOption(index = chosenOptionIndex()): void {
  const gone = options()[index];
  if (gone === undefined || options().length <= 1) return;
  const text = textNow(optionTexts);
  edit(text.removed(gone.name), (plan) => {
    plan.options.splice(index, 1);
  });
  const { past } = planStore.getState();
  const step = past.at(-1);
  showToast(text.removed(gone.name), {
    label: text.bringBack,
    run: () => {
      if (planStore.getState().past.at(-1) === step) undo();
      else
        edit(text.broughtBack(gone.name), (plan) => {
          plan.options.splice(index, 0, { ...gone, id: freshId(gone.id, takenIds()) });
        });
    },
  });
}

export function moveOption(index: number, by: -1 | 1): void {
  const to = index + by;
  if (to < 0 || to >= options().length) return;
  edit(textNow(optionTexts).moved, (plan) => {
    const [moving] = plan.options.splice(index, 1);
    if (moving !== undefined) plan.options.splice(to, 0, moving);
  });
}
