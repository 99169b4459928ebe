import type { FieldError } from '../../shared/check-result.ts';

/** An error for a name that isn't in the catalogue, with the nearest that are. */
export function unknownName(
  path: string,
  what: string,
  name: string,
  nearest: readonly string[],
): FieldError {
  const offer = nearest.length === 0 ? '' : ` Nearest: ${nearest.join(', ')}.`;
  return {
    path,
    message: `"${name}" is not known. It takes ${what} of the catalogue by its usual name.${offer}`,
  };
}
