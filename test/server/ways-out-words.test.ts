import { describe, expect, it } from 'vitest';
import { check } from '../../calc/index.ts';
import { waysOutLead, waysOutTitle } from '../../server/check/ways-out-words.ts';
import { demoCheck } from '../../server/demo.ts';

describe('what is said over ways out', () => {
  it('is that of margin where all holds, and of a way out where something fails', () => {
    const close = check({ ...demoCheck, limits: { live: '0.052 in', longTerm: '1/8 in' } });
    expect(close.verdict).toBe('holds');
    expect(close.remedies.length).toBeGreaterThan(0);
    expect(waysOutTitle(close)).toBe('For more margin');
    expect(waysOutLead(close)).toMatch(/^All holds as it is, and nothing has to be changed\. .*more margin/);

    const failing = check({ ...demoCheck, limits: { live: '0.045 in', longTerm: '1/8 in' } });
    expect(failing.verdict).toBe('does-not-hold');
    expect(waysOutTitle(failing)).toBe('Ways out');
    expect(waysOutLead(failing)).not.toContain('margin');

    expect(waysOutLead(check(demoCheck))).toBe('');
  });
});
