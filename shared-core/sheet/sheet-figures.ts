import type { Finding, Severity } from '../findings/finding.ts';
import type { OutingFacts, SheetFacts } from './sheet-facts.ts';
import type { SheetFigures, SheetOutingFigures } from './sheet.ts';

/** The numbers of the sheet, taken from the studies as they stand. */
export function sheetFigures({ headline, outings, findings }: SheetFacts): SheetFigures {
  const { study } = headline;
  return {
    outings: outings.map(outingFigures),
    headlineOuting: headline.outing.id,
    nominalVoltageV: study.nominalVoltageV,
    fullRestVoltageV: study.fullRestVoltageV,
    highestChargeVoltageV: study.highestChargeVoltageV,
    capacityAh: study.capacityAh,
    energyWh: study.energyWh,
    massKg: study.massKg,
    price: study.price,
    hoursToFull: study.chargerMatch?.hoursToFull ?? null,
    chargerVerdict: study.chargerMatch?.verdict ?? null,
    accessoryCostMin: study.accessoryCostMin,
    findingCounts: countFindings(findings),
  };
}

function outingFigures({ outing, study, spread, caseCount }: OutingFacts): SheetOutingFigures {
  const { run } = study;
  return {
    id: outing.id,
    name: outing.name,
    goalMin: outing.goalMin,
    runTimeMin: run.runTimeMin,
    endedBy: run.endedBy,
    runTimeLowMin: spread?.low.value ?? null,
    runTimeLikelyMin: spread?.likely.value ?? null,
    runTimeHighMin: spread?.high.value ?? null,
    caseCount,
    minimumBusVoltageV: run.minimumBusVoltageV,
    deliveredWh: run.deliveredWh,
    remainingPercent: run.remainingPercent,
    distanceKm: run.drive?.distanceKm ?? null,
    averageSpeedKmh: run.drive?.rollingSpeedKmh ?? null,
    topSpeedKmh: run.drive?.topSpeedKmh ?? null,
  };
}

function countFindings(findings: readonly Finding[]): SheetFigures['findingCounts'] {
  const count = (severity: Severity) =>
    findings.filter((each) => each.status === 'finding' && each.severity === severity).length;
  return {
    stop: count('stop'),
    warn: count('warn'),
    note: count('note'),
    notChecked: findings.filter(({ status }) => status === 'not-checked').length,
  };
}
