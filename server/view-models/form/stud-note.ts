import { show } from '../../../shared/quantity/index.ts';
import type { FormView } from './form-view.ts';

const onIt_m = 0.0005;

/** Where a bracket is beside the studs: on one, or by how much it misses the nearest. */
export function studNote(form: FormView, name: string): string {
  const { sound } = form;
  const place = form.placeOf(name);
  if (sound.element !== 'bracket-shelf' || place === undefined) return '';
  const position = sound.brackets?.positions?.[place];
  const stud = position === undefined ? undefined : nearestStud(form, position);
  if (position === undefined || stud === undefined) return '';
  const at = show(stud, 'm', form.system);
  const miss = Math.abs(position - stud);
  if (miss < onIt_m) return 'On the centre line of a stud.';
  const side = position < stud ? 'left' : 'right';
  return `${show(miss, 'm', form.system)} ${side} of the stud at ${at}.`;
}

function nearestStud(form: FormView, position: number): number | undefined {
  if (form.sound.element === 'counter-overhang' || form.sound.element === 'counter-run') return undefined;
  const framing = form.sound.wall?.framing ?? 'wood-stud';
  const studs = form.sound.wall?.studs;
  if (studs === undefined || (framing !== 'wood-stud' && framing !== 'metal-stud')) return undefined;
  const known = 'at' in studs ? studs.at : undefined;
  if (known !== undefined) {
    const places = known.filter((stud) => stud !== undefined);
    return places.toSorted((a, b) => Math.abs(a - position) - Math.abs(b - position))[0];
  }
  if (!('first' in studs) || studs.first === undefined || studs.spacing === undefined) return undefined;
  return studs.first + Math.round((position - studs.first) / studs.spacing) * studs.spacing;
}
