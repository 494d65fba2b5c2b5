/** What stands around every part. */
export const frameWords = {
  date: { en: 'Date', de: 'Datum' },
  plan: { en: 'Plan', de: 'Plan' },
  program: { en: 'Made with', de: 'Erstellt mit' },
  invented: {
    en: 'Sample plan with invented data: these figures describe no real product. Do not build from this sheet.',
    de: 'Beispielplan mit erfundenen Daten: die Zahlen beschreiben kein wirkliches Erzeugnis. Nicht nach diesem Blatt bauen.',
  },
  foot: {
    en: '{machine} · {option} · {date} · plan {hash}',
    de: '{machine} · {option} · {date} · Plan {hash}',
  },
  page: { en: 'Page {page} of {pages}', de: 'Seite {page} von {pages}' },
} as const;
