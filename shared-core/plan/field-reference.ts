import { z } from 'zod';
import { docsOf, withoutNull } from './field-docs.ts';
import { planSchema } from './schema/plan.ts';

/** An object of the plan that gets a heading and a table of its own. */
interface Section {
  readonly schema: z.ZodObject;
  readonly title: string;
  readonly path: string;
}

/** The reference page of every plan field, generated from the schema: name, title, unit, what it takes, help. */
export function fieldReference(): string {
  const sections: Section[] = [{ schema: planSchema, title: 'Plan', path: '' }];
  const known = new Map<z.ZodType, Section>([[planSchema, sections[0]!]]);
  const parts: string[] = [opening];
  for (let index = 0; index < sections.length; index += 1) {
    const section = sections[index]!;
    parts.push(heading(section));
    parts.push('| Field | Title | Unit | Takes | Meaning |', '|---|---|---|---|---|');
    for (const [key, field] of Object.entries(section.schema.shape) as [string, z.ZodType][]) {
      const docs = docsOf(field);
      const path = section.path === '' ? key : `${section.path}.${key}`;
      for (const found of objectsIn(field, path, docs.title || key)) {
        if (known.has(found.schema)) continue;
        known.set(found.schema, found);
        sections.push(found);
      }
      const takes = takenBy(field, known);
      parts.push(
        `| \`${key}\` | ${docs.title} | ${docs.unit ?? ''} | ${takes} | ${(docs.help ?? '').replaceAll('|', '\\|')} |`,
      );
    }
    parts.push('');
  }
  return `${parts.join('\n').trimEnd()}\n`;
}

const opening = `# Fields of a plan file

Generated from the schema; do not edit. A plan file (\`.wain\`) is JSON. Every field stands in the file; where the table
says "or null", null means "not known" and the program fills in what is usual and says so. Numbers are finite and in the
unit of the table. Discharge current is positive.
`;

function heading(section: Section): string {
  const where = section.path === '' ? 'The whole file' : `\`${section.path}\``;
  return `## ${section.title}\n\n${where}\n`;
}

/** The objects a field leads to: itself, the entries of a list, the forms of a choice. */
function objectsIn(schema: z.ZodType, path: string, title: string): Section[] {
  const inner = withoutNull(schema);
  if (inner instanceof z.ZodObject) {
    return [{ schema: inner, title: docsOf(inner).title || title, path }];
  }
  if (inner instanceof z.ZodArray) return objectsIn(inner.element as z.ZodType, `${path}.*`, title);
  if (inner instanceof z.ZodUnion) {
    return inner.options.flatMap((option) => {
      const form = option as z.ZodObject;
      return objectsIn(form, path, `${docsOf(inner).title || title}: ${kindOf(form)}`);
    });
  }
  return [];
}

/** The word that tells a form of a choice from the others. */
function kindOf(form: z.ZodObject): string {
  const kind = (form.shape as Record<string, z.ZodType>)['kind'];
  return kind instanceof z.ZodLiteral ? [...kind.values].map(String).join(', ') : '';
}

function takenBy(schema: z.ZodType, known: ReadonlyMap<z.ZodType, Section>): string {
  const orNull = schema instanceof z.ZodNullable ? ', or null' : '';
  const inner = withoutNull(schema);
  if (inner instanceof z.ZodNumber) {
    const low = inner.minValue ?? 0;
    const whole = inner.isInt ? 'whole number ' : '';
    const above = inner.safeParse(low).success ? '' : 'above ';
    return `${whole}${above}${low} to ${inner.maxValue}${orNull}`;
  }
  if (inner instanceof z.ZodObject) return `${known.get(inner)?.title ?? 'object'}${orNull}`;
  if (inner instanceof z.ZodArray)
    return `list of ${takenBy(inner.element as z.ZodType, known)}${orNull}`;
  if (inner instanceof z.ZodUnion) {
    return `one of: ${inner.options.map((option) => kindOf(option as z.ZodObject)).join(', ')}${orNull}`;
  }
  if (inner instanceof z.ZodEnum) return `${inner.options.map(String).join(', ')}${orNull}`;
  if (inner instanceof z.ZodLiteral) return `${[...inner.values].map(String).join(', ')}${orNull}`;
  if (inner instanceof z.ZodBoolean) return `true, false${orNull}`;
  return `text${orNull}`;
}
