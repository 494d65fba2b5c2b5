import type { SheetBlock, SheetFinding } from '../sheet.ts';
import { drawingMarkup } from './drawing-markup.ts';
import { element, type MarkupNode } from './node.ts';
import { tableMarkup } from './table-markup.ts';

type Facts = Extract<SheetBlock, { kind: 'facts' }>;

/** One piece of a part as markup. */
export function blockMarkup(block: SheetBlock): MarkupNode {
  switch (block.kind) {
    case 'heading':
      return element('h2', 'heading', [block.text]);
    case 'text':
      return element('p', `text ${block.tone ?? 'plain'}`, [block.text]);
    case 'list':
      return element(
        block.ordered === true ? 'ol' : 'ul',
        'list',
        block.items.map((item) => element('li', '', [item])),
      );
    case 'checks':
      return element(
        'ul',
        'checks',
        block.items.map(({ text, hint }) =>
          element('li', '', [
            element('span', 'box', [], { 'aria-hidden': 'true' }),
            element('span', 'check-text', [
              text,
              hint === undefined ? null : element('span', 'hint', [` ${hint}`]),
            ]),
          ]),
        ),
      );
    case 'facts':
      return factsMarkup(block);
    case 'columns':
      return element('div', 'columns', block.groups.map(factsMarkup));
    case 'figures':
      return element(
        'dl',
        'figures',
        block.items.map(({ label, value, detail }) =>
          element('div', 'figure', [
            element('dt', '', [label]),
            element('dd', '', [
              element('span', 'figure-value', [value]),
              detail === undefined ? null : element('span', 'figure-detail', [detail]),
            ]),
          ]),
        ),
      );
    case 'table':
      return tableMarkup(block);
    case 'drawings':
      return element(
        'div',
        block.drawings.length > 1 ? 'drawings' : 'drawings single',
        block.drawings.map((drawing) => element('figure', '', [drawingMarkup(drawing)])),
      );
    case 'care':
      if (block.items.length === 1) return element('p', 'care-line', block.items);
      return element('div', 'care', [
        element('h2', 'care-title', [block.title]),
        element(
          'ul',
          'list',
          block.items.map((item) => element('li', '', [item])),
        ),
      ]);
    case 'findings':
      return element('div', 'findings', block.items.map(findingMarkup));
    case 'label':
      return element('div', 'label', [
        element('p', 'label-title', [block.title]),
        element('p', 'label-big', [block.big]),
        linesMarkup(block.rows),
        element(
          'ul',
          'label-warnings',
          block.warnings.map((warning) => element('li', '', [warning])),
        ),
      ]);
    case 'blanks':
      return element(
        'dl',
        'blanks',
        block.labels.map((label) =>
          element('div', '', [element('dt', '', [label]), element('dd', '', [])]),
        ),
      );
    case 'plain':
      return element('pre', 'plain-text', [block.text]);
  }
}

function factsMarkup({ title, rows }: Facts): MarkupNode {
  return element('div', 'facts', [
    title === undefined ? null : element('h2', 'facts-title', [title]),
    linesMarkup(rows),
  ]);
}

function linesMarkup(rows: Facts['rows']): MarkupNode {
  return element(
    'dl',
    'lines',
    rows.map(({ label, value }) =>
      element('div', '', [element('dt', '', [label]), element('dd', '', [value])]),
    ),
  );
}

function findingMarkup(finding: SheetFinding): MarkupNode {
  return element('div', `finding ${finding.severity}`, [
    element('p', 'finding-head', [
      element('span', 'severity', [finding.severityWord]),
      element('span', 'finding-id', [finding.id]),
      element('strong', '', [finding.what]),
    ]),
    element('p', 'finding-remedy', [finding.remedy]),
    element('p', 'finding-source', [finding.source]),
  ]);
}
