import { readFileSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import Handlebars from 'handlebars';
import { assetPath } from './assets.ts';
import { wholeNumbers } from './whole-numbers.ts';

/** A value a template can show: words, ready answers to yes or no, and lists of them. */
export type ViewValue = string | boolean | readonly ViewValue[] | { readonly [name: string]: ViewValue };

/** The compiled templates of the pages and of the regions that are swapped on their own. */
export interface Templates {
  /**
   * Renders `views/pages/<name>.hbs` inside the layout.
   *
   * @throws Error when the model lacks something the template shows
   */
  page(name: string, model: object): string;
  /** Renders `views/partials/<name>.hbs` alone. */
  partial(name: string, model: object): string;
}

const options = { strict: true, assumeObjects: false, knownHelpersOnly: true, preventIndent: true };

/** Reads and compiles every template below a folder; a mistake in one stops the program at its start. */
export function loadTemplates(folder: string): Templates {
  const engine = Handlebars.create();
  const partials = sources(join(folder, 'partials'));
  for (const [name, source] of partials) engine.registerPartial(name, engine.compile(source, options));
  const compile = (source: string) => {
    engine.precompile(source, options);
    return engine.compile(source, options);
  };
  const compiledPartials = new Map([...partials].map(([name, source]) => [name, compile(source)]));
  const pages = new Map([...sources(join(folder, 'pages'))].map(([name, source]) => [name, compile(source)]));
  const layouts = new Map(
    [...sources(join(folder, 'layouts'))].map(([name, source]) => [name, compile(source)]),
  );
  const layout = pick(layouts, 'page');
  const icon = assetPath('icon.svg');
  const templates: Templates = {
    page: (name, model) => wholeNumbers(layout({ ...model, icon, content: pick(pages, name)(model) })),
    partial: (name, model) => wholeNumbers(pick(compiledPartials, name)(model)),
  };
  return Object.freeze(templates);
}

function sources(folder: string): Map<string, string> {
  const files = readdirSync(folder).filter((file) => file.endsWith('.hbs'));
  return new Map(files.map((file) => [basename(file, '.hbs'), readFileSync(join(folder, file), 'utf8')]));
}

function pick<T>(templates: ReadonlyMap<string, T>, name: string): T {
  const template = templates.get(name);
  if (template === undefined) throw new Error(`There is no template named ${name}.`);
  return template;
}
