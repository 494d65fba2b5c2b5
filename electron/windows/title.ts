/** Window title: name of the plan, a mark while it is unsaved, name of the program. */
export const windowTitle = (name: string, unsaved: boolean): string =>
  `${unsaved ? '• ' : ''}${name === '' ? 'Untitled plan' : name} – Cellwain`;
