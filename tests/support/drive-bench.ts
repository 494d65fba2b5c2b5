import type { LoadSource, LoadTerms } from '#core/run/load-source.ts';

/** A row of a bench run: time, bus voltage and current at the end of a step. */
export interface BenchRow {
  readonly timeS: number;
  readonly busV: number;
  readonly currentA: number;
}

/** Runs a source on an ideal supply behind a resistance: `V = E - R I(V)`, the upper root. */
export function runOnSupply(
  source: LoadSource,
  emfV: number,
  resistanceOhm: number,
  untilS: number,
): BenchRow[] {
  const rows: BenchRow[] = [];
  const terms: LoadTerms = { currentA: 0, powerW: 0, conductanceS: 0 };
  let timeS = 0;
  let busV = emfV;
  while (timeS < untilS - 1e-9) {
    const stepS = Math.min(source.longestStepS(timeS), untilS - timeS);
    for (let round = 0; round < 3; round += 1) {
      source.terms(timeS, busV, terms);
      busV = solve(terms, emfV, resistanceOhm);
    }
    const currentA = terms.currentA + terms.powerW / busV + terms.conductanceS * busV;
    source.advance(timeS, stepS, busV, currentA);
    timeS += stepS;
    rows.push({ timeS: timeS - stepS / 2, busV, currentA });
  }
  return rows;
}

function solve(
  { currentA, powerW, conductanceS }: LoadTerms,
  emfV: number,
  resistanceOhm: number,
): number {
  // (1 + R g) V^2 - (E - R I) V + R P = 0
  const a = 1 + resistanceOhm * conductanceS;
  const b = emfV - resistanceOhm * currentA;
  const root = b * b - 4 * a * resistanceOhm * powerW;
  if (root < 0) throw new Error('the supply cannot carry the load');
  return (b + Math.sqrt(root)) / (2 * a);
}
