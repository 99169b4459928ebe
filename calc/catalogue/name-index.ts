import { distance, words } from './nearest.ts';
import type { UnknownName } from './types.ts';

/** Something that people look up by name. */
export interface Named {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
}

const suggestions = 6;

/** Looks rows up by any of their names. */
export class NameIndex<T extends Named> {
  readonly rows: readonly T[];
  private readonly byKey = new Map<string, T>();
  private readonly spellings: readonly (readonly string[][])[];

  /**
   * @param rows the rows, each with its names
   * @param what what they are rows of, for the message
   * @throws Error where two rows share a name
   */
  constructor(rows: readonly T[], what: string) {
    this.rows = rows;
    this.spellings = rows.map((row) => namesOf(row).map(words));
    for (const row of rows) {
      for (const name of namesOf(row)) {
        const held = this.byKey.get(key(words(name)));
        if (held !== undefined && held !== row) {
          throw new Error(`${what}: "${name}" names both ${held.id} and ${row.id}`);
        }
        this.byKey.set(key(words(name)), row);
      }
    }
  }

  /** The row with this name, in any case, spacing or hyphens, straight or inverted (`maple, sugar`). */
  find(name: string): T | undefined {
    if (name.length > 200) return undefined;
    const asWritten = this.byKey.get(key(words(name)));
    if (asWritten !== undefined) return asWritten;
    const found = new Set(turned(name).map((spelling) => this.byKey.get(spelling)));
    found.delete(undefined);
    const [only] = found;
    return found.size === 1 ? only : undefined;
  }

  /** The rows of which some name has one of the words of this one. */
  sharingWord(name: string): T[] {
    const wanted = new Set(words(name.slice(0, 80)));
    return this.rows.filter((_, at) =>
      (this.spellings[at] ?? []).some((spelling) => spelling.some((word) => wanted.has(word))),
    );
  }

  /** The rows whose names are most like this one, best first, each with how far it is away. */
  ranked(name: string): { row: T; distance: number }[] {
    const wanted = words(name.slice(0, 80));
    return this.rows
      .map((row, at) => ({
        row,
        distance: Math.min(...(this.spellings[at] ?? []).map((spelling) => distance(wanted, spelling))),
      }))
      .sort((a, b) => a.distance - b.distance);
  }

  /** What to answer where the name is in no row; the nearest names are only looked for when somebody asks. */
  unknown(name: string): UnknownName {
    const nearest = (): string[] =>
      this.ranked(name)
        .slice(0, suggestions)
        .map(({ row }) => row.name);
    return {
      ok: false,
      reason: 'unknown-name',
      get nearest() {
        return nearest();
      },
    };
  }
}

/** Every name a row is found by. */
function namesOf(row: Named): string[] {
  return [row.id, row.name, ...row.otherNames];
}

const key = (parts: readonly string[]): string => parts.join('');

/** The other readings of an inverted name: its parts between commas from the last to the first, its words turned round. */
function turned(name: string): string[] {
  const parts = name.split(',').map(words);
  const all = words(name);
  return [
    key(parts.reverse().flat()),
    ...all.map((_, start) => key([...all.slice(start), ...all.slice(0, start)])),
  ];
}
