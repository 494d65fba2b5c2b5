import type { RatingTexts } from '../rating.ts';

export const rating: RatingTexts = {
  row: 'Kapazität bei anderen Strömen',
  summary: {
    exponent: 'aus einem Exponenten',
    points: (count) => `aus ${count} Nennpunkten`,
    curves: (count) => (count === 1 ? 'aus 1 Entladekurve' : `aus ${count} Entladekurven`),
  },
  title: (name) => `Kapazität bei anderen Strömen: ${name}`,
  lead: 'Schneller entladen gibt ein Block weniger her. Wie viel weniger, sagt das Datenblatt: Die Tabelle ist besser als der Exponent, Kurven sind besser als beide.',
  kind: 'Bekannt aus',
  kinds: { exponent: 'Ein Exponent', points: 'Nenntabelle', curves: 'Entladekurven' },
  kindLeads: {
    exponent: 'Wenn das Datenblatt nur eine Kapazität nennt.',
    points:
      'Kapazität bei zwei bis zwölf Entladezeiten, wie sie die meisten Blei-Datenblätter aufführen.',
    curves: 'Spannung über der Zeit bei festem Strom, abgelesen oder gemessen.',
  },
  changed: 'Ratenverhalten',
  point: (at) => `Punkt ${at}`,
  addPoint: 'Punkt hinzufügen',
  removePoint: (at) => `Punkt ${at} entfernen`,
  curve: (at) => `Kurve ${at}`,
  addCurve: 'Kurve hinzufügen',
  removeCurve: (at) => `Kurve ${at} entfernen`,
  curvePoints: 'Minuten und Volt',
  curveHelp:
    'Ein Punkt je Zeile: Minuten, dann Volt, dazwischen Leerzeichen, Tabulator oder Strichpunkt. Kopierte Tabellenspalten passen.',
  curveCount: (count, minutes) => `${count} Punkte über ${minutes}`,
  curveWrong: (line) => `Zeile ${line} besteht nicht aus Minuten und Volt. So schreiben: 60 12,4`,
  curveFew: 'Eine Kurve braucht mindestens drei Punkte.',
  curveMany: 'Eine Kurve nimmt höchstens 400 Punkte. Einige weglassen.',
  done: 'Fertig',
};
