import type { CommandId } from '#core/commands/command-table.ts';
import type { MenuId } from '#core/commands/command.ts';
import type { Language } from '#core/plan/language.ts';
import { commandTable } from '#core/commands/command-table.ts';

const german: Readonly<Record<CommandId, string>> = {
  'plan.new': 'Neuer Plan',
  'window.new': 'Neues Fenster',
  'plan.open': 'Öffnen …',
  'plan.openSample': 'Beispielplan öffnen …',
  'plan.recover': 'Ungesicherte Arbeit suchen …',
  'plan.save': 'Sichern',
  'plan.saveAs': 'Sichern unter …',
  'plan.duplicate': 'Plan verdoppeln',
  'plan.revert': 'Zurück zum gesicherten Plan …',
  'export.pdf': 'Blatt als PDF ausgeben …',
  'export.plan': 'Plan als JSON ausgeben …',
  'export.series': 'Fahrt als CSV ausgeben …',
  'export.chart': 'Diagramm als Bild ausgeben …',
  'sheet.print': 'Blatt drucken …',
  'window.close': 'Fenster schließen',
  'app.quit': 'Beenden',
  'edit.undo': 'Rückgängig',
  'edit.redo': 'Wiederholen',
  'edit.cut': 'Ausschneiden',
  'edit.copy': 'Kopieren',
  'edit.paste': 'Einfügen',
  'edit.selectAll': 'Alles auswählen',
  'option.add': 'Variante hinzufügen',
  'option.duplicate': 'Variante verdoppeln',
  'option.remove': 'Variante entfernen',
  'view.palette': 'Befehl suchen …',
  'view.blocks': 'Einzelne Blöcke im Diagramm zeigen',
  'view.zoomIn': 'Vergrößern',
  'view.zoomOut': 'Verkleinern',
  'view.actualSize': 'Normale Größe',
  'view.fullScreen': 'Ganzer Bildschirm',
  'place.machine': 'Maschine',
  'place.packs': 'Akkus',
  'place.run': 'Fahrt',
  'place.charging': 'Laden',
  'place.wiring': 'Verkabelung',
  'place.bench': 'Messplatz',
  'place.sheet': 'Blatt',
  'help.shortcuts': 'Tastenkürzel',
  'help.working': 'Formeln und Quellen',
  'help.report': 'Bericht kopieren',
  'help.about': 'Über Cellwain',
};

const menuNames: Readonly<Record<Language, Readonly<Record<MenuId, string>>>> = {
  en: { file: 'File', edit: 'Edit', view: 'View', places: 'Places', help: 'Help' },
  de: { file: 'Datei', edit: 'Bearbeiten', view: 'Ansicht', places: 'Orte', help: 'Hilfe' },
};

const english = new Map<string, string>(commandTable.map(({ id, label }) => [id, label]));

/** Name of a command; English stands in the table. */
export const commandLabel = (id: CommandId, language: Language): string =>
  language === 'de' ? german[id] : (english.get(id) ?? id);

export const menuLabel = (menu: MenuId, language: Language): string => menuNames[language][menu];
