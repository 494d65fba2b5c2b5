import type { Words } from '../../plan/language.ts';
import type { Controller } from '../../plan/schema/controller.ts';
import type { FindingContext, OptionContext } from '../context.ts';
import type { CureStatement } from '../cure.ts';

/**
 * Another setting of the controller for one option. Where options share the machine's controller, this one gets settings
 * of its own, so that the others stay as they are.
 */
export function controllerCure(
  { controller, controllerPath, path }: OptionContext,
  { plan }: FindingContext,
  setting: Partial<Controller>,
  does: Words,
): CureStatement {
  const shared =
    controllerPath === 'machine.controller' &&
    plan.options.filter((option) => option.controller === null).length > 1;
  if (!shared) {
    return {
      does,
      changes: Object.entries(setting).map(([field, value]) => ({
        path: `${controllerPath}.${field}`,
        value,
      })),
    };
  }
  return {
    does: {
      en: `${does.en}, for this option only`,
      de: `${does.de}, nur für diese Variante`,
    },
    changes: [{ path: `${path}.controller`, value: { ...controller, ...setting } }],
  };
}
