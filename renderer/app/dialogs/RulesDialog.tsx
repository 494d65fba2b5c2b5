import { ruleStates } from '#core/findings/rule-list.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { Dialog } from '../../controls/Dialog.tsx';
import { SeverityMark } from '../../controls/SeverityMark.tsx';
import { Tabs } from '../../controls/Tabs.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { appTexts } from '../../text/app.ts';
import { findingTexts } from '../../text/findings.ts';
import { useText } from '../../text/use-text.ts';
import { LimitFields } from './LimitFields.tsx';

interface RulesDialogProps {
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

/** The limits on which sources disagree, and every rule with what it says of the plan. */
export const RulesDialog = ({ isOpen, onClose }: RulesDialogProps) => {
  const text = useText(findingTexts);
  return (
    <Dialog title={text.rules} isOpen={isOpen} onClose={onClose} size="large">
      <Tabs
        label={text.rules}
        tabs={[
          { id: 'limits', label: text.limits, body: <LimitFields /> },
          { id: 'rules', label: text.ruleTab, body: <RuleTable /> },
        ]}
      />
    </Dialog>
  );
};

const RuleTable = () => {
  const text = useText(findingTexts);
  const app = useText(appTexts);
  const language = useSettings((state) => state.language);
  const { study } = useStudy();
  return (
    <>
      <p className="soft limits-lead">{text.rulesLead}</p>
      <DataTable
        caption={text.ruleTab}
        columns={[
          { id: 'rule', label: text.rule },
          { id: 'about', label: text.looksFor },
          { id: 'source', label: text.restsOn },
          { id: 'state', label: text.state },
        ]}
        rows={ruleStates(study?.findings ?? [], language).map((rule) => ({
          id: rule.id,
          cells: {
            rule: <span className="rule-id">{rule.id}</span>,
            about: <span className="rule-about">{rule.about}</span>,
            source: app.sourceClass[rule.sourceClass],
            state: (
              <span className="rule-state">
                {rule.worst === null ? null : <SeverityMark severity={rule.worst} />}
                {rule.worst === null ? text.states[rule.state] : app.severityWord[rule.worst]}
              </span>
            ),
          },
        }))}
      />
    </>
  );
};
