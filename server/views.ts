import type { Study } from './check/study.ts';
import type { Templates } from './templates.ts';
import type { Typesetter } from './typeset/index.ts';

/** What turns a check into a page. */
export interface Views {
  readonly templates: Templates;
  readonly typesetter: Typesetter;
}

/** What checks a form and turns it into a page. */
export interface CheckDesk extends Views {
  readonly study: Study;
}
