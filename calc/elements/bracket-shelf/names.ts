import { shelfPaths, type SoundShelf } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import {
  commonWordSaid,
  findCombination,
  findFastener,
  findMetal,
  findPanel,
  findSpecies,
  findThing,
  nearest,
  panels,
  species,
} from '../../catalogue/index.ts';
import { fixingNames, framing } from '../fixing/names.ts';
import { lookUp, type Look } from '../look-up.ts';

/**
 * Names that no table of the catalogue has, each with the nearest that some has. Only sound parts of a document are
 * looked at, so that unknown names are told together with every other error.
 */
export function unknownNames({ board, brackets, wall, loads }: SoundShelf): FieldError[] {
  const { capacity, boardScrews, plate, screws } = brackets ?? {};
  const wood = (name: string | undefined, path: string): FieldError[] =>
    lookUp(name, path, 'a wood or panel', boardMaterial);
  const arm = boardScrews?.armMaterial === 'metal' ? undefined : boardScrews?.armMaterial;
  const metal = capacity?.basis === 'steel' ? capacity.metal : undefined;
  return [
    ...wood(board?.material, '/board/material'),
    ...wood(board?.nosing?.material, '/board/nosing/material'),
    ...wood(board?.rail?.material, '/board/rail/material'),
    ...wood(board?.box?.frameMaterial, '/board/box/frameMaterial'),
    ...(board?.layers ?? []).flatMap((layer, index) =>
      wood(layer?.material, `/board/layers/${index}/material`),
    ),
    ...lookUp(boardScrews?.fastener, '/brackets/boardScrews/fastener', 'a fastener', findFastener),
    ...lookUp(metal, '/brackets/capacity/metal', 'a metal', findMetal),
    ...lookUp(arm, '/brackets/boardScrews/armMaterial', '"metal" or a wood', framing),
    ...fixingNames({ plate, screws, wall }, shelfPaths),
    ...(loads ?? []).flatMap((load, index) =>
      load?.kind !== 'line' && load?.kind !== 'point'
        ? []
        : (load.things ?? []).flatMap((each, row) =>
            lookUp(each?.thing, `/loads/${index}/things/${row}/thing`, 'a thing', findThing),
          ),
    ),
  ];
}

function boardMaterial(name: string): Look {
  const panel = findPanel(name, 0.018);
  const isKnown =
    findSpecies(name).ok || panel.ok || panel.reason === 'no-such-thickness' || findCombination(name).ok;
  if (isKnown) return { ok: true };
  return {
    ok: false,
    said: commonWordSaid(name, true),
    nearest: nearest(
      name,
      [...species, ...panels].map((row) => row.name),
      6,
    ),
  };
}
