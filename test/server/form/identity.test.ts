import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoCheck } from '../../../server/demo.ts';
import { fillForm, queryOf, readForm, textsOf, unknownNames } from '../../../server/form/index.ts';
import { createTypesetter } from '../../../server/typeset/index.ts';
import { checkPage } from '../../../server/view-models/check-page.ts';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { documentSchema } from '../../../shared/check-document/index.ts';
import { anyDocument } from '../fixtures/any-document.ts';

const typesetter = createTypesetter();
const runs = { numRuns: 100 };

describe('a form and its document', () => {
  it('are one: what a form was filled with is what is read from it', () => {
    fc.assert(
      fc.property(anyDocument(documentSchema), (document) => {
        expect(documentSchema.safeParse(document).success).toBe(true);
        const filled = fillForm(document);
        expect(readForm(filled).document).toEqual(document);
        expect(unknownNames(filled)).toEqual([]);
      }),
      runs,
    );
  });

  it('stay one through an address', () => {
    fc.assert(
      fc.property(anyDocument(documentSchema), (document) => {
        const query = queryOf(readForm(fillForm(document)).entries);
        const opened = readForm(textsOf(query));
        expect(opened.document).toEqual(document);
        expect(queryOf(opened.entries)).toBe(query);
      }),
      runs,
    );
  });

  it.each([
    ['the demo check', demoCheck],
    ['the shelf to start from', startChecks['bracket-shelf']],
    ['the fixing to start from', startChecks['wall-fixing']],
    ['the counter to start from', startChecks['counter-overhang']],
    ['the run to start from', startChecks['counter-run']],
  ])('stay one for %s', (_name, document) => {
    expect(readForm(fillForm(document)).document).toEqual(document);
  });
});

/** A file with loads of which nothing is said: an error, and none to be filled with what nobody wrote. */
const withEmptyLoads = {
  schema: 1,
  element: 'wall-fixing',
  plate: { height: '3/4 in', width: '3/4 in' },
  screws: { fastener: 'wood-screw-10', length: '3 in', heights: ['1/2 in'] },
  wall: {},
  loads: [{}, {}],
};

describe('a document that was opened and is sent again by a browser', () => {
  it('means the same', () => {
    fc.assert(
      fc.property(anyDocument(documentSchema), (document) => {
        const texts = fillForm(document);
        const { form } = checkPage(checkInPlace(texts), typesetter);
        const fields = [form.units, ...form.sections.flatMap(({ parts }) => fieldsOf(parts))];
        const sent = new Map([
          ...form.hidden.map(({ name, value }): [string, string] => [name, value]),
          ...fields.map(({ id, value }): [string, string] => [id, value]),
        ]);
        expect(meaning(checkInPlace(sent).reading.document)).toEqual(meaning(document));
      }),
      { numRuns: 80, examples: [[withEmptyLoads]] },
    );
  });
});

type Parts = ReturnType<typeof checkPage>['form']['sections'][number]['parts'];

function fieldsOf(parts: Parts): { readonly id: string; readonly value: string }[] {
  return parts.flatMap(({ fields, mores, tables }) => [
    ...fields,
    ...mores.flatMap((more) => fieldsOf(more.parts)),
    ...tables.flatMap(({ rows }) => rows.flatMap((row) => fieldsOf(row.parts))),
  ]);
}

/** A document without what makes no difference: the units it has anyway, empty groups, and fields another field leaves idle. */
function meaning(document: Readonly<Record<string, unknown>>): unknown {
  const sized = ['diameter', 'width', 'height', 'depth', 'wall', 'density', 'fill', 'fillDensity'];
  const plain = JSON.parse(JSON.stringify({ units: 'inch-pound', ...document }), (key, value: unknown) => {
    if (typeof value !== 'object' || value === null) return value;
    const isEmpty = Object.keys(value).length === 0;
    if (isEmpty && ['conditions', 'limits', 'joints', 'props'].includes(key)) return undefined;
    const idle = (names: readonly string[]): object =>
      Object.fromEntries(Object.entries(value).filter(([name]) => !names.includes(name)));
    if ('thing' in value && 'each' in value && sized.some((name) => name in value)) return idle(sized);
    if ('allowable' in value && ('ultimate' in value || 'factor' in value)) return idle(['allowable']);
    if ('things' in value && ('amount' in value || 'total' in value)) return idle(['amount', 'total']);
    if ('amount' in value && 'total' in value) return idle(['amount']);
    if ('box' in value && 'layers' in value) return idle(['box']);
    return value;
  }) as unknown;
  return plain;
}
