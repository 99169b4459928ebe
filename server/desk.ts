import type { Store } from './store/open-store.ts';
import type { CheckDesk } from './views.ts';

/** What the pages of jobs work with. */
export interface Desk extends CheckDesk {
  readonly store: Store;
}
