import '../state/page-policy.ts';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { I18nProvider } from 'react-aria-components';
import '../styles/tokens.css';
import '../styles/base.css';
import '../styles/print.css';
import { findHost } from '../state/current-host.ts';
import { useSettings } from '../state/settings-store.ts';
import { learn } from '../text/spoken.ts';
import { localeOf } from '../text/format.ts';
import { App } from './App.tsx';
import { connectHost } from './connect-host.ts';
import { followTheme } from './theme.ts';

const Root = () => {
  const language = useSettings((state) => state.language);
  return (
    <I18nProvider locale={localeOf(language)}>
      <App />
    </I18nProvider>
  );
};

/** Nothing is shown before it can be shown in the language chosen; without its words, in English. */
async function start(): Promise<void> {
  await learn(useSettings.getState().language).catch(() => undefined);
  connectHost(findHost(String(import.meta.env['VITE_VERSION'] ?? '')));
  const root = document.getElementById('root');
  if (root === null) throw new Error('index.html has no root element');
  createRoot(root).render(
    <StrictMode>
      <Root />
    </StrictMode>,
  );
}

followTheme();
void start();
