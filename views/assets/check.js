// What htmx leaves to the page: which region an answer replaces, the address and the Back button, the notes beside the
// fields, and a word when no answer came. Without it the form still works by its Check button.
(() => {
  'use strict';
  const byId = (id) => document.getElementById(id);
  const longestAddress = 48000;
  const opened = () => [...document.querySelectorAll('details[open]')].map(({ id }) => id);
  const written = () => new URLSearchParams(new FormData(byId('form'))).toString();

  let cause = { name: '', typing: false };
  let sent = '';
  let formIsDue = false;
  let entryOf = '';
  let open = [];
  let isApplied = false;
  let turn = 0;

  document.documentElement.classList.add('with-script');

  // A change that brings or removes fields replaces the form too; typing replaces the answer alone.
  document.addEventListener('htmx:config:request', (event) => {
    const { ctx } = event.detail;
    delete ctx.request.headers['HX-Current-URL'];
    // What a check is saved by is no part of the check, and its token belongs in no address.
    if (ctx.request.method === 'GET') {
      for (const name of [...ctx.request.body.keys()]) if (/^(?:token$|save\.)/.test(name)) ctx.request.body.delete(name);
    }
    if (ctx.sourceElement !== byId('form')) return;
    const { type, target } = ctx.sourceEvent;
    formIsDue = formIsDue || type === 'submit' || target.matches('[data-reshapes]');
    cause = { name: target.name ?? '', typing: type === 'input' };
    isApplied = type === 'submit' && byId('answer').contains(ctx.sourceEvent.submitter);
    sent = written();
    // Counts what a page saves in its job, so that a request that was held up can't undo a later one.
    if (byId('form').matches('[hx-post]')) ctx.request.body.set('save.turn', String(++turn));
    ctx.target = byId(formIsDue ? 'work' : 'answer');
    ctx.request.headers['Opened-Checks'] = opened().filter((id) => id.startsWith('check:')).map((id) => id.slice(6)).join();
    ctx.request.headers['HX-Target'] = formIsDue ? 'main#work' : 'section#answer';
  });

  document.addEventListener('htmx:before:request', (event) => {
    const { request } = event.detail.ctx;
    const [path, query = ''] = request.action.split('?');
    if (request.method !== 'GET' || query.length <= longestAddress) return;
    Object.assign(request, { method: 'POST', action: path, body: new URLSearchParams(query) });
  });

  document.addEventListener('htmx:before:swap', (event) => {
    const { ctx } = event.detail;
    const { status } = ctx.response;
    const isAnswer = ctx.sourceElement === byId('form');
    if (status !== 200 && status !== 422) {
      event.preventDefault();
      if (isAnswer) lose(status);
      loseBeside(ctx.sourceElement);
      return;
    }
    if (ctx.sourceElement.id === 'words') byId('words-lost').hidden = true;
    if (!isAnswer) return;
    // Something was written while the new form was on its way: it would be lost, and another answer is coming.
    if (formIsDue && written() !== sent) return event.preventDefault();
    formIsDue = false;
    byId('lost').hidden = true;
    byId('signed-out').hidden = true;
    byId('answer').classList.remove('stale');
  });
  document.addEventListener('htmx:error', (event) => {
    const source = event.detail.ctx?.sourceElement;
    if (source === byId('form')) lose();
    loseBeside(source);
  });
  // What is asked for beside the answer says in its own place that nothing came.
  function loseBeside(source) {
    if (source?.id === 'words') byId('words-lost').hidden = false;
    if (source?.dataset.search === undefined) return;
    const parts = source.querySelector('.more-parts');
    const under = [...parts.childNodes];
    parts.replaceChildren(byId('search-lost').content.cloneNode(true));
    // Asked once more with the form as it is by then; the words that it is being tried stand there again meanwhile.
    parts.querySelector('[data-again]').addEventListener('click', () => {
      source.querySelector('summary').focus();
      parts.replaceChildren(...under);
      source.dispatchEvent(new Event('again'));
    });
  }
  function lose(status) {
    byId('lost').hidden = status === 401;
    byId('signed-out').hidden = status !== 401;
    byId('answer').classList.add('stale');
  }

  // One entry in the history for one change: the first letter typed in a field makes it, the next ones change it.
  document.addEventListener('htmx:before:history:update', (event) => {
    const { history } = event.detail;
    const isSame = history.path === location.pathname + location.search;
    if (isSame) event.preventDefault();
    else if (entryOf !== '' && entryOf === cause.name) history.type = 'replace';
    if (!isSame && cause.typing) entryOf = cause.name;
    if (!cause.typing) entryOf = '';
  });

  // What was opened stays open.
  document.addEventListener('htmx:before:swap', (event) => {
    open = opened();
    if (event.detail.ctx.target?.id === 'boards') open.push('more:boards');
  });
  document.addEventListener('htmx:before:settle', () => {
    for (const id of open) byId(id)?.setAttribute('open', '');
    showNotes();
    announce();
    // A change that was made from the answer leads to what came of it.
    if (isApplied) byId('verdict')?.focus();
    isApplied = false;
  });

  // Notes and errors beside the fields; a field that is being written in is not spoken to.
  function showNotes() {
    for (const item of document.querySelectorAll('#answer .notes li')) {
      const { note, name, errorPlace, error } = item.dataset;
      const field = byId(name);
      if (field && field === document.activeElement && field.matches('input')) continue;
      put(note, item.textContent);
      put(errorPlace, error);
      if (!field) continue;
      if (error === '') field.removeAttribute('aria-invalid');
      else field.setAttribute('aria-invalid', 'true');
    }
  }
  function put(id, text) {
    const place = byId(id);
    if (place && place.textContent !== text) place.textContent = text;
  }
  function announce() {
    const text = document.querySelector('[data-announcement]')?.dataset.announcement;
    if (text) put('announcer', text);
  }

  // A link to a field opens what the field is in.
  document.addEventListener('click', (event) => {
    const link = event.target.closest?.('.problems a[href^="#"], .glance a');
    const place = link && byId(decodeURIComponent(link.hash.slice(1)));
    if (!place) return;
    event.preventDefault();
    for (let inside = place.closest('details'); inside; inside = inside.parentElement.closest('details')) {
      inside.open = true;
    }
    place.focus({ preventScroll: true });
    place.scrollIntoView({ block: 'center' });
  });
})();
