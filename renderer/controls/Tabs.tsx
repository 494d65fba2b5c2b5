import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs as Base } from 'react-aria-components';
import './section.css';

interface TabsProps {
  readonly label: string;
  readonly tabs: readonly {
    readonly id: string;
    readonly label: string;
    readonly body: ReactNode;
  }[];
  readonly selected?: string;
  readonly onSelect?: (id: string) => void;
}

/** Views of one thing, one at a time. */
export const Tabs = ({ label, tabs, selected, onSelect }: TabsProps) => (
  <Base
    className="tabs"
    {...(selected === undefined ? {} : { selectedKey: selected })}
    {...(onSelect === undefined ? {} : { onSelectionChange: (key) => onSelect(String(key)) })}
  >
    <TabList className="tab-list" aria-label={label}>
      {tabs.map((tab) => (
        <Tab key={tab.id} id={tab.id} className="tab">
          {tab.label}
        </Tab>
      ))}
    </TabList>
    {tabs.map((tab) => (
      <TabPanel key={tab.id} id={tab.id} className="tab-panel">
        {tab.body}
      </TabPanel>
    ))}
  </Base>
);
