/**
 * The time of making that a PDF carries: the start of the sheet's own day (UTC), so that the same sheet is the same file; a
 * sheet without a date carries 1970, which reads as none.
 *
 * @param date `2026-03-14`, or empty
 * @returns seconds since 1970
 */
export function madeAt(date: string): number {
  const start_ms = /^\d{4}-\d{2}-\d{2}$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : NaN;
  return Number.isFinite(start_ms) && start_ms > 0 ? start_ms / 1000 : 0;
}
