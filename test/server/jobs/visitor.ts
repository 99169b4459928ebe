import type { Served } from '../serve.ts';

/** What a browser does with pages, without scripts: it follows links and sends forms with their hidden fields. */
export interface Visitor {
  readonly get: (path: string, headers?: Record<string, string>) => Promise<Response>;
  readonly page: (path: string) => Promise<string>;
  /** Sends a form with the token of the pages. */
  readonly send: (
    path: string,
    fields?: Readonly<Record<string, string>> | URLSearchParams,
    headers?: Record<string, string>,
  ) => Promise<Response>;
  readonly upload: (path: string, name: string, content: string) => Promise<Response>;
  readonly token: () => Promise<string>;
  /** What it sends to say who it is; empty where nobody signs in. */
  readonly cookie: string;
  /** Begins a job. @returns its address */
  readonly beginJob: (words?: Readonly<Record<string, string>>) => Promise<string>;
  /** Adds the demo check to a job. @returns its address */
  readonly addDemo: (job: string) => Promise<string>;
  /** Sends the form that issues a sheet of a check, as its page fills it in but for some fields. */
  readonly sendIssue: (check: string, changes?: Readonly<Record<string, string>>) => Promise<Response>;
  /** Issues a sheet of a check. @returns its address */
  readonly issue: (check: string, changes?: Readonly<Record<string, string>>) => Promise<string>;
}

export function visitor({ home }: Pick<Served, 'home'>, cookie = ''): Visitor {
  const own: Record<string, string> = cookie === '' ? {} : { cookie };
  const get: Visitor['get'] = (path, headers = {}) =>
    fetch(home + path, { headers: { ...own, ...headers }, redirect: 'manual' });
  const page = async (path: string): Promise<string> => (await get(path)).text();
  const token = async (): Promise<string> =>
    /name="token" value="([0-9a-f]+)"/.exec(await page('/jobs/new'))?.[1] ?? '';
  const send: Visitor['send'] = async (path, fields = {}, headers = {}) => {
    const body = new URLSearchParams(fields);
    body.set('token', await token());
    return fetch(home + path, {
      method: 'POST',
      body,
      headers: { ...own, 'Sec-Fetch-Site': 'same-origin', ...headers },
      redirect: 'manual',
    });
  };
  const beginJob: Visitor['beginJob'] = async (words = { name: 'Kitchen' }) => {
    const response = await send('/jobs', words);
    if (response.status !== 303) throw new Error(`status ${response.status}`);
    return response.headers.get('location') ?? '';
  };
  const addDemo: Visitor['addDemo'] = async (job) =>
    (await send(`${job}/checks`, { from: 'demo' })).headers.get('location') ?? '';
  const sendIssue: Visitor['sendIssue'] = async (check, changes = {}) => {
    const form = formOf(await page(`${check}/issue`));
    for (const [name, text] of Object.entries(changes)) form.set(name, text);
    return send(`${check}/issue`, form);
  };
  const issue: Visitor['issue'] = async (check, changes) => {
    const response = await sendIssue(check, changes);
    if (response.status !== 303) throw new Error(`status ${response.status}`);
    return response.headers.get('location') ?? '';
  };
  const upload: Visitor['upload'] = async (path, name, content) => {
    const body = new FormData();
    body.set('token', await token());
    body.set(name, new Blob([content], { type: 'application/json' }), 'file.json');
    return fetch(home + path, { method: 'POST', body, headers: own, redirect: 'manual' });
  };
  return { get, page, send, upload, token, cookie, beginJob, addDemo, sendIssue, issue };
}

/** The fields of a page's check form, as a browser would send them. */
export function formOf(html: string): URLSearchParams {
  const fields = new URLSearchParams();
  const decode = (text: string): string =>
    text
      .replaceAll('&quot;', '"')
      .replaceAll('&#x27;', "'")
      .replaceAll('&#x3D;', '=')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&');
  for (const [tag] of html.matchAll(/<input type="(?:hidden|text|date)"[^>]*>/g)) {
    const name = / name="([^"]*)"/.exec(tag)?.[1];
    if (name !== undefined) fields.set(decode(name), decode(/ value="([^"]*)"/.exec(tag)?.[1] ?? ''));
  }
  for (const [, name = '', options = ''] of html.matchAll(
    /<select[^>]* name="([^"]*)"[^>]*>([\s\S]*?)<\/select>/g,
  )) {
    fields.set(name, decode(/<option value="([^"]*)" selected/.exec(options)?.[1] ?? ''));
  }
  return fields;
}
