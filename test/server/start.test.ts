import express from 'express';
import { describe, expect, it } from 'vitest';
import { listen, stop } from '../../server/listen.ts';
import { readSettings } from '../../server/settings.ts';
import { takenPort } from './serve.ts';

describe('the settings', () => {
  it('are this machine and port 3000 where nothing is said', () => {
    expect(readSettings({})).toEqual({
      ok: true,
      settings: { host: '127.0.0.1', port: 3000, dataFolder: 'data', databaseUrl: '' },
    });
  });

  it.each(['0.0.0.0', '::', '192.168.1.4', 'example.org'])(
    'refuse the host %s: anyone could reach it',
    (host) => {
      const reading = readSettings({ HOST: host });
      expect(reading.ok).toBe(false);
      expect(reading.ok ? '' : reading.message).toContain('no accounts');
    },
  );

  it.each(['abc', '-1', '70000', '3000.5', '3e3'])('refuse the port %s', (port) => {
    const reading = readSettings({ PORT: port });
    expect(reading.ok ? '' : reading.message).toContain('PORT');
  });
});

it('refuses a database that is no PostgreSQL', () => {
  const reading = readSettings({ DATABASE_URL: 'mysql://localhost/jobs' });
  expect(reading.ok ? '' : reading.message).toContain('DATABASE_URL');
});

describe('the server', () => {
  it('says that a port is taken, and what to do', async () => {
    const taken = await takenPort();
    const settings = { host: '127.0.0.1', port: taken.port };
    await expect(listen(express(), settings)).rejects.toThrow(`Port ${taken.port} is taken`);
    taken.close();
  });

  it('stops when it is told to', async () => {
    const server = await listen(express(), { host: '127.0.0.1', port: 0 });
    await stop(server);
    expect(server.listening).toBe(false);
  });
});
