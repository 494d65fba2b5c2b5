import { useState } from 'react';
import { formulas } from '#core/formulas/index.ts';
import { Dialog } from '../../controls/Dialog.tsx';
import { TextInput } from '../../controls/TextField.tsx';
import { closeDialog } from '../../state/document-store.ts';
import { menuTexts } from '../../text/menu.ts';
import { commandLabel } from '../../text/commands.ts';
import { controlTexts } from '../../text/controls.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useText } from '../../text/use-text.ts';

/** The catalogue: every formula with its equation, range and source. */
export const FormulaDialog = () => {
  const text = useText(menuTexts);
  const words = useText(controlTexts);
  const language = useSettings((state) => state.language);
  const [filter, setFilter] = useState('');
  const wanted = filter.toLowerCase();
  const found = formulas.filter(({ title, equation, id }) =>
    `${title} ${equation} ${id}`.toLowerCase().includes(wanted),
  );
  return (
    <Dialog
      title={commandLabel('help.working', language)}
      isOpen
      onClose={closeDialog}
      size="large"
    >
      <p className="soft">{text.formulasLead}</p>
      <TextInput label={text.formulasFilter} value={filter} onCommit={setFilter} autoFocus />
      <ul className="formula-list">
        {found.map((formula) => (
          <li key={formula.id} className="formula">
            <h3 className="formula-title">{formula.title}</h3>
            <p className="working-formula">{formula.equation}</p>
            <p className="working-note">
              <b>{words.validity}</b> {formula.validity}
            </p>
            <p className="working-note">
              <b>{words.source}</b> {`${formula.source.citation} (${formula.source.class})`}
            </p>
          </li>
        ))}
      </ul>
    </Dialog>
  );
};
