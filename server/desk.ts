import type { Store } from './store/open-store.ts';
import type { Views } from './views.ts';

/** What the pages of jobs work with. */
export interface Desk extends Views {
  readonly store: Store;
}
