import { NameIndex } from './name-index.ts';
import { readPanelNames, readPanels } from './panel-row.ts';
import { tableText } from './table.ts';
import type { FoundPanel, Panel } from './types.ts';

const named = readPanelNames(tableText('panel-names.csv'), 'panel-names.csv');

/** Every panel, a row for each thickness it has values for. */
export const panels: readonly Panel[] = readPanels(tableText('panels.csv'), 'panels.csv', named);

/** The names panels are looked up by. */
export const panelIndex: NameIndex<{ id: string; name: string; otherNames: string[] }> = new NameIndex(
  named.map(({ id, name, other_names }) => ({ id, name, otherNames: other_names })),
  'panels',
);

const roundingOfAThickness_m = 1e-9;

/**
 * A panel by any of its names, at a thickness. Where two rows meet, the thickness belongs to the thinner one, as the
 * standards print it ("over 12 to 19 mm").
 *
 * @param name as a person writes it
 * @param thickness_m the thickness of the panel
 * @returns the row; or the nearest names; or, where the name is known, the thicknesses there are rows for
 */
export function findPanel(name: string, thickness_m: number): FoundPanel {
  const known = panelIndex.find(name);
  if (known === undefined) return panelIndex.unknown(name);
  const ofName = panels.filter((row) => row.id === known.id);
  const row = ofName.find(
    (each) =>
      each.thicknessFrom_m - roundingOfAThickness_m <= thickness_m &&
      thickness_m <= each.thicknessTo_m + roundingOfAThickness_m,
  );
  if (row !== undefined) return { ok: true, row };
  const thicknesses = ofName.map((each) => ({ from_m: each.thicknessFrom_m, to_m: each.thicknessTo_m }));
  return { ok: false, reason: 'no-such-thickness', name: known.name, nearest: [], thicknesses };
}
