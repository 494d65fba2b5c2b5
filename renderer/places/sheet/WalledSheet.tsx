import { useEffect, useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { createPortal } from 'react-dom';

interface WalledSheetProps {
  readonly className: string;
  readonly css: string;
  readonly scale?: number;
  readonly children: ReactNode;
}

export function styleSheet(text: string): CSSStyleSheet {
  const style = new CSSStyleSheet();
  style.replaceSync(text);
  return style;
}

/** Gives what stands behind the wall its style. */
function dress(root: ShadowRoot | null | undefined, text: string): void {
  if (root != null) root.adoptedStyleSheets = [styleSheet(text)];
}

/** The sheet behind a wall of its own: the window's style does not reach it, and its style reaches nothing else. */
export const WalledSheet = ({ className, css, scale, children }: WalledSheetProps) => {
  const host = useRef<HTMLDivElement>(null);
  const [inside, setInside] = useState<ShadowRoot | null>(null);
  useLayoutEffect(() => {
    const element = host.current;
    if (element !== null) setInside(element.shadowRoot ?? element.attachShadow({ mode: 'open' }));
  }, []);
  useEffect(() => dress(host.current?.shadowRoot, css), [css]);
  return (
    <div
      className={className}
      ref={host}
      {...(scale === undefined ? {} : { style: { zoom: scale } })}
    >
      {inside === null ? null : createPortal(children, inside)}
    </div>
  );
};
