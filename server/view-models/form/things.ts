import { show, type Unit } from '../../../shared/quantity/index.ts';
import type { Thing } from '../../../calc/catalogue/index.ts';
import { weigh } from '../../../calc/elements/bracket-shelf/contents.ts';
import { thingOf, thingOptions } from './catalogue.ts';
import type { FormView } from './form-view.ts';
import { sentence } from './head-section.ts';
import { fieldPart, morePart, type Field, type More, type Rows } from './model.ts';

/** The contents picker: things, how many, how big, how heavy. */
export function thingsTable(form: FormView, list: string): Rows {
  return form.table(list, {
    title: 'What stands there',
    add: 'Add things',
    rowTitle: (_row, place) => `Things ${place + 1}`,
    parts: (row) => {
      const name = `${list}.${row}`;
      return [
        fieldPart(
          form.choice(`${name}.thing`, {
            label: 'Things',
            unsaid: 'Choose',
            options: thingOptions(),
            reshapes: true,
          }),
        ),
        fieldPart(form.text(`${name}.count`, { label: 'How many' })),
        morePart(sizes(form, name)),
      ];
    },
    note: (row) => weightNote(form, list, `${list}.${row}`),
  });
}

/** What the things of a row weigh: one, and all of them. */
function weightNote(form: FormView, list: string, name: string): string {
  if (form.sound.element !== 'bracket-shelf') return '';
  const load = form.sound.loads?.[form.placeOf(list.replace(/\.things$/, '')) ?? -1];
  const things = load?.kind === 'line' || load?.kind === 'point' ? load.things : undefined;
  const input = things?.[form.placeOf(name) ?? -1];
  if (input?.thing === undefined || input.count === undefined) return '';
  const { thing, count } = input;
  const row = thingOf(thing);
  const weighed = row === undefined ? null : weigh({ ...input, thing, count }, row, form.system);
  if (weighed === null) return '';
  const each = show(weighed.each_kg, 'kg', form.system);
  const all = show(weighed.each_kg * count, 'kg', form.system);
  return `${count} × ${each} = ${all}`;
}

interface Size {
  readonly field: string;
  readonly label: string;
  readonly unit: Unit;
  readonly usual: (thing: Thing) => number | null;
}

const allSizes: readonly Size[] = [
  { field: 'diameter', label: 'Diameter', unit: 'm', usual: (thing) => thing.diameter_m },
  { field: 'width', label: 'Width', unit: 'm', usual: (thing) => thing.width_m },
  { field: 'height', label: 'Height', unit: 'm', usual: (thing) => thing.height_m },
  { field: 'depth', label: 'Depth', unit: 'm', usual: (thing) => thing.depth_m },
  { field: 'wall', label: 'Its own thickness', unit: 'm', usual: (thing) => thing.wall_m },
  { field: 'density', label: 'Density', unit: 'kg/m3', usual: (thing) => thing.density_kgm3 },
  { field: 'fill', label: 'Full to', unit: '1', usual: (thing) => holds(thing) },
  {
    field: 'fillDensity',
    label: 'Density of what it holds',
    unit: 'kg/m3',
    usual: (thing) => thing.fillDensity_kgm3,
  },
];

/** How full a thing usually is; null for a thing that holds nothing. */
function holds(thing: Thing): number | null {
  return thing.shape === 'vessel' || thing.shape === 'bowl' ? thing.fill : null;
}

function sizes(form: FormView, name: string): More {
  const thing = thingOf(form.written(`${name}.thing`));
  const way = form.way(name);
  const by = form.choice(`${name}.by`, {
    label: 'Weight of one',
    options: { size: 'Worked out from its size', weighed: 'Weighed' },
    chosen: way,
    reshapes: true,
  });
  const fields: Field[] =
    way === 'weighed'
      ? [form.text(`${name}.each`, { label: 'One weighs' })]
      : allSizes
          .filter((size) => asks(form, name, size, thing))
          .map((size) => sizeField(form, name, size, thing));
  const said =
    way === 'weighed'
      ? `weighed, ${form.written(`${name}.each`) || 'weight missing'} each`
      : sizeWords(form, name, thing);
  const watched = [...allSizes.map(({ field }) => field), 'each', 'by'].map((field) => `${name}.${field}`);
  return form.more(name, 'Size and weight', sentence(said), watched, [by, ...fields].map(fieldPart));
}

function asks(form: FormView, name: string, size: Size, thing: Thing | undefined): boolean {
  return form.anyWritten(`${name}.${size.field}`) || (thing !== undefined && applies(size, thing));
}

function applies(size: Size, thing: Thing): boolean {
  if (size.field === 'fillDensity') return holds(thing) !== null;
  if (size.field === 'height' && thing.shape === 'disc') return false;
  return size.usual(thing) !== null;
}

function sizeField(form: FormView, name: string, size: Size, thing: Thing | undefined): Field {
  const usual = thing === undefined ? null : size.usual(thing);
  const hint = usual === null ? '' : `Left empty: ${show(usual, size.unit, form.system)}.`;
  const share = size.field === 'fill' ? ' A share from 0 to 1.' : '';
  return form.text(`${name}.${size.field}`, { label: size.label, hint: `${hint}${share}`.trim() });
}

/** The sizes a thing has now, given or usual, in one line. */
function sizeWords(form: FormView, name: string, thing: Thing | undefined): string {
  if (thing === undefined) return 'choose what it is';
  const words = allSizes
    .filter((size) => size.field !== 'fillDensity' && applies(size, thing))
    .map((size) => {
      const usual = size.usual(thing);
      const text = form.written(`${name}.${size.field}`);
      const value = text === '' && usual !== null ? show(usual, size.unit, form.system) : text;
      if (size.field === 'fill') return Number(value) === 0 ? 'empty' : `a share of ${value} full`;
      return `${size.label.toLowerCase()} ${value.replace(/ \(.*\)/, '')}`;
    });
  return words.join(', ');
}
