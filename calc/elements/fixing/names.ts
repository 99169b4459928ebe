import type { FixingPaths, SoundFixing } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { findFastener, findFramingWood, findMetal, findPanel, findSpecies } from '../../catalogue/index.ts';
import { lookUp, type Look } from '../look-up.ts';

/** Names of a plate, its screws and the wall that no table has, and fasteners that can't be driven as is said. */
export function fixingNames({ plate, screws, wall }: SoundFixing, paths: FixingPaths): FieldError[] {
  const isListed = screws?.fastener === 'listed';
  const named = isListed ? undefined : screws?.fastener;
  return [
    ...lookUp(named, `${paths.screws}/fastener`, 'a fastener, or "listed",', findFastener),
    ...(screws?.driven === 'toe' && !mayBeToed(screws.fastener)
      ? [
          {
            path: `${paths.screws}/driven`,
            message: 'Only nails are toed in. For others it takes "straight".',
          },
        ]
      : []),
    ...lookUp(plate?.metal, `${paths.plate}/metal`, 'a metal', findMetal),
    ...lookUp(wall?.species, '/wall/species', 'a framing wood', framing),
  ];
}

/** What is not known may be a nail. */
function mayBeToed(name: string | undefined): boolean {
  if (name === undefined) return true;
  const found = findFastener(name);
  return found.ok ? found.row.kind === 'common-nail' : name !== 'listed';
}

/** A wood that framing or a wooden arm can be made of. */
export function framing(name: string): Look {
  const found = findFramingWood(name);
  const panel = findPanel(name, 0.012);
  return found.ok || findSpecies(name).ok || panel.ok || panel.reason === 'no-such-thickness'
    ? { ok: true }
    : { ok: false, nearest: found.nearest };
}
