import type { FieldError } from '../../shared/check-result.ts';
import { assetPath } from '../assets.ts';
import type { InstallerModel } from './installer.ts';
import type { PageFrame } from './page.ts';
import type { SheetModel } from './sheet.ts';

/** The sheet in the frame of a page: its own stylesheet, the head it prints on every page, and no scripts. */
export function sheetPage(model: SheetModel): SheetModel & PageFrame {
  return { ...model, ...frame(`${model.title} · Calculation sheet`, [model.headAddress]) };
}

/** The installer's sheet in the frame of a page. */
export function installerPage(model: InstallerModel): InstallerModel & PageFrame {
  return { ...model, ...frame(`${model.title} · Installer’s sheet`, [assetPath('installer.css')]) };
}

interface SheetErrors extends PageFrame {
  readonly title: string;
  readonly backAddress: string;
  readonly errors: readonly { readonly path: string; readonly hasPath: boolean; readonly message: string }[];
}

/** The page in place of the sheet of a check that has errors in it. */
export function sheetErrors(errors: readonly FieldError[], query: string): SheetErrors {
  return {
    ...frame('No sheet yet', []),
    title:
      errors.length === 1 ? 'One thing is to be put right' : `${errors.length} things are to be put right`,
    backAddress: `/check?${query}`,
    errors: errors.map(({ path, message }) => ({ path: pathWords(path), hasPath: path !== '', message })),
  };
}

/** `/loads/1/amount` as people count: `loads, 2, amount`. */
function pathWords(path: string): string {
  return path
    .split('/')
    .slice(1)
    .map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : part))
    .join(', ');
}

function frame(pageTitle: string, more: readonly string[]): PageFrame {
  return { pageTitle, styles: [assetPath('sheet.css'), ...more], scripts: [], isWaiting: false };
}
