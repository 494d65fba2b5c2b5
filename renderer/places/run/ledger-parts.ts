import type { EnergyLedger } from '#core/run/result.ts';

/** Where energy can go, from use to loss, in the order in which it is drawn. */
export const ledgerParts = [
  'motorWh',
  'accessoriesWh',
  'converterLossWh',
  'controllerIdleWh',
  'harnessLossWh',
  'linkLossWh',
  'resistanceLossWh',
  'polarisationLossWh',
  'rateLossWh',
] as const satisfies readonly (keyof EnergyLedger)[];

export type LedgerPart = (typeof ledgerParts)[number];

/** What does no work: heat in cables, converter and blocks. */
export const isLoss = (part: LedgerPart): boolean => part !== 'motorWh' && part !== 'accessoriesWh';

export const lostWh = (ledger: EnergyLedger): number =>
  ledgerParts.filter(isLoss).reduce((sum, part) => sum + ledger[part], 0);
