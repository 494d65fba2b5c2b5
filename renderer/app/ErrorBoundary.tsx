import { Component, type ReactNode } from 'react';
import { Button } from '../controls/Button.tsx';
import { EmptyState } from '../controls/Section.tsx';
import { useDocument } from '../state/document-store.ts';
import { appTexts } from '../text/app.ts';
import { textNow } from '../text/use-text.ts';

interface ErrorBoundaryProps {
  readonly children: ReactNode;
}

/** A fault in one place must not take the plan with it: the rest of the window stays usable. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError(): { readonly hasFailed: boolean } {
    return { hasFailed: true };
  }

  override componentDidCatch(error: Error): void {
    useDocument.getState().host?.noteProblem(`${error.name}: ${error.message}`);
  }

  override render(): ReactNode {
    if (!this.state.hasFailed) return this.props.children;
    const text = textNow(appTexts);
    return (
      <EmptyState
        icon="help"
        title={text.crash}
        action={
          <Button look="main" onPress={() => this.setState({ hasFailed: false })}>
            {text.crashRetry}
          </Button>
        }
      >
        {text.crashLead}
      </EmptyState>
    );
  }
}
