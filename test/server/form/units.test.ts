import { describe, expect, it } from 'vitest';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { readForm, switchUnits, textsOf, withUnit } from '../../../server/form/index.ts';
import { understood } from '../../../server/view-models/form/understood.ts';
import { parseQuantity } from '../../../shared/quantity/index.ts';

describe('a number without a unit', () => {
  it.each([
    ['96', 'inch-pound', '96 in'],
    ['1-1/2', 'inch-pound', '1-1/2 in'],
    ['3/4', 'inch-pound', '3/4 in'],
    ["8' 4-1/2", 'inch-pound', "8' 4-1/2 in"],
    ['8 ft 4', 'metric', '8 ft 4 in'],
    ['600', 'metric', '600 mm'],
    ['2.4 m', 'inch-pound', '2.4 m'],
    ['eight', 'inch-pound', 'eight'],
  ] as const)('takes the one beside its field: %s in %s', (text, system, expected) => {
    expect(withUnit(text, 'length', system)).toBe(expected);
  });

  it('keeps its meaning when the units are switched', () => {
    const before = textsOf(
      'units=inch-pound&board.length=96&board.depth=235+mm&loads.0.kind=line&loads.0.amount=18',
    );
    const sent = new Map([...before, ['units', 'metric'], ['was', 'inch-pound']]);
    const switched = switchUnits(sent);
    expect(switched.get('board.length')).toBe('96 in');
    expect(switched.get('board.depth')).toBe('235 mm');
    expect(switched.get('loads.0.amount')).toBe('18 lbf/ft');
    const [metric, inches] = [readForm(switched).document, readForm(before).document];
    expect({ ...metric, units: '' }).toEqual({ ...inches, units: '' });
  });
});

describe('an empty field', () => {
  it('is a field left out, and an empty row no row', () => {
    const { reading } = checkInPlace(
      textsOf(
        'board.length=96&board.nosing.height=&brackets.positions.0=8&brackets.positions.1=+&brackets.positions.2=40',
      ),
    );
    expect(reading.document['board']).toEqual({ length: '96 in' });
    expect(reading.document['brackets']).toEqual({ positions: ['8 in', '40 in'] });
    expect(reading.nameAt.get('/brackets/positions/1')).toBe('brackets.positions.2');
  });
});

describe('what was understood', () => {
  it.each([
    ['100-1/2', 'inch-pound', '= 8 ft 4-1/2 in'],
    ['2.4 m', 'metric', '= 2400 mm'],
    ['96 in', 'inch-pound', ''],
    ['1-1/2', 'inch-pound', '= 1-1/2 in'],
    ['nonsense', 'inch-pound', ''],
  ] as const)('of %s, in %s', (text, system, expected) => {
    expect(understood(text, 'length', system)).toBe(expected);
  });

  it('never says another length than was read', () => {
    for (const text of ['24', '23-15/16', '36 ', '11.999', '8 ft', '95-31/32', '2438.4 mm']) {
      const note = understood(text, 'length', 'inch-pound').replace('= ', '').replace(/ \(.*/, '');
      if (note === '' || note.startsWith('under')) continue;
      const [read, said] = [parseQuantity(text, 'length', 'in'), parseQuantity(note, 'length')];
      expect(read.ok && said.ok && Math.abs(read.value - said.value) < 0.0009, text).toBe(true);
    }
  });
});
