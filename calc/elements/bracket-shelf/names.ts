import type { SoundDocument } from '../../../shared/check-document/index.ts';
import type { FieldError } from '../../../shared/check-result.ts';
import {
  findCombination,
  findFastener,
  findFramingWood,
  findMetal,
  findPanel,
  findSpecies,
  findThing,
  nearest,
  panels,
  species,
  type Found,
} from '../../catalogue/index.ts';
import { unknownName } from '../../catalogue/unknown-name.ts';

/** A name looked up: it is known, or the nearest that are. */
type Look = { readonly ok: true } | { readonly ok: false; readonly nearest: readonly string[] };

/**
 * Names that no table of the catalogue has, each with the nearest that some has. Only sound parts of a document are
 * looked at, so that unknown names are told together with every other error.
 */
export function unknownNames({ board, brackets, wall, loads }: SoundDocument): FieldError[] {
  const errors: FieldError[] = [];
  const look = (name: string | undefined, path: string, what: string, find: (name: string) => Look): void => {
    const found = name === undefined ? undefined : find(name);
    if (name !== undefined && found !== undefined && !found.ok) {
      errors.push(unknownName(path, what, name, found.nearest));
    }
  };
  const wood = (name: string | undefined, path: string): void =>
    look(name, path, 'a wood or panel', boardMaterial);
  wood(board?.material, '/board/material');
  wood(board?.nosing?.material, '/board/nosing/material');
  wood(board?.rail?.material, '/board/rail/material');
  wood(board?.box?.frameMaterial, '/board/box/frameMaterial');
  board?.layers?.forEach((layer, index) => wood(layer?.material, `/board/layers/${index}/material`));
  const { capacity, boardScrews, screws } = brackets ?? {};
  look(boardScrews?.fastener, '/brackets/boardScrews/fastener', 'a fastener', findFastener);
  if (screws?.fastener !== 'listed')
    look(screws?.fastener, '/brackets/screws/fastener', 'a fastener, or "listed",', findFastener);
  if (capacity?.basis === 'steel') look(capacity.metal, '/brackets/capacity/metal', 'a metal', findMetal);
  if (boardScrews?.armMaterial !== 'metal') {
    look(boardScrews?.armMaterial, '/brackets/boardScrews/armMaterial', '"metal" or a wood', framing);
  }
  look(wall?.species, '/wall/species', 'a framing wood', framing);
  loads?.forEach((load, index) => {
    if (load?.kind !== 'line' && load?.kind !== 'point') return;
    load.things?.forEach((each, row) =>
      look(each?.thing, `/loads/${index}/things/${row}/thing`, 'a thing', findThing),
    );
  });
  return errors;
}

function boardMaterial(name: string): Look {
  const panel = findPanel(name, 0.018);
  const isKnown =
    findSpecies(name).ok || panel.ok || panel.reason === 'no-such-thickness' || findCombination(name).ok;
  if (isKnown) return { ok: true };
  return {
    ok: false,
    nearest: nearest(
      name,
      [...species, ...panels].map((row) => row.name),
      6,
    ),
  };
}

function framing(name: string): Look {
  const found: Found<unknown> = findFramingWood(name);
  const panel = findPanel(name, 0.012);
  return found.ok || findSpecies(name).ok || panel.ok || panel.reason === 'no-such-thickness'
    ? { ok: true }
    : { ok: false, nearest: found.nearest };
}
