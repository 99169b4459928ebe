import { check, DocumentError } from '../../../calc/index.ts';

/** The places of everything that is wrong with a document; none where it can be checked. */
export function errorPaths(document: unknown): string[] {
  try {
    check(document);
  } catch (error) {
    if (error instanceof DocumentError) return error.errors.map(({ path }) => path);
    throw error;
  }
  return [];
}
