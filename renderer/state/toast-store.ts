import { create } from 'zustand';

export interface Toast {
  readonly id: number;
  readonly text: string;
  readonly action?: { readonly label: string; readonly run: () => void };
}

interface ToastState {
  readonly toasts: readonly Toast[];
  /** Spoken by a screen reader, not shown. */
  readonly announcement: string;
}

export const useToasts = create<ToastState>(() => ({ toasts: [], announcement: '' }));

let lastId = 0;

/** Says what was done, with a way back instead of a question before. */
export function showToast(text: string, action?: Toast['action']): void {
  lastId += 1;
  const toast: Toast = { id: lastId, text, ...(action === undefined ? {} : { action }) };
  useToasts.setState((state) => ({ toasts: [...state.toasts.slice(-2), toast] }));
}

export const closeToast = (id: number): void =>
  useToasts.setState((state) => ({ toasts: state.toasts.filter((toast) => toast.id !== id) }));

export const announce = (announcement: string): void => useToasts.setState({ announcement });
