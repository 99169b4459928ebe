import { findFastener } from '../../calc/catalogue/index.ts';

/** A fastener as it is asked for over a counter: `#10 wood screw`, `1/4 in lag screw`; what the document calls it where no table has it. */
export function screwName(fastener: string): string {
  const found = findFastener(fastener);
  if (!found.ok) return fastener === 'listed' ? 'listed screw or anchor' : fastener;
  const [kind = '', size = ''] = found.row.name.split(', ');
  return `${size} ${kind.charAt(0).toLowerCase()}${kind.slice(1)}`;
}
