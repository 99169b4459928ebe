import type { Role } from '../../store/tables.ts';

/** What people may do, in words. */
export const roleWords: Readonly<Record<Role, string>> = {
  reader: 'Reads',
  member: 'Reads and changes',
  owner: 'Reads, changes, and says who may',
};
