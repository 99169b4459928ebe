import type { FieldError } from '../../shared/check-result.ts';

/**
 * An error for a name that isn't in the catalogue, with the nearest that are.
 *
 * @param said what the name means all the same, in place of the nearest; empty for nothing
 */
export function unknownName(
  path: string,
  what: string,
  name: string,
  nearest: readonly string[],
  said = '',
): FieldError {
  const names = nearest.length === 0 ? '' : ` Nearest: ${nearest.join(', ')}.`;
  const offer = said === '' ? names : ` ${said}`;
  return {
    path,
    message: `"${name}" is not known. It takes ${what} of the catalogue by its usual name.${offer}`,
  };
}
