import type { Study } from './check/study.ts';
import type { Templates } from './templates.ts';

/** What checks a form and turns it into a page. */
export interface CheckDesk {
  readonly templates: Templates;
  readonly study: Study;
}
