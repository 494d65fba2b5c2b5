import { useEffect, useMemo, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import {
  deskStyle,
  footLine,
  frameWords,
  pageStyle,
  papers,
  paperStyle,
  sheetMarkup,
  type Paper,
  type Sheet,
  type SheetPartId,
} from '#core/sheet/index.ts';
import { sheetElements } from './SheetElements.tsx';
import { styleSheet, WalledSheet } from './WalledSheet.tsx';

interface SheetPreviewProps {
  readonly sheet: Sheet;
  readonly parts: readonly SheetPartId[];
  readonly paper: Paper;
  readonly label: string;
}

/** Millimetres to the pixels of a page, and room for the shadow of the paper. */
const pixelsPerMm = 96 / 25.4;
const shadowRoom = 24;

/**
 * The sheet as it is printed: once on the desk, to be looked at, and once beside the window for the printer alone,
 * because pages of two sizes follow each other only where nothing around them has a width.
 */
export const SheetPreview = ({ sheet, parts, paper, label }: SheetPreviewProps) => {
  const frame = useRef<HTMLDivElement>(null);
  const [scale, setScale] = useState(1);

  const pageRules = pageStyle(paper, footLine(sheet), frameWords.page[sheet.language]);
  useEffect(() => {
    const style = styleSheet(pageRules);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== style);
    };
  }, [pageRules]);

  useEffect(() => {
    const element = frame.current;
    if (element === null) return undefined;
    const widest = papers[paper].heightMm * pixelsPerMm + shadowRoom;
    const watcher = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setScale(Math.min(1, entry.contentRect.width / widest));
    });
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [paper]);

  const content = useMemo(() => sheetElements(sheetMarkup(sheet, parts)), [sheet, parts]);
  return (
    <div className="sheet-preview" ref={frame} role="region" aria-label={label} tabIndex={0}>
      <WalledSheet
        className="sheet-desk"
        css={`
          ${paperStyle}${deskStyle(paper)}
        `}
        scale={scale}
      >
        {content}
      </WalledSheet>
      {createPortal(
        <WalledSheet className="sheet-for-print" css={paperStyle}>
          {content}
        </WalledSheet>,
        document.body,
      )}
    </div>
  );
};
