import type { Templates } from './templates.ts';
import type { Typesetter } from './typeset/index.ts';

/** What turns a check into a page. */
export interface Views {
  readonly templates: Templates;
  readonly typesetter: Typesetter;
}
