import { describe, expect, it } from 'vitest';
import { check } from '../../../calc/index.ts';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { changesTo, fillForm, readForm, setFields, textsOf } from '../../../server/form/index.ts';
import { studShelf } from '../../calc/layout/documents.ts';

const thin = studShelf({ board: { thickness: '1 in' } });

describe('fields set by a change', () => {
  it('are written, those that are empty are taken out, and the others stay as they were written', () => {
    const texts = textsOf('board.length=8 ft&board.depth=10&brackets.positions.0=1&brackets.positions.1=2');
    const changed = setFields(texts, 'board.depth=11+in&brackets.positions.1=');
    expect([...changed]).toEqual([
      ['board.length', '8 ft'],
      ['board.depth', '11 in'],
      ['brackets.positions.0', '1'],
    ]);
  });

  it('count in a part of the form that was closed or given in another way', () => {
    const texts = textsOf(
      'board.nosing.by=none&loads.0.kind=line&loads.0.by=things&loads.0.things.0.thing=jug',
    );
    const changed = setFields(
      texts,
      'board.nosing.height=2+in&loads.0.amount=3+lbf/ft&loads.0.things.0.thing=',
    );
    expect(readForm(changed).document).toMatchObject({
      board: { nosing: { height: '2 in' } },
      loads: [{ kind: 'line', amount: '3 lbf/ft' }],
    });
  });

  it('change nothing where one of them is no field', () => {
    const texts = textsOf('board.length=8 ft');
    expect(setFields(texts, 'board.length=9+ft&board.colour=red')).toBe(texts);
  });
});

describe('the change to another document', () => {
  it('is all that differs, and makes the form say that document', () => {
    const texts = new Map(fillForm(thin)).set('board.length', '96').set('title', ' My shelf ');
    const { remedies } = check(readForm(texts).document);
    expect(remedies.length).toBeGreaterThan(0);
    for (const { document } of remedies) {
      const changes = changesTo(texts, document);
      if (changes === null) throw new Error('the form can be changed');
      const pressed = checkInPlace(new Map(texts).set('do', `set:${changes}`));
      expect(pressed.at).toBe('verdict');
      expect(pressed.texts.get('board.length')).toBe('96');
      expect(pressed.reading.document).toEqual(document);
    }
  });

  it('takes out rows whatever the page remembers of their choices', () => {
    const bracket = (at: string) => ({ kind: 'bracket' as const, at, to: '34 in', allowable: '500 lbf' });
    const propped = { ...startChecks['counter-overhang'], props: ['2 in', '36 in', '70 in'].map(bracket) };
    const fewer = { ...propped, props: ['2 in', '70 in'].map(bracket) };
    const texts = new Map(fillForm(propped));
    // What the page sends along of each row: what its kind was when it was made, and fields left empty.
    for (const row of [0, 1, 2]) texts.set(`props.${row}.was`, 'bracket').set(`props.${row}.gives`, '');
    const changes = changesTo(texts, fewer) ?? '';
    const changed = setFields(texts, changes);
    expect(readForm(changed).document).toEqual(fewer);
    expect([...changed.keys()].filter((name) => name.startsWith('props.2.'))).toEqual([]);
  });

  it('is none where it is longer than a button carries', () => {
    expect(changesTo(fillForm(thin), { ...thin, title: 'x'.repeat(1_950) })).toBeNull();
  });
});
