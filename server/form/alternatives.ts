import { written, type Texts } from './texts.ts';

/**
 * Groups in which some fields are given in place of others: pattern of the group → way of giving it → the fields of
 * that way. `<group>.by` in a form says which way is meant; the fields of the other ways are then idle.
 */
const alternatives: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  board: { plain: [], box: ['box'], layers: ['layers'] },
  'brackets.capacity': { allowable: ['allowable'], test: ['ultimate', 'factor'] },
  'loads.*': { amount: ['amount'], total: ['total'], things: ['things'] },
  'loads.*.things.*': {
    size: ['diameter', 'width', 'height', 'depth', 'wall', 'density', 'fill', 'fillDensity'],
    weighed: ['each'],
  },
};

/** The pattern of a field or group: its name with `*` for each row number. */
export function patternOf(name: string): string {
  return name.replace(/\.\d+(?=\.|$)/g, '.*');
}

/** The fields of a group that the way it is given leaves idle; none where the form doesn't say how it is given. */
export function idleFields(texts: Texts, group: string): ReadonlySet<string> {
  const ways = alternatives[patternOf(group)];
  const by = written(texts, `${group}.by`);
  if (ways?.[by] === undefined) return new Set();
  return new Set(Object.entries(ways).flatMap(([way, fields]) => (way === by ? [] : fields)));
}

/** The first field of the way a form says a group is given; empty where it doesn't say, or that way has none. */
export function fieldOfWay(texts: Texts, group: string): string {
  return alternatives[patternOf(group)]?.[written(texts, `${group}.by`)]?.[0] ?? '';
}

/** Whether anything is written in a field or in a part of it. */
type IsWritten = (name: string) => boolean;

/** The way a group is given: as the form says, or else by what is written in it. */
export function wayOf(texts: Texts, group: string, isWritten: IsWritten): string {
  const ways = alternatives[patternOf(group)] ?? {};
  const by = written(texts, `${group}.by`);
  return ways[by] === undefined ? likelyWay(group, isWritten) : by;
}

/** The way a group is given by what is written in it alone: of two the later, which overrides; of none the first. */
export function likelyWay(group: string, isWritten: IsWritten): string {
  const ways = Object.entries(alternatives[patternOf(group)] ?? {});
  const inUse = ways.findLast(([, fields]) => fields.some((field) => isWritten(`${group}.${field}`)));
  return inUse?.[0] ?? ways[0]?.[0] ?? '';
}
