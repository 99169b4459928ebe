import type { SoundCounterOverhang } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import { commonWordSaid, findFastener, findMetal, findSpecies } from '../../catalogue/index.ts';
import { framing } from '../fixing/names.ts';
import { lookUp, type Look } from '../look-up.ts';

/** Names of a counter overhang that no table of the catalogue has. */
export function unknownNamesOfOverhang({ top, base, screws, props }: SoundCounterOverhang): FieldError[] {
  return [
    ...(top?.build === 'panel' ? [] : lookUp(top?.material, '/top/material', 'a species', wood)),
    ...lookUp(base?.rail?.material, '/base/rail/material', 'a species', wood),
    ...lookUp(screws?.fastener, '/screws/fastener', 'a fastener', findFastener),
    ...lookUp(screws?.cleat, '/screws/cleat', 'a wood', framing),
    ...(props ?? []).flatMap((prop, index) =>
      prop?.kind === 'flat-bar' ? lookUp(prop.metal, `/props/${index}/metal`, 'a metal', findMetal) : [],
    ),
  ];
}

function wood(name: string): Look {
  const found = findSpecies(name);
  return found.ok ? found : { ok: false, nearest: found.nearest, said: commonWordSaid(name, false) };
}
