import { assetPath } from '../assets.ts';

/** What every page has around its content. */
export interface PageFrame {
  readonly pageTitle: string;
  readonly styles: readonly string[];
  readonly scripts: readonly string[];
  /** Whether what it tells of goes on: without scripts it is loaded again by itself. */
  readonly isWaiting: boolean;
}

/** The frame of a page with its title. */
export function pageFrame(pageTitle: string): PageFrame {
  return {
    pageTitle: `${pageTitle} · Shelf and overhang check`,
    styles: [
      assetPath('paper.css'),
      assetPath('form.css'),
      assetPath('answer.css'),
      assetPath('jobs.css'),
      assetPath('print.css'),
    ],
    scripts: [assetPath('htmx.js'), assetPath('check.js')],
    isWaiting: false,
  };
}
