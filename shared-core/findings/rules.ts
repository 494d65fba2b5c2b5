import { careRules } from './families/care.ts';
import { chargerCircuitRules } from './families/charger-circuit.ts';
import { chargingPlaceRules } from './families/charging-place.ts';
import { chargerMatchRules } from './families/charger-match.ts';
import { cutoffRules } from './families/cutoffs.ts';
import { packLimitRules } from './families/pack-limits.ts';
import { packParallelRules } from './families/pack-parallel.ts';
import { packSeriesRules } from './families/pack-series.ts';
import { runTimeRules } from './families/run-time.ts';
import { supplyLoadRules } from './families/supply-load.ts';
import { supplyVoltageRules } from './families/supply-voltage.ts';
import type { Rule } from './rule.ts';

/** Every rule there is. A new family is a file in `families/` with its list, named here. */
export const rules: readonly Rule[] = [
  ...supplyVoltageRules,
  ...supplyLoadRules,
  ...packSeriesRules,
  ...packParallelRules,
  ...packLimitRules,
  ...cutoffRules,
  ...chargerMatchRules,
  ...chargerCircuitRules,
  ...chargingPlaceRules,
  ...runTimeRules,
  ...careRules,
];
