import { careRules } from './families/care.ts';
import { chargerCircuitRules } from './families/charger-circuit.ts';
import { chargingPlaceRules } from './families/charging-place.ts';
import { chargerMatchRules } from './families/charger-match.ts';
import { cutoffRules } from './families/cutoffs.ts';
import { brakeHeatRules } from './families/drive-brake-heat.ts';
import { driveBrakeRules } from './families/drive-brakes.ts';
import { driveMotorRules } from './families/drive-motor.ts';
import { driveRoadRules } from './families/drive-road.ts';
import { rollBackRules } from './families/drive-roll-back.ts';
import { stallRules } from './families/drive-stall.ts';
import { driveStopRules } from './families/drive-stop.ts';
import { packLimitRules } from './families/pack-limits.ts';
import { packParallelRules } from './families/pack-parallel.ts';
import { packSeriesRules } from './families/pack-series.ts';
import { runTimeRules } from './families/run-time.ts';
import { supplyLoadRules } from './families/supply-load.ts';
import { supplyVoltageRules } from './families/supply-voltage.ts';
import { fusePlaceRules } from './families/fuse-places.ts';
import { fuseRatings } from './families/fuse-ratings.ts';
import { jointAndSwitchRules } from './families/joints-and-switches.ts';
import { lastConnector } from './families/last-connector.ts';
import { supplyPaths } from './families/supply-paths.ts';
import { wireCurrentRules } from './families/wire-currents.ts';
import { joinRules } from './join-rules.ts';
import type { Rule } from './rule.ts';

/** Every rule there is. A new family is a file in `families/` with its list, named here. */
export const rules: readonly Rule[] = joinRules([
  ...supplyVoltageRules,
  ...supplyLoadRules,
  ...packSeriesRules,
  ...packParallelRules,
  ...packLimitRules,
  ...cutoffRules,
  ...chargerMatchRules,
  ...chargerCircuitRules,
  ...chargingPlaceRules,
  fuseRatings,
  ...fusePlaceRules,
  ...wireCurrentRules,
  ...jointAndSwitchRules,
  supplyPaths,
  lastConnector,
  ...driveMotorRules,
  ...driveRoadRules,
  ...stallRules,
  ...rollBackRules,
  ...driveBrakeRules,
  ...brakeHeatRules,
  ...driveStopRules,
  ...runTimeRules,
  ...careRules,
]);
