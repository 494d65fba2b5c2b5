import { capacityShareAtAge } from '../battery/ageing.ts';
import { shareAgainstRating } from '../battery/temperature.ts';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Outing } from '../plan/schema/outing.ts';
import type { RunResult } from '../run/result.ts';
import { formatFixed } from '../units/index.ts';

/** Why the run lasts longer or shorter than Peukert's figure says. */
export type PeukertReason =
  | { readonly kind: 'not-run-out'; readonly leftPercent: number }
  | { readonly kind: 'temperature'; readonly changePercent: number; readonly ambientC: number }
  | { readonly kind: 'age'; readonly lostPercent: number }
  | { readonly kind: 'charge-left'; readonly leftPercent: number }
  | { readonly kind: 'current-varies'; readonly peakA: number; readonly averageA: number }
  | { readonly kind: 'blocks-differ' }
  | { readonly kind: 'fitted' }
  | { readonly kind: 'no-difference' };

/** Differences and shares below these are not worth a word [%]. */
const worthPercent = 2;

/** What Peukert's law, which knows only the mean current of a new block at rating temperature, leaves out of this run. */
export function peukertReasons(
  option: Option,
  outing: Outing,
  run: RunResult,
  peukertMin: number | null,
): PeukertReason[] {
  if (peukertMin === null || peukertMin <= 0 || run.problem !== null) return [];
  const { pack } = option;
  const { block } = pack;
  if (run.endedBy === 'time-limit')
    return [{ kind: 'not-run-out', leftPercent: run.remainingPercent }];
  if (Math.abs(run.runTimeMin / peukertMin - 1) < worthPercent / 100)
    return [{ kind: 'no-difference' }];
  const reasons: PeukertReason[] = [];
  const hours = run.runTimeMin / 60;
  const changePercent =
    100 * (shareAgainstRating(block.chemistry, outing.ambientC, Math.max(0.1, hours)) - 1);
  if (Math.abs(changePercent) > worthPercent)
    reasons.push({ kind: 'temperature', changePercent, ambientC: outing.ambientC });
  const lostPercent =
    100 * (1 - capacityShareAtAge(block.chemistry, pack.ageYears, pack.cyclesDone));
  if (lostPercent > worthPercent) reasons.push({ kind: 'age', lostPercent });
  if (run.remainingPercent > worthPercent)
    reasons.push({ kind: 'charge-left', leftPercent: run.remainingPercent });
  if (run.peakCurrentA > 1.2 * run.averageCurrentA)
    reasons.push({
      kind: 'current-varies',
      peakA: run.peakCurrentA,
      averageA: run.averageCurrentA,
    });
  if (pack.differences.length + pack.groupDifferences.length > 0)
    reasons.push({ kind: 'blocks-differ' });
  if (block.fitted !== null) reasons.push({ kind: 'fitted' });
  return reasons;
}

/** The reason as a sentence. */
export function peukertReasonText(reason: PeukertReason, language: Language): string {
  const en = language === 'en';
  const figure = (value: number) => formatFixed(value, 0, language);
  switch (reason.kind) {
    case 'not-run-out':
      return en
        ? `The run was stopped by the longest time with ${figure(reason.leftPercent)} % left; Peukert reckons to empty.`
        : `Die Fahrt endete an der längsten Zeit mit ${figure(reason.leftPercent)} % Rest; Peukert rechnet bis leer.`;
    case 'temperature':
      return en
        ? `At ${figure(reason.ambientC)} °C the blocks hold ${figure(Math.abs(reason.changePercent))} % ${reason.changePercent < 0 ? 'less' : 'more'} than at the temperature of their rating.`
        : `Bei ${figure(reason.ambientC)} °C fassen die Blöcke ${figure(Math.abs(reason.changePercent))} % ${reason.changePercent < 0 ? 'weniger' : 'mehr'} als bei ihrer Nenntemperatur.`;
    case 'age':
      return en
        ? `Age and cycles have taken ${figure(reason.lostPercent)} % of the capacity.`
        : `Alter und Zyklen haben ${figure(reason.lostPercent)} % der Kapazität gekostet.`;
    case 'charge-left':
      return en
        ? `${figure(reason.leftPercent)} % of the charge was still inside when a limit stopped the run; Peukert knows no voltage.`
        : `${figure(reason.leftPercent)} % der Ladung waren noch im Akku, als eine Grenze die Fahrt beendete; Peukert kennt keine Spannung.`;
    case 'current-varies':
      return en
        ? `The current swings up to ${figure(reason.peakA)} A around its mean of ${figure(reason.averageA)} A: peaks sag into the cutoff, pauses give charge back.`
        : `Der Strom schwankt bis ${figure(reason.peakA)} A um sein Mittel von ${figure(reason.averageA)} A: Spitzen drücken die Spannung in die Abschaltung, Pausen geben Ladung zurück.`;
    case 'blocks-differ':
      return en
        ? 'The blocks differ: the weakest ends the run for its string.'
        : 'Die Blöcke sind ungleich: Der schwächste beendet die Fahrt für seinen Strang.';
    case 'fitted':
      return en
        ? 'The run uses the behaviour measured on the bench, Peukert the label.'
        : 'Die Fahrt rechnet mit dem auf dem Prüfstand gemessenen Verhalten, Peukert mit dem Etikett.';
    case 'no-difference':
      return en
        ? 'Both agree within 2 %: the load is steady and the conditions are those of the label.'
        : 'Beide stimmen auf 2 % überein: Die Last ist stetig, die Bedingungen sind die des Etiketts.';
  }
}
