const two = (number: number): string => String(number).padStart(2, '0');

/** A moment as a day and a time by the clock of this machine: `2026-03-14 14:02`. */
export function dayAndTime(moment: string): string {
  const at = new Date(moment);
  return `${dayOf(at)} ${timeOf(at)}`;
}

/** A moment as a time, with its day where that is not today's. */
export function shortTime(moment: string, now: Date): string {
  const at = new Date(moment);
  return dayOf(at) === dayOf(now) ? timeOf(at) : `${dayOf(at)} ${timeOf(at)}`;
}

/** A day by the clock of this machine: `2026-03-14`. */
export function dayOf(at: Date): string {
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

function timeOf(at: Date): string {
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}
