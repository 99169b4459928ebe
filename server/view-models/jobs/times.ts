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

/** A moment as it stands in a sentence: `at 14:02`, or `on 2026-03-14 at 14:02` where that is not today. */
export function atTime(moment: string, now: Date): string {
  const at = new Date(moment);
  const day = dayOf(at) === dayOf(now) ? '' : `on ${dayOf(at)} `;
  return `${day}at ${timeOf(at)}`;
}

/** A day by the clock of this machine: `2026-03-14`. */
export function dayOf(at: Date): string {
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

function timeOf(at: Date): string {
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}
