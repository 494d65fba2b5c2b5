import { create } from 'zustand';

/** Whether the list of findings is open, and on which option it looks: `null` is all. */
export const useFindingsView = create<{
  readonly isOpen: boolean;
  readonly optionId: string | null;
}>(() => ({ isOpen: false, optionId: null }));

export const showFindings = (optionId: string | null = null): void =>
  useFindingsView.setState({ isOpen: true, optionId });
export const hideFindings = (): void => useFindingsView.setState({ isOpen: false });
