import { panelIndex, panels, type Panel } from '../catalogue/index.ts';

/** NDS Table 12.3.3B: plywood of any grade, OSB; nothing for other panels. */
export const panelG: Readonly<Record<Panel['family'], number | null>> = {
  plywood: 0.42,
  osb: 0.5,
  mdf: null,
  particleboard: null,
  hardboard: null,
};

/** Specific gravity of a panel's face for screws; null where the NDS gives none; undefined where no panel has the name. */
export function panelGravity(name: string): number | null | undefined {
  const panel = panelIndex.find(name);
  if (panel === undefined) return undefined;
  const row = panels.find((each) => each.id === panel.id);
  if (row === undefined) throw new RangeError(`the panel ${panel.id} has a row for at least one thickness`);
  return panelG[row.family];
}
