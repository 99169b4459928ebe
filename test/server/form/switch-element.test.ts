import { describe, expect, it } from 'vitest';
import { checkInPlace } from '../../../server/check/in-place.ts';
import { fillForm, readForm, switchElement } from '../../../server/form/index.ts';
import { startChecks } from '../../../server/start-checks.ts';
import { shelf } from '../fixtures/shelf.ts';

/** A form as a browser sends it after another element was chosen in it. */
function turned(document: object, was: string, now: string): Map<string, string> {
  return new Map([...fillForm(document), ['element', now], ['element.was', was]]);
}

describe('another thing to check, chosen in the form', () => {
  const fixing = switchElement(turned(shelf, 'bracket-shelf', 'wall-fixing'));

  it('takes along title, wall, plate and screws, and starts with loads of its own', () => {
    const { document } = readForm(fixing);
    expect(document).toMatchObject({
      element: 'wall-fixing',
      title: shelf.title,
      plate: shelf.brackets.plate,
      screws: shelf.brackets.screws,
      wall: { framing: shelf.wall?.framing, coverings: shelf.wall?.coverings },
      loads: startChecks['wall-fixing'].loads,
    });
  });

  it('leaves nothing behind that the new form has no field for', () => {
    expect([...fixing.keys()].filter((name) => /^(board|brackets|limits|element\.was)/.test(name))).toEqual(
      [],
    );
  });

  it('and back: a shelf to start from, with the same wall, plate and screws', () => {
    const back = new Map([...fixing, ['element', 'bracket-shelf'], ['element.was', 'wall-fixing']]);
    expect(readForm(switchElement(back)).document).toMatchObject({
      board: startChecks['bracket-shelf'].board,
      brackets: { plate: shelf.brackets.plate, screws: shelf.brackets.screws },
    });
  });

  it('a wall, plate or screws that were not described begin anew', () => {
    const undescribed = turned(shelf, 'bracket-shelf', 'wall-fixing');
    for (const group of ['wall', 'brackets.plate', 'brackets.screws']) undescribed.set(`${group}.by`, 'none');
    const { plate, screws } = startChecks['wall-fixing'];
    expect(readForm(switchElement(undescribed)).document).toMatchObject({ plate, screws });
  });

  it('changes nothing where it is the same as before', () => {
    const texts = fillForm(shelf);
    expect(switchElement(new Map([...texts, ['element.was', 'bracket-shelf']]))).toEqual(texts);
  });

  it('an address that names a field of another element is told so', () => {
    const { answer } = checkInPlace(
      new Map([...fillForm(startChecks['wall-fixing']), ['board.length', '8 ft']]),
    );
    expect(answer).toMatchObject({ ok: false });
  });
});
