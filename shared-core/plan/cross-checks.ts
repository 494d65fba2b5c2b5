import { checkWiring } from './check-wiring.ts';
import { fieldDocs } from './field-docs.ts';
import type { Language, Words } from './language.ts';
import type { PlanProblem, PlanProblemCode } from './problem.ts';
import type { Block } from './schema/block.ts';
import type { Charger } from './schema/charger.ts';
import type { Controller } from './schema/controller.ts';
import type { Pack } from './schema/option.ts';
import type { Plan } from './schema/plan.ts';

type Report = (code: PlanProblemCode, path: string, problem: Words, remedy: Words) => void;

/** Checks between fields, which a schema of single fields cannot make. Returns every problem, in order of the plan. */
export function crossChecks(plan: Plan, language: Language = 'en'): PlanProblem[] {
  const problems: PlanProblem[] = [];
  const report: Report = (code, path, problem, remedy) => {
    const { title } = fieldDocs(path);
    problems.push({ code, path, title, problem: problem[language], remedy: remedy[language] });
  };
  checkIds(plan, '', report);
  if (!plan.outings.some((outing) => outing.id === plan.headlineOuting)) {
    report(
      'unknown-reference',
      'headlineOuting',
      {
        en: `The headline outing ${plan.headlineOuting} is not in the plan.`,
        de: `Die Leitfahrt ${plan.headlineOuting} steht nicht im Plan.`,
      },
      {
        en: `Use one of: ${plan.outings.map((outing) => outing.id).join(', ')}.`,
        de: `Möglich: ${plan.outings.map((outing) => outing.id).join(', ')}.`,
      },
    );
  }
  checkController(plan.machine.controller, 'machine.controller', report);
  checkConverter(plan, report);
  checkWiring(plan, report);
  plan.options.forEach((option, index) => {
    const path = `options.${index}`;
    checkPack(option.pack, `${path}.pack`, report);
    if (option.charger !== null) checkCharger(option.charger, `${path}.charger`, report);
    if (option.controller !== null)
      checkController(option.controller, `${path}.controller`, report);
  });
  plan.ownParts.blocks.forEach((own, index) =>
    checkBlock(own.part, `ownParts.blocks.${index}.part`, report),
  );
  plan.ownParts.chargers.forEach((own, index) =>
    checkCharger(own.part, `ownParts.chargers.${index}.part`, report),
  );
  return problems;
}

/** Identifiers are unique in their list, in every list of the plan that has them. */
function checkIds(value: unknown, path: string, report: Report): void {
  if (typeof value !== 'object' || value === null) return;
  const seen = new Set<string>();
  for (const [key, entry] of Object.entries(value) as [string, unknown][]) {
    const inner = path === '' ? key : `${path}.${key}`;
    const id: unknown =
      Array.isArray(value) && typeof entry === 'object' && entry !== null && 'id' in entry
        ? entry.id
        : undefined;
    if (typeof id === 'string') {
      if (seen.has(id)) {
        report(
          'duplicate-id',
          `${inner}.id`,
          {
            en: `The identifier ${id} is used twice in this list.`,
            de: `Die Kennung ${id} steht zweimal in dieser Liste.`,
          },
          {
            en: 'Give the second entry another identifier.',
            de: 'Dem zweiten Eintrag eine andere Kennung geben.',
          },
        );
      }
      seen.add(id);
    }
    checkIds(entry, inner, report);
  }
}

function checkController(controller: Controller, path: string, report: Report): void {
  below(controller.cutoffVoltageV, controller.restartVoltageV, `${path}.restartVoltageV`, report);
  below(controller.minimumVoltageV, controller.maximumVoltageV, `${path}.maximumVoltageV`, report);
}

function checkConverter(plan: Plan, report: Report): void {
  const { converter } = plan.machine;
  if (converter === null) return;
  below(
    converter.minimumInputV,
    converter.maximumInputV,
    'machine.converter.maximumInputV',
    report,
  );
  if (converter.peakCurrentA !== null && converter.peakCurrentA < converter.ratedCurrentA) {
    tooLow('machine.converter.peakCurrentA', converter.ratedCurrentA, report);
  }
}

function checkCharger(charger: Charger, path: string, report: Report): void {
  below(charger.floatVoltageV, charger.endVoltageV, `${path}.endVoltageV`, report, true);
}

function checkPack(pack: Pack, path: string, report: Report): void {
  checkBlock(pack.block, `${path}.block`, report);
  pack.differences.forEach((difference, index) => {
    const inner = `${path}.differences.${index}`;
    checkPlace(pack, difference, inner, report);
    if (difference.replacement !== null)
      checkBlock(difference.replacement, `${inner}.replacement`, report);
  });
  pack.groupDifferences.forEach((difference, index) => {
    const inner = `${path}.groupDifferences.${index}`;
    checkPlace(pack, difference, inner, report);
    if (difference.group > pack.block.cellGroups) {
      noSuch(`${inner}.group`, difference.group, pack.block.cellGroups, report);
    }
  });
}

function checkPlace(
  pack: Pack,
  place: { string: number; position: number },
  path: string,
  report: Report,
): void {
  if (place.string > pack.parallelCount)
    noSuch(`${path}.string`, place.string, pack.parallelCount, report);
  if (place.position > pack.seriesCount)
    noSuch(`${path}.position`, place.position, pack.seriesCount, report);
}

function checkBlock(block: Block, path: string, report: Report): void {
  if (block.bms !== null) {
    below(block.bms.groupLowV, block.bms.groupHighV, `${path}.bms.groupHighV`, report);
    below(block.bms.groupLowV, block.bms.reconnectV, `${path}.bms.reconnectV`, report);
    if (
      block.bms.peakDischargeA !== null &&
      block.bms.peakDischargeA < block.bms.continuousDischargeA
    ) {
      tooLow(`${path}.bms.peakDischargeA`, block.bms.continuousDischargeA, report);
    }
  }
  if (block.rating.kind === 'points')
    checkRatingPoints(block.rating.points, `${path}.rating.points`, report);
  if (block.rating.kind === 'curves') {
    block.rating.curves.forEach((curve, index) => {
      const late = curve.points.findIndex(
        (point, at) => at > 0 && point.timeMin <= curve.points[at - 1]!.timeMin,
      );
      if (late > 0)
        tooLow(
          `${path}.rating.curves.${index}.points.${late}.timeMin`,
          curve.points[late - 1]!.timeMin,
          report,
        );
    });
  }
}

/** A slower discharge gives at least as much and at a smaller current; anything else is a slip of the pen. */
function checkRatingPoints(
  points: readonly { hours: number; capacityAh: number }[],
  path: string,
  report: Report,
): void {
  const order = points
    .map((point, index) => ({ ...point, index }))
    .toSorted((a, b) => a.hours - b.hours);
  for (let at = 1; at < order.length; at += 1) {
    const [quick, slow] = [order[at - 1]!, order[at]!];
    if (slow.hours === quick.hours) {
      report(
        'contradiction',
        `${path}.${slow.index}.hours`,
        {
          en: `Two rating points stand at ${slow.hours} h.`,
          de: `Zwei Nennpunkte stehen bei ${slow.hours} h.`,
        },
        { en: 'Delete one of them.', de: 'Einen davon löschen.' },
      );
    } else if (slow.capacityAh < quick.capacityAh) {
      report(
        'contradiction',
        `${path}.${slow.index}.capacityAh`,
        {
          en: `${slow.capacityAh} A·h over ${slow.hours} h is less than ${quick.capacityAh} A·h over ${quick.hours} h.`,
          de: `${slow.capacityAh} A·h über ${slow.hours} h sind weniger als ${quick.capacityAh} A·h über ${quick.hours} h.`,
        },
        {
          en: 'A slower discharge gives at least as much: check both figures.',
          de: 'Langsamer entladen gibt mindestens so viel: beide Werte prüfen.',
        },
      );
    }
  }
}

/** Reports `path` unless low < high (or low <= high); nothing to compare where one is not known. */
function below(
  low: number | null,
  high: number | null,
  path: string,
  report: Report,
  orEqual = false,
): void {
  if (low === null || high === null || low < high || (orEqual && low === high)) return;
  tooLow(path, low, report);
}

function tooLow(path: string, limit: number, report: Report): void {
  const { title, unit } = fieldDocs(path);
  const shown = `${limit}${unit === undefined ? '' : ` ${unit}`}`;
  report(
    'contradiction',
    path,
    { en: `${title} does not lie above ${shown}.`, de: `${title} liegt nicht über ${shown}.` },
    {
      en: `Enter more than ${shown}, or correct the other figure.`,
      de: `Mehr als ${shown} eintragen oder den anderen Wert berichtigen.`,
    },
  );
}

function noSuch(path: string, asked: number, count: number, report: Report): void {
  const { title } = fieldDocs(path);
  report(
    'unknown-reference',
    path,
    {
      en: `${title} ${asked} does not exist; the pack has ${count}.`,
      de: `${title} ${asked} gibt es nicht; das Pack hat ${count}.`,
    },
    {
      en: 'Delete the entry or correct the number.',
      de: 'Den Eintrag löschen oder die Nummer berichtigen.',
    },
  );
}
