import type { FieldError } from '../../shared/check-result.ts';
import { unknownName } from '../catalogue/unknown-name.ts';

/** A name looked up: it is known, or the nearest that are. */
export type Look =
  | { readonly ok: true }
  | {
      readonly ok: false;
      readonly nearest: readonly string[];
      /** What the name means all the same; left out: nothing. */
      readonly said?: string;
    };

/**
 * Looks a name of a document up, where it has one.
 *
 * @param path the field
 * @param what what the field takes: "a fastener"
 * @returns an error where no table has the name; none otherwise
 */
export function lookUp(
  name: string | undefined,
  path: string,
  what: string,
  find: (name: string) => Look,
): FieldError[] {
  const found = name === undefined ? undefined : find(name);
  return name === undefined || found === undefined || found.ok
    ? []
    : [unknownName(path, what, name, found.nearest, found.said)];
}
