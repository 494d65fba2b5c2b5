/** Paper the sheet is printed on. */
export const papers = {
  a4: { name: 'A4', widthMm: 210, heightMm: 297 },
  letter: { name: 'letter', widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

export const marginMm = { top: 13, side: 14, bottom: 17 } as const;

/** Text for `content` of a page margin: everything but letters and digits written as its number, so that nothing ends it. */
export function contentText(text: string): string {
  const characters = Array.from(text, (character) =>
    /[\p{L}\p{N} .,:·–-]/u.test(character)
      ? character
      : `\\${character.codePointAt(0)!.toString(16)} `,
  );
  return `"${characters.join('')}"`;
}

/**
 * Page rules: size, margins, and foot with page number. Parts that need width lie on their side.
 *
 * @param foot what stands at the left of the foot
 * @param page words around the number, with {page} and {pages}
 */
export function pageStyle(paper: Paper, foot: string, page: string): string {
  const { name } = papers[paper];
  const number = page
    .split(/(\{pages?\})/)
    .map((piece) =>
      piece === '{page}'
        ? 'counter(page)'
        : piece === '{pages}'
          ? 'counter(pages)'
          : contentText(piece),
    )
    .join(' ');
  const { top, side, bottom } = marginMm;
  return `@page{size:${name} portrait;margin:${top}mm ${side}mm ${bottom}mm;
@bottom-left{content:${contentText(foot)};font:7.5pt ${faces};color:#4a545a;width:78%;white-space:nowrap;overflow:hidden;text-align:left;vertical-align:top;padding-top:3mm}
@bottom-right{content:${number};font:7.5pt ${faces};color:#4a545a;width:22%;text-align:right;vertical-align:top;padding-top:3mm}}
@page wide{size:${name} landscape}
`;
}

const faces = `'Helvetica Neue',Arial,'Liberation Sans','Noto Sans','DejaVu Sans',sans-serif`;

/**
 * Style of what stands on the paper. Everything is told by form as well as by colour, so that a copy in black and white
 * says the same. Rows, charts, cards and findings are not torn by a page break.
 */
export const paperStyle = `
.sheet,.sheet *{box-sizing:border-box;margin:0;padding:0}
.sheet{font:9.5pt/1.4 ${faces};color:#14191c;-webkit-print-color-adjust:exact;print-color-adjust:exact;font-variant-numeric:tabular-nums;hyphens:manual}
.sheet dd,.sheet li,.sheet td,.sheet p{overflow-wrap:anywhere}
.paper{background:#fff}
.head{display:flex;gap:8mm;justify-content:space-between;align-items:flex-start;border-bottom:1.6pt solid #14191c;padding-bottom:3mm;margin-bottom:4.5mm}
.head-title{flex:1;min-width:0}
.head h1{font-size:20pt;line-height:1.1;font-weight:600;letter-spacing:-.01em}
.head-machine{margin-top:1.6mm;font-size:10.5pt;display:flex;flex-wrap:wrap;gap:0 3mm}
.head-lead{margin-top:1mm;color:#4a545a}
.title-block{flex:none;display:grid;border:.6pt solid #14191c;min-width:46mm}
.title-block>div{display:flex;justify-content:space-between;gap:4mm;padding:.8mm 1.8mm;border-top:.6pt solid #c3c9cc}
.title-block>div:first-child{border-top:0}
.title-block dt{color:#4a545a;font-size:7.5pt;line-height:1.6}
.title-block dd{font-size:8.5pt}
.invented{border:.6pt dashed #14191c;padding:1mm 2mm;margin-bottom:4mm;font-size:8.5pt}
.heading{font-size:12pt;line-height:1.25;font-weight:600;margin:5.5mm 0 1.8mm;break-after:avoid}
.text{max-width:165mm;margin-bottom:2mm}
.text.soft{color:#4a545a}
.text.strong{font-size:11.5pt;font-weight:600}
.list{padding-left:5mm;max-width:172mm;margin-bottom:2mm}
.list li{margin-bottom:.8mm;break-inside:avoid}
.checks{list-style:none;columns:1;margin-bottom:3mm}
.checks li{display:flex;gap:3mm;padding:1.2mm 0;border-bottom:.5pt solid #c3c9cc;break-inside:avoid}
.box{flex:none;width:3.6mm;height:3.6mm;border:.9pt solid #14191c;margin-top:.4mm}
.hint{color:#4a545a}
.columns{display:grid;grid-template-columns:1fr 1fr;gap:4.5mm 9mm;margin-bottom:3mm}
.facts{break-inside:avoid;margin-bottom:2mm}
.columns .facts{margin-bottom:0}
.facts-title{font-size:9.5pt;font-weight:600;border-bottom:.9pt solid #14191c;padding-bottom:.8mm}
.lines>div{display:flex;justify-content:space-between;gap:4mm;padding:.75mm 0;border-bottom:.5pt solid #c3c9cc;break-inside:avoid}
.lines dt{color:#4a545a;flex:none;max-width:52%}
.lines dd{text-align:right}
.figures{display:grid;grid-auto-flow:column;grid-auto-columns:1fr;border:.9pt solid #14191c;margin-bottom:4mm;break-inside:avoid}
.figure{padding:2mm 2.6mm;border-left:.5pt solid #c3c9cc}
.figure:first-child{border-left:0}
.figure dt{color:#4a545a;font-size:8pt}
.figure-value{display:block;font-size:16pt;line-height:1.2;font-weight:600;white-space:nowrap}
.figure-detail{display:block;color:#4a545a;font-size:8pt;line-height:1.3}
.table{width:100%;border-collapse:collapse;font-size:8.8pt;line-height:1.3;margin:0 0 4mm}
.table caption{text-align:left;font-size:9.5pt;font-weight:600;padding-bottom:1mm;break-after:avoid}
.table thead{display:table-header-group;break-after:avoid;break-inside:avoid}
.table tbody tr:first-child{break-before:avoid}
.table tfoot{display:table-row-group}
.table tr{break-inside:avoid}
.table th,.table td{text-align:left;vertical-align:top;font-weight:400;padding:1.1mm 2mm 1.1mm 0;border-bottom:.5pt solid #c3c9cc}
.table th:last-child,.table td:last-child{padding-right:0}
.table thead th,.table thead td{font-size:8pt;font-weight:600;vertical-align:bottom;border-top:.9pt solid #14191c;border-bottom:.9pt solid #14191c}
.table .unit{font-weight:400;color:#4a545a}
.table tbody th{font-weight:600}
.table tfoot th,.table tfoot td{border-top:.9pt solid #14191c;border-bottom:0;font-weight:600}
.table .number{text-align:right}
.table tbody .number,.table tfoot .number,.table .tight{white-space:nowrap}
.table td.by-hand,.table th.by-hand{border-left:.5pt solid #c3c9cc;padding-left:1.5mm}
.table.roomy td,.table.roomy tbody th{padding-top:2.6mm;padding-bottom:2.6mm}
.drawings{display:grid;grid-template-columns:1fr 1fr;gap:5mm 7mm;margin-bottom:4mm}
.drawings.single{grid-template-columns:1fr}
.drawings figure{break-inside:avoid;min-width:0}
.single .drawing{max-height:104mm}
.drawing{display:block;max-width:100%;height:auto;font-family:${faces}}
.care{border:1.4pt solid #14191c;padding:2mm 3mm 1.4mm;margin-bottom:4mm;break-inside:avoid}
.care-title{font-size:10pt;font-weight:600;margin-bottom:1mm}
.care .list{margin-bottom:0;max-width:none}
.care-line{border-left:2.2pt solid #14191c;padding-left:2.4mm;margin-bottom:4mm;font-weight:600;break-inside:avoid}
.findings{margin-bottom:3mm}
.finding{border-left:1.2pt solid #6f7872;padding:.2mm 0 .2mm 3mm;margin-bottom:2.6mm;break-inside:avoid}
.finding.stop{border-left:3.4pt solid #14191c}
.finding.warn{border-left:2.2pt solid #14191c}
.finding-head{line-height:1.35}
.severity{display:inline-block;border:.7pt solid #14191c;padding:0 1.4mm;font-size:7.5pt;font-weight:600;margin-right:1.6mm}
.stop .severity{background:#14191c;color:#fff}
.finding-id{color:#4a545a;margin-right:1.6mm}
.finding-source{color:#4a545a;font-size:7.8pt;line-height:1.35}
.label{border:1.6pt solid #14191c;border-radius:2.5mm;width:128mm;padding:5mm 6mm 4mm;margin:0 0 7mm;outline:.5pt dashed #9aa2a6;outline-offset:2.5mm;break-inside:avoid}
.label-title{font-size:10pt;font-weight:600}
.label-big{font-size:21pt;line-height:1.15;font-weight:700;margin:.6mm 0 2mm}
.label-warnings{list-style:none;margin-top:2.4mm;font-weight:600;font-size:9pt}
.label-warnings li{margin-bottom:.6mm;padding-left:4mm;text-indent:-4mm}
.label-warnings li::before{content:"!";display:inline-block;width:4mm;text-indent:0;font-weight:700}
.blanks{margin:2mm 0 4mm}
.blanks>div{display:flex;gap:3mm;align-items:flex-end;min-height:8.5mm;break-inside:avoid}
.blanks dt{flex:none;width:58mm;color:#4a545a}
.blanks dd{flex:1;border-bottom:.7pt solid #14191c}
.plain-text{font:8.6pt/1.45 ui-monospace,'Cascadia Mono','DejaVu Sans Mono','Liberation Mono',monospace;white-space:pre-wrap;overflow-wrap:anywhere}
@media print{
.paper{break-before:page}
.paper:first-child{break-before:auto}
.paper.wide{page:wide}
}
`;

/** The papers as they lie on a desk; `--paper-width` and `--paper-height` come from the size chosen. */
export function deskStyle(paper: Paper): string {
  const { widthMm, heightMm } = papers[paper];
  const { top, side, bottom } = marginMm;
  return `@media screen{
.paper{width:${widthMm}mm;min-height:${heightMm}mm;padding:${top}mm ${side}mm ${bottom}mm;margin:0 auto 8mm;box-shadow:0 .5mm 2mm rgb(0 0 0/.18)}
.paper.wide{width:${heightMm}mm;min-height:${widthMm}mm}
}
`;
}
