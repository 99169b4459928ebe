import { findCombination, findPanel, findSpecies } from '../../catalogue/index.ts';
import type { MaterialRequest } from '../design-code.ts';

/** The basis the document names, or the one the material's name is found under. */
export function basisOf(request: MaterialRequest): 'clear-wood' | 'graded' | 'panel' {
  if (request.basis !== undefined) return request.basis;
  const { material, grade } = request;
  if (material === undefined) return 'clear-wood';
  if (grade !== undefined) return 'graded';
  if (findSpecies(material).ok) return 'clear-wood';
  const panel = findPanel(material, request.thickness_m);
  if (panel.ok || panel.reason === 'no-such-thickness') return 'panel';
  return findCombination(material).ok ? 'graded' : 'clear-wood';
}
