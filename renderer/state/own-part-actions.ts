import { freshId } from '#core/plan/fresh-id.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { ownPartTexts, type OwnPartKind } from '../text/own-parts.ts';
import { textNow } from '../text/use-text.ts';
import { edit, planStore, undo } from './plan-store.ts';
import { showToast } from './toast-store.ts';

type Part<K extends OwnPartKind> = Plan['ownParts'][K][number]['part'];

/** Keeps a copy of a part among the own parts of the plan. */
export function keepOwnPart<K extends OwnPartKind>(kind: K, part: Part<K>): void {
  const text = textNow(ownPartTexts);
  edit(text.changed, (plan) => {
    const list = plan.ownParts[kind] as { id: string; part: Part<K> }[];
    const id = freshId(
      part.name,
      list.map((own) => own.id),
    );
    list.push({ id, part: structuredClone(part) });
  });
  showToast(text.kept(part.name));
}

/** Takes an own part out at once; the toast brings it back. */
export function removeOwnPart(kind: OwnPartKind, index: number): void {
  const text = textNow(ownPartTexts);
  const gone = planStore.getState().plan.ownParts[kind][index];
  if (gone === undefined) return;
  edit(text.changed, (plan) => {
    plan.ownParts[kind].splice(index, 1);
  });
  const step = planStore.getState().past.at(-1);
  showToast(text.removed(gone.part.name), {
    label: text.bringBack,
    run: () => {
      if (planStore.getState().past.at(-1) === step) undo();
    },
  });
}
