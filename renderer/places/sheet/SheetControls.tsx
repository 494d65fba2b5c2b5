import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { Section } from '../../controls/Section.tsx';
import { Toggle } from '../../controls/Toggle.tsx';
import {
  choosePaper,
  chooseParts,
  chooseSheetLanguage,
  togglePart,
  useSheetState,
} from '../../state/sheet-store.ts';
import { sheetTexts } from '../../text/sheet.ts';
import { useText } from '../../text/use-text.ts';
import type { Language } from '#core/plan/language.ts';
import { sheetPartIds, type Paper } from '#core/sheet/index.ts';

interface SheetControlsProps {
  readonly paper: Paper;
  readonly language: Language;
}

/** Which pages, on which paper, in which language. */
export const SheetControls = ({ paper, language }: SheetControlsProps) => {
  const text = useText(sheetTexts);
  const parts = useSheetState((state) => state.parts);
  return (
    <Section title={text.title}>
      <div className="sheet-choices">
        <div className="sheet-fields">
          <Choice
            label={text.paper}
            value={paper}
            entries={(['a4', 'letter'] as const).map((value) => ({
              value,
              label: text.papers[value],
            }))}
            onChoose={(value) => choosePaper(value === 'letter' ? 'letter' : 'a4')}
          />
          <Choice
            label={text.language}
            value={language}
            entries={(['en', 'de'] as const).map((value) => ({
              value,
              label: text.languages[value],
            }))}
            onChoose={(value) => chooseSheetLanguage(value === 'de' ? 'de' : 'en')}
          />
        </div>
        <fieldset className="sheet-parts">
          <legend>{text.parts}</legend>
          <div className="sheet-part-list">
            {sheetPartIds.map((id) => (
              <Toggle
                key={id}
                label={text.part[id]}
                isOn={parts.includes(id)}
                onChange={(isOn) => togglePart(id, isOn)}
              />
            ))}
          </div>
          <div className="sheet-part-all">
            <Button look="quiet" onPress={() => chooseParts(sheetPartIds)}>
              {text.all}
            </Button>
            <Button look="quiet" onPress={() => chooseParts([])}>
              {text.none}
            </Button>
          </div>
        </fieldset>
        <p className="soft sheet-care">{text.care}</p>
      </div>
    </Section>
  );
};
