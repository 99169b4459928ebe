import type { Shelf } from '../../elements/bracket-shelf/shelf.ts';

/** The widest bay between two brackets; the one nearest the left end where several are as wide. */
export function widestBay({ positions_m }: Shelf): { readonly from_m: number; readonly to_m: number } {
  const bays = positions_m.slice(1).map((to_m, i) => ({ from_m: positions_m[i] ?? 0, to_m }));
  return bays.reduce((widest, bay) =>
    bay.to_m - bay.from_m > widest.to_m - widest.from_m + 1e-9 ? bay : widest,
  );
}
