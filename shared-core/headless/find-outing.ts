import type { Outing } from '../plan/schema/outing.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';

/** The outing asked for, or the line that lists those there are. */
export function findOuting(
  plan: Plan,
  id: string | undefined,
): { readonly ok: true; readonly outing: Outing } | { readonly ok: false; readonly line: string } {
  const wanted = id ?? plan.headlineOuting;
  const outing = plan.outings.find((entry) => entry.id === wanted);
  if (outing !== undefined) return { ok: true, outing };
  return {
    ok: false,
    line: `--outing: there is no outing ${wanted}. Use one of: ${plan.outings.map((entry) => entry.id).join(', ')}.`,
  };
}

/** The options asked for (all of them when none is named), or the line that lists those there are. */
export function findOptions(
  plan: Plan,
  id: string | undefined,
):
  | { readonly ok: true; readonly options: readonly Option[] }
  | { readonly ok: false; readonly line: string } {
  if (id === undefined) return { ok: true, options: plan.options };
  const option = plan.options.find((entry) => entry.id === id);
  if (option !== undefined) return { ok: true, options: [option] };
  return {
    ok: false,
    line: `--option: there is no option ${id}. Use one of: ${plan.options.map((entry) => entry.id).join(', ')}.`,
  };
}
