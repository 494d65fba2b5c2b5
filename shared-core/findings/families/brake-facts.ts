import { releaseOhm } from '../../drive/drive-regimes.ts';
import { descent, hardestGear } from '../../drive/resistor-heat.ts';
import { roadOf } from '../../drive/road.ts';
import { stopping } from '../../drive/stopping.ts';
import type { FindingContext } from '../context.ts';
import type { DriveFacts } from './drive-facts.ts';

/** Stop from top speed in the gear in which the electric brake is hardest. */
export function hardestStop({ train, drive, gears, supply }: DriveFacts) {
  const gear = hardestGear(train);
  const top = gears.find((view) => view.gearId === gear.id)?.topSpeedKmh ?? 0;
  const level = roadOf(train, drive.steepestSurface, 0, 0);
  return top === 0
    ? null
    : { topKmh: top, gear, stop: stopping(train, gear, level, top / 3.6, supply.emfV) };
}

/** Steepest grade of the machine's goal and of the outing's legs [%]. */
export function steepestGrade({ plan, outing }: FindingContext): number | null {
  const ofLegs = outing.legs.flatMap(({ load }) =>
    load?.kind === 'drive' ? [Math.abs(load.gradePercent)] : [],
  );
  const stated = plan.machine.drive?.steepestGradePercent ?? null;
  return stated === null && ofLegs.length === 0 ? null : Math.max(stated ?? 0, ...ofLegs);
}

/** Rolling down the steepest grade on the electric brake; null without a grade. */
export function downhill(facts: DriveFacts, context: FindingContext) {
  const grade = steepestGrade(context);
  if (grade === null || grade === 0) return null;
  const gear = hardestGear(facts.train);
  const road = roadOf(facts.train, facts.drive.steepestSurface, -grade, 0);
  return { grade, roll: descent(gear, road, releaseOhm(facts.train) ?? Infinity) };
}
