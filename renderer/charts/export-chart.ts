import type { Chart } from 'chart.js';
import { openDialog, theHost } from '../state/document-store.ts';
import { showToast } from '../state/toast-store.ts';
import { documentTexts } from '../text/documents.ts';
import { textNow } from '../text/use-text.ts';
import type { ExportKind } from '#core/shell/documents.ts';

/** Hands a file to the host and says how it went. */
export async function exportAs(
  kind: ExportKind,
  suggestedName: string,
  content: string | Uint8Array,
): Promise<void> {
  const result = await theHost().exportFile({ kind, suggestedName, content });
  if (result.ok) showToast(textNow(documentTexts).exported(result.value.name));
  else if (result.code !== 'cancelled')
    openDialog({ kind: 'failure', failure: result, during: 'export' });
}

/** The chart as it stands, as the bytes of a PNG file. */
export async function chartPicture(chart: Pick<Chart, 'canvas'>): Promise<Uint8Array | null> {
  const blob = await new Promise<Blob | null>((done) => {
    chart.canvas.toBlob(done, 'image/png');
  });
  return blob === null ? null : new Uint8Array(await blob.arrayBuffer());
}
