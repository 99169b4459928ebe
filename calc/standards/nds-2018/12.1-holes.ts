/** A fastener as far as its hole goes. */
interface Bored {
  readonly kind: 'wood-screw' | 'lag-screw' | 'common-nail';
  readonly diameter_m: number;
  readonly rootDiameter_m: number;
}

/** Holes to bore for one fastener; diameters in m. */
export interface LeadHole {
  /** For the thread: what the clause allows, from and to; the same twice where it says "about". */
  readonly thread: { readonly from_m: number; readonly to_m: number };
  /** For the part without thread; 0 where none is bored. */
  readonly shank_m: number;
  readonly isNeeded: boolean;
  readonly clause: string;
}

interface Share {
  readonly from: number;
  readonly to: number;
}

/** Dense over 0.6, middling over 0.5, light up to 0.5. */
type Density = 'dense' | 'middling' | 'light';

const lagShares: Readonly<Record<Density, Share>> = {
  dense: { from: 0.65, to: 0.85 },
  middling: { from: 0.6, to: 0.75 },
  light: { from: 0.4, to: 0.7 },
};
/** Light wood needs no hole for a screw that is pulled; 70 % spares wood and arm (common practice, no source). */
const screwShares: Readonly<Record<Density, number>> = { dense: 0.9, middling: 0.7, light: 0.7 };
const shankShares: Readonly<Record<Density, number>> = { dense: 1, middling: 7 / 8, light: 7 / 8 };
const nailShares: Readonly<Record<Density, number>> = { dense: 0.9, middling: 0.75, light: 0.75 };

/**
 * Lead holes in wood of a specific gravity: NDS 2018 12.1.4 (lag screws, of the shank), 12.1.5 (wood screws, of the root;
 * of the shank for its own part, as they carry shear), 12.1.6 (nails, the most that is permitted). From memory.
 */
export function leadHole({ kind, diameter_m, rootDiameter_m }: Bored, G: number): LeadHole {
  const density: Density = G > 0.6 ? 'dense' : G > 0.5 ? 'middling' : 'light';
  if (kind === 'lag-screw') {
    const { from, to } = lagShares[density];
    return {
      thread: { from_m: from * diameter_m, to_m: to * diameter_m },
      shank_m: diameter_m,
      isNeeded: true,
      clause: 'NDS 12.1.4',
    };
  }
  if (kind === 'wood-screw') {
    const about_m = screwShares[density] * rootDiameter_m;
    return {
      thread: { from_m: about_m, to_m: about_m },
      shank_m: shankShares[density] * diameter_m,
      isNeeded: density !== 'light',
      clause: 'NDS 12.1.5',
    };
  }
  const most_m = nailShares[density] * diameter_m;
  return { thread: { from_m: most_m, to_m: most_m }, shank_m: 0, isNeeded: false, clause: 'NDS 12.1.6' };
}
