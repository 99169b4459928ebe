import { listed } from '../../shared/words.ts';
import type { Duration } from '../../shared/check-document/index.ts';

/** Somebody given as a load of years: what bends slowly under them is not worked out. */
export function staysWarning(
  loads: readonly { readonly kind: string; readonly duration?: Duration | undefined }[] | undefined,
): string[] {
  const stays = loads?.some(
    ({ kind, duration }) => kind === 'person' && (duration === 'permanent' || duration === 'ten-years'),
  );
  return stays === true
    ? [
        'A person who stays for years counts for strength alone: movement over the years leaves them out. Give what stays as a load over the area.',
      ]
    : [];
}

/** Somebody given as an impact, who counts with the factor for one. */
export function impactWarning(who: string, duration: Duration | undefined): string[] {
  return duration === 'impact'
    ? [`${who} counts as an impact: the amount must be the force of the impact, not their weight.`]
    : [];
}

/** Loads given as blows, which count with the factor for one and are not doubled. */
export function blowWarning(
  loads: readonly { readonly name: string; readonly duration: Duration }[],
): string[] {
  const blows = loads.filter(({ duration }) => duration === 'impact').map(({ name }) => name);
  return blows.length === 0
    ? []
    : [
        `A blow, and strength counts as for one: ${listed(blows)}. The amount must be the force of the blow itself, at least twice the weight of what drops or is jerked; nothing doubles it here.`,
      ];
}
