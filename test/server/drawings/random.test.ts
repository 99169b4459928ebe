import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBracketShelf } from '../../../calc/elements/bracket-shelf/index.ts';
import { diagrams, elevation, section, type Drawing } from '../../../server/drawings/index.ts';
import { readShelfDocument } from '../../../shared/check-document/index.ts';
import { manyShelves } from '../sheets/many-shelves.ts';
import { collisions, outside } from './parts.ts';
import { shelfDocuments } from './shelf-documents.ts';

function drawn(document: unknown): Drawing[] {
  const reading = readShelfDocument(document);
  if (!reading.ok)
    throw new Error(reading.errors.map(({ path, message }) => `${path} ${message}`).join('\n'));
  const result = checkBracketShelf(reading.document, () => []);
  return (['wide', 'narrow'] as const).flatMap((view) => [
    elevation(reading.document, result, view),
    diagrams(reading.document, result, view),
    section(reading.document),
  ]);
}

function expectSound({ svg, title, description }: Drawing): void {
  expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
  expect(svg).not.toMatch(/ style=| id=|url\(|<script/);
  expect(title).not.toBe('');
  expect(description).not.toMatch(/NaN|undefined|Infinity/);
  expect(description.length).toBeGreaterThan(40);
  expect(outside(svg)).toEqual([]);
  expect(collisions(svg)).toEqual([]);
}

describe('drawings of real answers', () => {
  it.each(manyShelves)('are sound: $name', ({ document }) => {
    for (const drawing of drawn(document)) expectSound(drawing);
  });

  it('are sound for any valid document', () => {
    fc.assert(
      fc.property(shelfDocuments, (document) => {
        for (const drawing of drawn(document)) expectSound(drawing);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });
});
