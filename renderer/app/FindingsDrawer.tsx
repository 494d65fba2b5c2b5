import { useRef, useState } from 'react';
import { Button } from '../controls/Button.tsx';
import { Drawer } from '../controls/Dialog.tsx';
import { Tabs } from '../controls/Tabs.tsx';
import { severities } from '../state/findings-of.ts';
import { hideFindings, showFindings, useFindingsView } from '../state/findings-view.ts';
import { useStudy } from '../state/shown-study.ts';
import { appTexts } from '../text/app.ts';
import { findingTexts } from '../text/findings.ts';
import { useText } from '../text/use-text.ts';
import { fetched } from '../controls/Fetched.tsx';
import { FindingCard } from './FindingCard.tsx';
import type { Finding } from '#core/findings/finding.ts';
import { joinFindings, type JoinedFinding } from '#core/findings/join-findings.ts';
import './findings.css';

const RulesDialog = fetched(async () => (await import('./dialogs/RulesDialog.tsx')).RulesDialog);

/** Every finding in full: what, what follows, what to do, where the rule comes from, and the way to the field. */
export const FindingsDrawer = () => {
  const text = useText(appTexts);
  const own = useText(findingTexts);
  const [areRulesOpen, setRules] = useState(false);
  const { isOpen, optionId } = useFindingsView();
  const { study } = useStudy();
  const findings = study?.findings ?? [];
  const options = study?.options ?? [];
  const views = [
    { id: 'all', label: text.all, findings },
    ...options.map(({ id, name }) => ({
      id: `option:${id}`,
      label: name,
      findings: findings.filter((finding) => finding.optionId === id),
    })),
    {
      id: 'machine',
      label: text.ofMachine,
      findings: findings.filter((finding) => finding.optionId === null),
    },
  ];
  const selected = optionId === null ? 'all' : optionId === '' ? 'machine' : `option:${optionId}`;
  return (
    <Drawer title={text.findings} isOpen={isOpen} onClose={hideFindings}>
      <Tabs
        label={text.findings}
        selected={views.some(({ id }) => id === selected) ? selected : 'all'}
        onSelect={(id) =>
          showFindings(id === 'all' ? null : id === 'machine' ? '' : id.slice('option:'.length))
        }
        tabs={views.map((view) => ({
          id: view.id,
          label: view.label,
          body: <FindingList findings={view.findings} showOption={view.id === 'all'} />,
        }))}
      />
      <div className="findings-foot">
        <Button icon="slider" onPress={() => setRules(true)}>
          {own.rules}
        </Button>
        <p className="findings-care">{text.care}</p>
      </div>
      <RulesDialog isOpen={areRulesOpen} onClose={() => setRules(false)} />
    </Drawer>
  );
};

const FindingList = ({
  findings,
  showOption,
}: {
  readonly findings: readonly Finding[];
  readonly showOption: boolean;
}) => {
  const text = useText(appTexts);
  const list = useRef<HTMLDivElement>(null);
  const joined = joinFindings(findings);
  const standing = joined.filter(({ finding }) => finding.status === 'finding');
  const open = joined.filter(({ finding }) => finding.status === 'not-checked');
  const cards = (some: readonly JoinedFinding[]) =>
    some.map((entry) => (
      <FindingCard
        key={`${entry.finding.id}${entry.finding.what}`}
        joined={entry}
        showOption={showOption}
        onFollow={hideFindings}
        // The card with the button goes away; without this the focus would fall out of the list.
        onCured={() => list.current?.focus()}
      />
    ));
  return (
    <div ref={list} tabIndex={-1} className="findings-body">
      {standing.length === 0 ? <p className="soft">{text.noFindings}</p> : null}
      <ul className="finding-list">
        {severities.flatMap((severity) =>
          cards(standing.filter(({ finding }) => finding.severity === severity)),
        )}
      </ul>
      {open.length === 0 ? null : (
        <>
          <h3 className="findings-head">{`${text.notCheckedHead} (${open.length})`}</h3>
          <p className="soft">{text.notCheckedLead}</p>
          <ul className="finding-list">{cards(open)}</ul>
        </>
      )}
    </div>
  );
};
