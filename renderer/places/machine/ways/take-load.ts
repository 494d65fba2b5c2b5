import { withLoad } from '#core/drive/load-ways.ts';
import type { LegLoad, LogLoad } from '#core/plan/schema/leg-load.ts';
import type { Leg } from '#core/plan/schema/outing.ts';
import { edit } from '../../../state/plan-store.ts';
import { freshLoad, type LoadKind } from '../load-kinds.ts';

function changeLeg(name: string, outing: number, leg: number, change: (leg: Leg) => Leg): void {
  edit(name, (plan) => {
    const legs = plan.outings[outing]?.legs;
    const before = legs?.[leg];
    if (legs !== undefined && before !== undefined) legs[leg] = change(before);
  });
}

/** The leg known in another kind: the load it was given in that kind before, else a fresh one. */
export const chooseKind = (name: string, outing: number, leg: number, kind: LoadKind): void =>
  changeLeg(name, outing, leg, (before) => {
    const kept = before.otherLoads.find((other) => other.kind === kind);
    const next = kept ?? (freshLoad(kind, before.load) as LegLoad | null);
    return withLoad(before, next);
  });

/** A log as the load of the leg, which then lasts as long as the log. */
export const attachLog = (name: string, outing: number, leg: number, log: LogLoad): void =>
  changeLeg(name, outing, leg, (before) => ({
    ...withLoad(before, log),
    durationMin: Math.min(1440, Math.max(0.01, Math.round((100 * log.lastsS) / 60) / 100)),
  }));
