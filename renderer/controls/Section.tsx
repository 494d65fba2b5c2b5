import { useId, type ReactNode } from 'react';
import { Icon, type IconName } from './icons.tsx';
import './section.css';

interface SectionProps {
  readonly title: string;
  /** One sentence on what stands here and what it is for. */
  readonly lead?: ReactNode;
  readonly actions?: ReactNode;
  readonly children: ReactNode;
  /** Without a sheet of its own: for wide charts and tables. */
  readonly bare?: boolean;
}

/** A titled part of a place. */
export const Section = ({ title, lead, actions, children, bare = false }: SectionProps) => {
  const id = useId();
  return (
    <section className={bare ? 'section section-bare' : 'section'} aria-labelledby={id}>
      <header className="section-head">
        <div>
          <h2 className="section-title" id={id}>
            {title}
          </h2>
          {lead === undefined ? null : <p className="section-lead">{lead}</p>}
        </div>
        {actions === undefined ? null : <div className="section-actions">{actions}</div>}
      </header>
      {children}
    </section>
  );
};

interface EmptyStateProps {
  readonly icon: IconName;
  readonly title: string;
  /** What to do about it. */
  readonly children: ReactNode;
  readonly action?: ReactNode;
}

/** What stands where there is nothing yet: what belongs here and how to get it. */
export const EmptyState = ({ icon, title, children, action }: EmptyStateProps) => (
  <div className="empty">
    <Icon name={icon} />
    <h3 className="empty-title">{title}</h3>
    <p className="soft">{children}</p>
    {action}
  </div>
);
