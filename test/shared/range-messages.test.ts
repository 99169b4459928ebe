import { z } from 'zod';
import { describe, expect, it } from 'vitest';
import { documentSchema } from '../../shared/check-document/read.ts';

interface QuantityField {
  readonly path: string;
  readonly schema: z.core.$ZodType;
}

/** Every field of every document that takes a quantity, whatever it stands in. */
function quantityFields(schema: z.core.$ZodType, path = ''): QuantityField[] {
  if (schema instanceof z.ZodPipe && schema.meta()?.['x-quantity'] !== undefined) return [{ path, schema }];
  if (schema instanceof z.ZodObject)
    return Object.entries<z.core.$ZodType>(schema.shape).flatMap(([name, each]) =>
      quantityFields(each, `${path}/${name}`),
    );
  if (schema instanceof z.ZodOptional) return quantityFields(schema.unwrap(), path);
  if (schema instanceof z.ZodArray) return quantityFields(schema.element, `${path}/0`);
  if (schema instanceof z.ZodTuple)
    return schema.def.items.flatMap((each, index) => quantityFields(each, `${path}/${index}`));
  if (schema instanceof z.ZodUnion)
    return schema.options.flatMap((each, index) => quantityFields(each, `${path}(${index})`));
  return [];
}

const fields = quantityFields(documentSchema);

function refusalOf(schema: z.core.$ZodType): string | undefined {
  for (const unit of ['m', 'N', 'N/m', 'Pa', 'kg/m3', 'N.m', 'kg']) {
    const message = z.safeParse(schema, `123456789000000 ${unit}`).error?.issues[0]?.message ?? '';
    if (message.includes('outside')) return message;
  }
  return undefined;
}

describe('what a refused quantity is told', () => {
  it('is told by many fields of every kind', () => {
    expect(fields.length).toBeGreaterThan(60);
  });

  it.each(fields)('names ends that the field takes: $path', ({ schema }) => {
    const message = refusalOf(schema) ?? '';
    const ends = /takes: (from|more than) (.+) to (.+) \((.+) to (.+)\)\.$/.exec(message);
    expect(ends, message).not.toBeNull();
    const [, how = '', ...written] = ends ?? [];
    const taken = written.map(
      (each) => z.safeParse(schema, each.replace('³', '3').replace('·', '.')).success,
    );
    expect(taken).toEqual(
      how === 'from' ? [true, true, true, true] : [expect.any(Boolean), true, expect.any(Boolean), true],
    );
  });
});
