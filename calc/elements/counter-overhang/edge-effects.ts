import { nodeOf, type PlateMesh } from '../../mechanics/plate/mesh.ts';
import { perNode } from '../../mechanics/plate/stiffness.ts';
import type { Effect, EffectName } from './effects.ts';
import type { Overhang } from './overhang.ts';
import type { FreeEdge } from './people.ts';

/** A free edge by the crossings of a mesh on it. */
export interface EdgeNodes {
  readonly name: FreeEdge['name'];
  /** Whether movement up counts as much as movement down. */
  readonly isBothWays: boolean;
  readonly nodes: readonly { readonly dof: number; readonly x_m: number; readonly y_m: number }[];
}

/**
 * The crossings along each free edge. A corner that stands out past two sides of the base belongs to the side past which it
 * stands out farther.
 */
export function edgeNodesOf(
  { base }: Pick<Overhang, 'base'>,
  mesh: PlateMesh,
  edges: readonly FreeEdge[],
): EdgeNodes[] {
  const [lastX, lastY] = [mesh.x_m.length - 1, mesh.y_m.length - 1];
  const outOf = (name: FreeEdge['name']): number => edges.find((each) => each.name === name)?.out_m ?? 0;
  return edges.map(({ name, out_m }) => {
    const isAlongX = name === 'stool' || name === 'back';
    const lines = isAlongX ? mesh.x_m : mesh.y_m;
    const [from_m, to_m] = isAlongX ? [base.from_m, base.to_m] : [base.back_m, base.front_m];
    const [first, last] = isAlongX ? (['left', 'right'] as const) : (['back', 'stool'] as const);
    /** Along the stool edge and the back where both stand out alike. */
    const isOwn = (other: FreeEdge['name']): boolean =>
      isAlongX ? out_m >= outOf(other) - 1e-6 : out_m > outOf(other) + 1e-6;
    const [startsBefore, endsBeyond] = [isOwn(first), isOwn(last)];
    const nodes = lines.flatMap((line, k) => {
      if (line < from_m - 1e-6 && !startsBefore) return [];
      if (line > to_m + 1e-6 && !endsBeyond) return [];
      const [i, j] = isAlongX ? [k, name === 'stool' ? lastY : 0] : [name === 'right' ? lastX : 0, k];
      return [{ dof: perNode * nodeOf(mesh, i, j), x_m: mesh.x_m[i] ?? 0, y_m: mesh.y_m[j] ?? 0 }];
    });
    return { name, isBothWays: isAlongX, nodes };
  });
}

/** Largest movement along each free edge, down; `before` is taken off. */
export function edgeEffects(
  edges: readonly EdgeNodes[],
  field: Float64Array,
  before: Float64Array | null,
): Map<EffectName, Effect> {
  const effects = new Map<EffectName, Effect>();
  for (const { name, isBothWays, nodes } of edges) {
    let worst: Effect = { value: 0, x_m: 0, y_m: 0 };
    for (const { dof, x_m, y_m } of nodes) {
      const moved = (field[dof] ?? 0) - (before?.[dof] ?? 0);
      const value = isBothWays ? Math.abs(moved) : Math.max(0, moved);
      if (value > worst.value) worst = { value, x_m, y_m };
    }
    effects.set(`edge ${name}`, worst);
  }
  return effects;
}
