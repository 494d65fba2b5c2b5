import { useEffect } from 'react';
import { closeToast, useToasts, type Toast } from '../state/toast-store.ts';
import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { Button, IconButton } from './Button.tsx';
import './toast.css';

/** Long enough to read and to reach the button by keyboard. */
const shownMs = 8000;

/** What was done, at the foot of the window, with a way back. */
export const Toasts = () => {
  const toasts = useToasts((state) => state.toasts);
  const announcement = useToasts((state) => state.announcement);
  return (
    <>
      <div className="toasts" role="status">
        {toasts.map((toast) => (
          <ToastView key={toast.id} toast={toast} />
        ))}
      </div>
      <div className="only-spoken" role="status">
        {announcement}
      </div>
    </>
  );
};

const ToastView = ({ toast }: { readonly toast: Toast }) => {
  const text = useText(controlTexts);
  const { id, action } = toast;
  useEffect(() => {
    const timer = setTimeout(() => closeToast(id), shownMs);
    return () => clearTimeout(timer);
  }, [id]);
  return (
    <div className="toast">
      <span>{toast.text}</span>
      {action === undefined ? null : (
        <Button
          look="quiet"
          onPress={() => {
            action.run();
            closeToast(id);
          }}
        >
          {action.label}
        </Button>
      )}
      <IconButton icon="close" label={text.close} onPress={() => closeToast(id)} />
    </div>
  );
};
