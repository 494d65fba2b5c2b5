export const handoverWords = {
  title: { en: 'Handover note', de: 'Übergabe' },
  lead: {
    en: 'For the person who looks after the machine and has not built it.',
    de: 'Für die Person, die auf die Maschine achtet und sie nicht gebaut hat.',
  },
  lasts: { en: 'How long it runs', de: 'Wie lange sie läuft' },
  countOn: {
    en: 'On “{outing}” count on {low}; usually it is nearer {likely}. Turn back at half of that time.',
    de: 'Bei „{outing}“ mit {low} rechnen; meist sind es eher {likely}. Nach der halben Zeit umkehren.',
  },
  countPlain: {
    en: 'On “{outing}” it is planned to run {likely}. Turn back at half of that time.',
    de: 'Bei „{outing}“ läuft sie nach Plan {likely}. Nach der halben Zeit umkehren.',
  },
  cold: {
    en: 'Cold, soft ground, hills and a heavier load take minutes away.',
    de: 'Kälte, weicher Boden, Steigungen und mehr Last kosten Minuten.',
  },
  weak: {
    en: 'When it becomes slow, drive home slowly and charge. Resting and trying again does harm.',
    de: 'Wird sie langsam, langsam heimfahren und laden. Ausruhen und wieder probieren schadet.',
  },
  charging: { en: 'Charging', de: 'Laden' },
  only: {
    en: 'Only with this charger: {charger}. No other one, even if its plug fits.',
    de: 'Nur mit diesem Ladegerät: {charger}. Kein anderes, auch wenn der Stecker passt.',
  },
  misfit: {
    en: 'The charger of the plan does not fit this pack: do not charge before the builder has changed it.',
    de: 'Das Ladegerät des Plans passt nicht zu diesem Akku: nicht laden, bevor es ersetzt ist.',
  },
  noCharger: {
    en: 'No charger has been chosen yet: do not charge.',
    de: 'Noch kein Ladegerät gewählt: nicht laden.',
  },
  hours: {
    en: 'After an outing it needs about {hours}.',
    de: 'Nach einer Fahrt braucht sie etwa {hours}.',
  },
  done: {
    en: 'Unplug at the machine before driving.',
    de: 'Vor dem Fahren an der Maschine abstecken.',
  },
  rider: { en: 'The rider', de: 'Die fahrende Person' },
  speed: {
    en: 'It reaches {speed}. Helmet, closed shoes, nobody beside the wheels, an adult within reach of the switch.',
    de: 'Sie erreicht {speed}. Helm, feste Schuhe, niemand neben den Rädern, ein Erwachsener in Reichweite des Schalters.',
  },
  noSpeed: {
    en: 'Helmet, closed shoes, nobody beside the wheels, an adult within reach of the switch.',
    de: 'Helm, feste Schuhe, niemand neben den Rädern, ein Erwachsener in Reichweite des Schalters.',
  },
  hill: {
    en: 'Not down slopes steeper than {grade}; not on roads.',
    de: 'Keine Gefälle steiler als {grade}; nicht auf Straßen.',
  },
  noHill: {
    en: 'Not down steep slopes; not on roads.',
    de: 'Keine steilen Gefälle; nicht auf Straßen.',
  },
  leave: {
    en: 'When you leave it: switch off, isolator open, key away.',
    de: 'Beim Abstellen: ausschalten, Trennschalter auf, Schlüssel weg.',
  },
  trouble: { en: 'If something is wrong', de: 'Wenn etwas nicht stimmt' },
  runaway: {
    en: 'It drives by itself or does not stop: isolator open at once, then the brake.',
    de: 'Sie fährt von selbst oder hält nicht an: sofort Trennschalter auf, dann Bremse.',
  },
  smoke: {
    en: 'Smoke, hissing, smell or a hot pack: everybody away, charger off at the wall if it is safe, call the fire brigade, say what kind of battery it is ({chemistry}).',
    de: 'Rauch, Zischen, Geruch oder heißer Akku: alle weg, Ladegerät an der Steckdose aus, wenn gefahrlos, Feuerwehr rufen und die Akkuart nennen ({chemistry}).',
  },
  wet: {
    en: 'It stood in water or tipped over: do not switch it on, ask the builder.',
    de: 'Sie stand im Wasser oder ist gekippt: nicht einschalten, den Erbauer fragen.',
  },
  fuse: {
    en: 'A fuse has blown: never a larger one. Ask why first.',
    de: 'Eine Sicherung hat ausgelöst: nie eine größere. Erst die Ursache suchen.',
  },
  open: { en: 'Still open at handover', de: 'Bei der Übergabe noch offen' },
  openText: {
    en: '{stop} stops and {warn} warnings stand on the build sheet. Do not hand the machine over while a stop stands.',
    de: '{stop} × Halt und {warn} × Warnung stehen auf dem Baublatt. Die Maschine nicht übergeben, solange ein Halt steht.',
  },
  builder: { en: 'Builder, telephone', de: 'Erbauer, Telefon' },
  help: { en: 'Emergency number here', de: 'Notruf hier' },
  received: { en: 'Handed over to, date', de: 'Übergeben an, Datum' },
} as const;
