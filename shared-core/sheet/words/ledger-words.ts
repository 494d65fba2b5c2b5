/** Where the energy of a run goes, short enough for the side of a chart. */
export const ledgerWords = {
  motorWh: { en: 'Motor circuit', de: 'Motorkreis' },
  controllerIdleWh: { en: 'Controller idle', de: 'Steuerung, Leerlauf' },
  accessoriesWh: { en: 'Accessories', de: 'Verbraucher' },
  converterLossWh: { en: 'Converter loss', de: 'Verlust im Wandler' },
  harnessLossWh: { en: 'Cables', de: 'Leitungen' },
  linkLossWh: { en: 'Links and fuses', de: 'Verbinder, Sicherungen' },
  resistanceLossWh: { en: 'Block resistance', de: 'Innenwiderstand' },
  polarisationLossWh: { en: 'Polarisation', de: 'Polarisation' },
  rateLossWh: { en: 'Rate (charge too slow)', de: 'Rate (Ladung zu träge)' },
} as const;
