import type { Actor } from '../store/actor.ts';
import { roles, type Role } from '../store/tables.ts';

/** A person who signed in, and the session they are in. */
export interface SignedIn {
  readonly id: string;
  readonly signInName: string;
  readonly office: string;
  readonly keyHash: string;
}

/** Who asks, for one request. */
export interface Visit {
  readonly actor: Actor;
  readonly role: Role;
  /** Stands in every form that changes something, and nobody else's page can know it. */
  readonly token: string;
  /** Who signed in; undefined on a machine where nobody has to. */
  readonly person: SignedIn | undefined;
}

/** Whether a role includes another. */
export function mayActAs(role: Role, needed: Role): boolean {
  return roles.indexOf(role) >= roles.indexOf(needed);
}
