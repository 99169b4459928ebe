/** Whether a document is of an element whose check takes tenths of a second, so that its answer is worth remembering. */
export function takesItsTime(document: unknown): boolean {
  const { element } = partsOf(document);
  return element === 'counter-overhang' || element === 'counter-run';
}

/** A usual shelf of four brackets and three loads, one of them roaming, is at 24; here the check alone takes a tenth of a second. */
const largest = 100;

/** Whether a document is of a shelf with so much on it that its check, its ways out above all, takes as long as a counter's. */
export function isLargeShelf(document: unknown): boolean {
  const { element, brackets, loads } = partsOf(document);
  if (element !== 'bracket-shelf' || !Array.isArray(loads)) return false;
  const { positions, hold } = partsOf(brackets);
  const count = Array.isArray(positions) ? positions.length : 1;
  const roams = loads.some((load) => partsOf(load)['kind'] === 'roaming');
  return count * loads.length * (hold === 'resting' ? 4 : 1) * (roams ? 2 : 1) > largest;
}

function partsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? { ...value } : {};
}
