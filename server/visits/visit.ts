import type { Actor } from '../store/actor.ts';

/** What a person may do: see; see and change; or that, and say who may. Each includes those before it. */
export const roles = ['reader', 'member', 'owner'] as const;
export type Role = (typeof roles)[number];

/** Who asks, for one request. */
export interface Visit {
  readonly actor: Actor;
  readonly role: Role;
  /** Stands in every form that changes something, and nobody else's page can know it. */
  readonly token: string;
}

/** Whether a role includes another. */
export function mayActAs(role: Role, needed: Role): boolean {
  return roles.indexOf(role) >= roles.indexOf(needed);
}
