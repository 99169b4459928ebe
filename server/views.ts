import type { Study } from './check/study.ts';
import type { Templates } from './templates.ts';
import type { PageMaker } from './pages/page-maker.ts';

/** What checks a form and turns it into a page. */
export interface CheckDesk {
  readonly templates: Templates;
  readonly study: Study;
  readonly pages: PageMaker;
}
