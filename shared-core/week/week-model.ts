import { standbyCurrentA, selfDischargePercent } from '../accessories/standby.ts';
import { chemistryTraits } from '../battery/chemistry.ts';
import { monthDays } from '../formulas/temperature/self-discharge.ts';
import { expandPack } from '../pack/expand-pack.ts';
import type { Charger } from '../plan/schema/charger.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Week } from '../plan/schema/week.ts';
import { nominalVoltageV } from '../pack/nominal-voltage.ts';
import { ambientC, monthOfWeek, temperatureBin } from './ambient.ts';
import { chargeTable, type ChargeTable } from './charge-table.ts';
import { outingTable, type OutingTable } from './outing-table.ts';

/** What a season needs to know of an option: tables by outing and temperature, drain, climate. */
export interface WeekModel {
  readonly plan: Plan;
  readonly option: Option;
  readonly week: Week;
  readonly lithium: boolean;
  /** Outdoor temperature of each week of the season [°C]. */
  readonly temperatureC: (week: number) => number;
  readonly outing: (outingId: string, temperatureC: number) => OutingTable;
  readonly charge: (temperatureC: number) => ChargeTable;
  /** Charge lost while parked [% per minute]. */
  readonly drain: (temperatureC: number, isolated: boolean) => number;
  /** Minutes wanted of a use. */
  readonly wantedMin: (outingId: string, durationMin: number | null) => number;
}

/** Prepares the tables of an option; each is made once, when first asked for, and serves every routine compared. */
export function weekModel(plan: Plan, option: Option, charger: Charger, week: Week): WeekModel {
  const outingTables = new Map<string, OutingTable>();
  const chargeTables = new Map<number, ChargeTable>();
  const { chemistry } = option.pack.block;
  const capacityAh = expandPack(option, 20).capacityAh;
  const standbyA = standbyCurrentA(plan.machine, nominalVoltageV(option));
  const outingOf = (id: string) =>
    plan.outings.find((outing) => outing.id === id) ?? plan.outings[0]!;
  const wantedMin = (id: string, durationMin: number | null) => durationMin ?? outingOf(id).goalMin;
  const longestUseMin = (id: string) =>
    week.usage
      .filter(({ outingId }) => outingId === id)
      .reduce((most, { durationMin }) => Math.max(most, wantedMin(id, durationMin)), 1);
  return {
    plan,
    option,
    week,
    lithium: chemistryTraits[chemistry].family === 'lithium',
    temperatureC: (number) => ambientC(week.climate, monthOfWeek(week.season.firstMonth, number)),
    outing: (outingId, temperatureC) => {
      const bin = temperatureBin(temperatureC);
      return remember(outingTables, `${outingId}/${bin}`, () =>
        outingTable(option, plan.machine, outingOf(outingId), bin, longestUseMin(outingId)),
      );
    },
    charge: (temperatureC) => {
      const bin = temperatureBin(temperatureC);
      return remember(chargeTables, bin, () => chargeTable(option, charger, bin));
    },
    drain: (temperatureC, isolated) => {
      const own = selfDischargePercent(chemistry, temperatureC) / (monthDays * 1440);
      return own + (isolated ? 0 : (100 * standbyA) / capacityAh / 60);
    },
    wantedMin,
  };
}

function remember<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  let value = known.get(key);
  if (value === undefined) {
    value = make();
    known.set(key, value);
  }
  return value;
}
