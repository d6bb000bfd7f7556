// Brew day in the browser. A tap is first written into the outbox, which a reload, a locked phone or a dead server leaves as it is;
// then it is sent, in order, until the book says that it has it. What is shown is the book's log with the outbox on top.
const root = document.querySelector('.brew');
if (root) {
  brew(root);
}

function brew(root) {
  const gyle = root.dataset.gyle, api = `api/gyles/${gyle}`, key = `gylebook-outbox-${gyle}`, seen = `gylebook-log-${gyle}`;
  const $ = selector => root.querySelector(selector), all = selector => [...root.querySelectorAll(selector)];
  const planned = all('section[data-step]').map(section => section.dataset.step);
  let log = newest(JSON.parse(document.getElementById('brew-log').textContent), stored(seen) ?? []);
  let outbox = stored(key) ?? [];
  let at = null, shown = null, sending = false, locked = false, bell = null, rings = new Set();

  // ---- What happened: the log folded, as the book folds it.
  function fold() {
    const entries = [...log, ...outbox.filter(tap => !log.some(entry => entry.id === tap.id))];
    const undone = new Set();
    for (const entry of [...entries].reverse()) {
      if (entry.kind === 'undone' && !undone.has(entry.id)) {
        undone.add(entry.undoes);
      }
    }
    const counts = entries.filter(entry => !undone.has(entry.id));
    const added = counts.filter(entry => entry.kind === 'added');
    const keys = planned.flatMap(step => [step, ...added.filter(own => own.step === step).map(ownKey)])
      .concat(added.filter(own => !planned.includes(own.step)).map(ownKey));
    const last = (step, kinds) => counts.findLast(entry => entry.step === step && kinds.includes(entry.kind));
    return {
      counts, added, keys,
      state: step => ({ done: 'done', skipped: 'skipped' })[last(step, ['done', 'skipped', 'reopened'])?.kind] ?? 'open',
      when: step => last(step, ['done', 'skipped', 'reopened'])?.at,
      tick: item => counts.findLast(entry => entry.kind === 'ticked' && entry.item === item),
      timer: step => { const timed = last(step, ['timed', 'heard', 'done', 'skipped']); return timed?.kind === 'timed' ? new Date(timed.until) : null; },
    };
  }
  const ownKey = own => `own-${own.id.replaceAll('-', '')}`;

  // ---- The outbox.
  function tap(kind, more = {}) {
    outbox = stored(key) ?? outbox;
    const last = outbox.at(-1) ?? log.at(-1);
    const now = Math.max(Date.now(), last ? Date.parse(last.at) + 1 : 0);
    const entry = { id: newId(), at: new Date(now).toISOString(), kind, ...more };
    outbox.push(entry);
    keep();
    draw();
    send();
    return entry.id;
  }

  function keep() {
    store(key, outbox);
    store(seen, log);
  }

  async function send() {
    if (sending || outbox.length === 0) {
      return;
    }
    sending = true;
    try {
      const batch = outbox.slice(0, 100);
      const answer = await ask(`${api}/log`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(batch), keepalive: true });
      const { taken, refused, log: now } = await answer.json();
      // Other taps of this page's other tabs may have come into the store meanwhile.
      outbox = (stored(key) ?? outbox).filter(entry => !taken.includes(entry.id) && !refused.some(no => no.id === entry.id));
      log = now;
      keep();
      refused.forEach(no => told(no.id, no.why));
      taken.forEach(id => told(id, ''));
      if (batch.some(entry => entry.kind === 'read' || entry.undoes)) {
        forecast();
      }
    } catch (gone) {
      // It stays in the outbox and goes next time.
    }
    sending = false;
    draw();
    if (outbox.length > 0 && navigator.onLine) {
      setTimeout(send, 2000);
    }
  }

  async function refresh() {
    try {
      log = await (await ask(`${api}/log`)).json();
      keep();
      draw();
    } catch (gone) {
      // Asked again soon.
    }
    send();
  }

  async function ask(url, options = {}) {
    const answer = await fetch(url, { ...options, signal: AbortSignal.timeout(15000) });
    locked = answer.status === 401 || new URL(answer.url).pathname === '/enter';
    if (locked) {
      draw();
    }
    if (locked || !answer.ok) {
      throw new Error(answer.status);
    }
    return answer;
  }

  async function forecast() {
    try {
      $('[data-forecast]').innerHTML = await (await ask(`gyles/${gyle}/brew/forecast`)).text();
    } catch (gone) {
      // The numbers stay as they were; the next word from the book brings them.
    }
  }

  // ---- What is shown.
  function draw() {
    const now = fold();
    own(now);
    at = at !== null && now.keys.includes(at) ? at : now.keys.find(step => now.state(step) === 'open') ?? null;
    all('.steps > section').forEach(section => { section.hidden = (section.dataset.step ?? '') !== (at ?? '') || (section.matches('[data-end]') && at !== null); });
    const section = here();
    for (const box of all('input[data-item]')) {
      box.checked = Boolean(now.tick(box.dataset.item));
    }
    const place = now.keys.indexOf(at);
    $('[data-at]').textContent = at === null ? now.keys.length : place + 1;
    $('[data-of]').textContent = now.keys.length;
    list(now);
    const next = now.keys.slice(place + 1).find(step => now.state(step) === 'open');
    const go = $('[data-go]'), waits = section?.dataset.minutes && !now.timer(at) && !now.counts.some(entry => entry.step === at && entry.kind === 'heard') && now.state(at) === 'open';
    go.textContent = at === null ? 'To the gyle' : waits ? `Start ${Math.round(section.dataset.minutes)} min` : now.state(at) === 'open' ? (next ? `Done: next, ${title(next)}` : 'Done') : next ? `Next: ${title(next)}` : 'Close';
    go.dataset.does = at === null ? 'leave' : waits ? 'start' : 'done';
    $('[data-back]').disabled = place === 0;
    $('[data-kept]').textContent = outbox.length ? `Waiting ${locked ? 'for the password' : 'to be sent'} (${outbox.length})` : locked ? 'Waiting for the password' : 'Saved in the book';
    $('.kept').classList.toggle('sent', outbox.length === 0 && !locked);
    $('[data-send]').hidden = outbox.length === 0 && !locked;
    $('[data-send]').textContent = locked ? 'Say it' : 'Send';
    write(now);
    clocks(now);
    if (shown !== at) {
      shown !== null && (scrollTo(0, 0), section?.querySelector('h1')?.focus({ preventScroll: true }));
      shown = at;
    }
  }
  const here = () => all('.steps > section').find(section => !section.hidden);
  const title = step => all('.steps > section').find(section => section.dataset.step === step)?.dataset.title ?? step;

  function own(now) {
    for (const entry of now.added) {
      if (!all('.steps > section').some(section => section.dataset.step === ownKey(entry))) {
        const made = $('template[data-own]').content.firstElementChild.cloneNode(true);
        made.dataset.step = ownKey(entry);
        made.dataset.title = entry.what.length > 40 ? `${entry.what.slice(0, 39)}…` : entry.what;
        made.querySelector('.say').textContent = entry.what;
        $('.steps').append(made);
      }
    }
  }

  function list(now) {
    $('[data-list]').replaceChildren(...now.keys.map(step => {
      const row = document.createElement('li'), button = document.createElement('button'), note = document.createElement('b');
      button.type = 'button';
      button.textContent = title(step);
      button.addEventListener('click', () => { at = step; $('details.all').open = false; draw(); });
      const state = now.state(step);
      note.textContent = state === 'done' ? `✓ ${clock(now.when(step))}` : state === 'skipped' ? 'left out' : step === at ? 'now' : '';
      row.classList.toggle('at', step === at);
      row.append(button, note);
      return row;
    }));
  }

  function write(now) {
    $('[data-log]').replaceChildren(...[...now.counts].filter(entry => entry.kind !== 'undone').reverse().slice(0, 40).map(entry => {
      const row = document.createElement('li'), words = document.createElement('span'), back = document.createElement('button');
      const waits = outbox.some(own => own.id === entry.id);
      words.textContent = `${clock(entry.at)} ${said(entry)}${waits ? ' (waiting)' : ''}`;
      back.type = 'button';
      back.textContent = 'Take back';
      back.addEventListener('click', () => tap('undone', { undoes: entry.id, what: '' }));
      row.append(words, back);
      return row;
    }));
  }

  function said(entry) {
    const of = title(entry.step);
    switch (entry.kind) {
      case 'read': { try { const told = typeof entry.what === 'string' && entry.what ? JSON.parse(entry.what) : entry.reading ?? {}; return `read at ${told.at}: ${told.gravity ?? told.volume ?? (told.ph !== undefined ? `pH ${told.ph}` : told.temperature)}`; } catch { return 'read'; } }
      case 'done': return `${of}: done`;
      case 'skipped': return `${of}: left out${entry.what ? `, ${entry.what}` : ''}`;
      case 'reopened': return `${of}: taken up again`;
      case 'ticked': return `in: ${entry.what}`;
      case 'timed': return `${of}: clock until ${clock(entry.until)}`;
      case 'heard': return `${of}: clock heard`;
      case 'added': return `added: ${entry.what}`;
      default: return entry.what;
    }
  }

  // ---- Clocks: a deadline is a moment, so that a phone that slept an hour still tells the truth.
  function clocks(now) {
    let ringing = null;
    for (const step of now.keys) {
      const until = now.timer(step), section = all('.steps > section').find(one => one.dataset.step === step);
      const face = section?.querySelector('.clock');
      const left = until ? Math.round((until - Date.now()) / 1000) : null;
      if (face) {
        const seconds = left ?? section.dataset.minutes * 60, size = Math.abs(seconds);
        face.textContent = `${seconds < 0 ? '+' : ''}${Math.floor(size / 60)}:${String(Math.floor(size % 60)).padStart(2, '0')}`;
        face.classList.toggle('over', left !== null && left <= 0);
        section.querySelector('.until').textContent = until ? `until ${clock(until)}` : '';
      }
      if (left !== null && left <= 0) {
        ringing = { step, until };
      }
    }
    const note = $('[data-rung]');
    note.hidden = !ringing;
    if (ringing) {
      note.dataset.step = ringing.step;
      note.querySelector('span').textContent = `${title(ringing.step)}: time is up since ${clock(ringing.until)}`;
      ring(`${ringing.step} ${ringing.until}`);
    }
  }
  setInterval(() => clocks(fold()), 500);

  function ring(which) {
    if (rings.has(which)) {
      return;
    }
    rings.add(which);
    beep();
    navigator.vibrate?.([400, 200, 400, 200, 400]);
  }

  function beep() {
    if (bell?.state !== 'running') {
      return;
    }
    for (let i = 0; i < 6; i++) {
      const tone = bell.createOscillator(), loud = bell.createGain();
      tone.frequency.value = 880;
      loud.gain.value = 0.4;
      tone.connect(loud).connect(bell.destination);
      tone.start(bell.currentTime + i * 0.6);
      tone.stop(bell.currentTime + i * 0.6 + 0.3);
    }
  }

  // ---- Taps.
  root.addEventListener('click', event => {
    const on = selector => event.target.closest?.(selector);
    if (on('[data-go]')) {
      forward(on('[data-go]').dataset.does);
    } else if (on('[data-back]')) {
      const now = fold(), place = at === null ? now.keys.length : now.keys.indexOf(at);
      at = now.keys[Math.max(0, place - 1)];
      draw();
    } else if (on('[data-skip]')) {
      at !== null && tap('skipped', { step: at, what: take('#note') }) && step();
    } else if (on('[data-note]')) {
      const what = take('#note');
      what && tap('said', { step: at, what });
    } else if (on('[data-add]')) {
      const what = take('#note');
      what && tap('added', { step: at ?? planned.at(-1), what });
    } else if (on('[data-mend]')) {
      tap('added', { step: at ?? planned.at(-1), what: on('[data-mend]').dataset.mend });
      on('.mend').remove();
    } else if (on('[data-leave]')) {
      tap('said', { step: at, what: 'left as it is' });
      on('.mend').remove();
    } else if (on('[data-heard]')) {
      tap('heard', { step: $('[data-rung]').dataset.step, what: '' });
    } else if (on('[data-send]')) {
      locked ? location.assign(`enter?back=${encodeURIComponent(location.pathname)}`) : send();
    } else if (on('[data-bell]')) {
      bell ??= new AudioContext();
      bell.resume().then(() => { beep(); $('[data-bell]').textContent = 'Bell on'; $('[data-bell]').setAttribute('aria-pressed', 'true'); });
      awake();
    } else if (on('[data-by]')) {
      const button = on('[data-by]'), field = button.parentElement.querySelector('input'), by = Number(button.dataset.by);
      const from = Number((field.value || field.placeholder || '0').replace(',', '.'));
      field.value = Number.isFinite(from) ? (from + by).toFixed((button.dataset.by.split('.')[1] ?? '').length) : field.value;
    }
  });

  root.addEventListener('change', event => {
    const box = event.target.closest?.('input[data-item]');
    if (box) {
      const before = fold().tick(box.dataset.item);
      box.checked ? tap('ticked', { step: at, item: box.dataset.item, what: box.dataset.what }) : before && tap('undone', { undoes: before.id, what: '' });
    }
  });

  root.addEventListener('submit', event => {
    event.preventDefault();
    const form = event.target, value = form.elements.value.value.trim(), answer = form.querySelector('.answer');
    if (!value) {
      answer.textContent = 'Type what the instrument shows.';
      return;
    }
    const withUnit = (text, unit) => unit && /^[\d.,+-]+$/.test(text) ? `${text} ${unit}` : text;
    const what = form.dataset.what, reading = { at: form.dataset.read };
    reading[what] = what === 'ph' ? Number(value.replace(',', '.')) : withUnit(value, form.dataset.unit);
    const warm = form.elements.temperature?.value.trim();
    warm && (reading.temperature = withUnit(warm, form.dataset.degrees));
    form.elements.instrument && (reading.instrument = form.elements.instrument.value);
    form.elements.checked.checked && (reading.checked = true);
    form.elements.sure.checked && (reading.sure = true);
    const id = tap('read', { reading });
    form.dataset.sent = id;
    answer.textContent = 'Written down.';
  });

  // What was typed stays in its field until the book has it.
  function told(id, why) {
    const form = all('form.read').find(one => one.dataset.sent === id);
    if (form) {
      form.querySelector('.answer').textContent = why ? `Not taken: ${why}` : 'In the book.';
      why || form.reset();
    }
  }

  function forward(does) {
    if (does === 'leave') {
      location.assign(`gyles/${gyle}`);
    } else if (does === 'start') {
      tap('timed', { step: at, until: new Date(Date.now() + here().dataset.minutes * 60000).toISOString(), what: title(at) });
    } else {
      const now = fold();
      now.state(at) === 'open' && tap('done', { step: at, what: '' });
      step();
    }
    awake();
  }

  function step() {
    const now = fold();
    at = now.keys.slice(now.keys.indexOf(at) + 1).find(one => now.state(one) === 'open') ?? now.keys.find(one => now.state(one) === 'open') ?? null;
    draw();
  }

  function take(selector) {
    const field = $(selector), what = field.value.trim();
    field.value = '';
    return what;
  }

  // ---- The device.
  let lock = null;
  async function awake() {
    try {
      lock = lock && !lock.released ? lock : await navigator.wakeLock?.request('screen');
    } catch (refused) {
      // Low battery, or the page is hidden: asked for again at the next tap.
    }
  }
  $('[data-insecure]').hidden = isSecureContext;
  if (isSecureContext && 'serviceWorker' in navigator) {
    navigator.serviceWorker.register('brew-worker.js', { scope: '/gyles/' }).catch(() => { });
  }

  addEventListener('online', refresh);
  addEventListener('pageshow', refresh);
  document.addEventListener('visibilitychange', () => document.hidden ? send() : (refresh(), lock?.released && awake()));
  addEventListener('storage', event => { if (event.key === key) { outbox = stored(key) ?? []; draw(); } });
  let changes = null;
  function listen() {
    changes = new EventSource(`${api}/changes`);
    changes.addEventListener('open', () => { refresh(); keepPage(); });
    changes.addEventListener('changed', async () => { const read = log.filter(entry => entry.kind === 'read').length; await refresh(); log.filter(entry => entry.kind === 'read').length !== read && forecast(); });
    changes.onerror = () => { if (changes.readyState === EventSource.CLOSED) { setTimeout(listen, 3000); } };
  }
  listen();
  setInterval(() => outbox.length ? send() : refresh(), 15000);
  draw();
  send();
}

// The first visit, too, leaves all that a visit without a network needs; what a broken way kept back is asked for when it is open again.
async function keepPage() {
  if (isSecureContext && 'serviceWorker' in navigator) {
    const parts = [...document.querySelectorAll('link[rel=stylesheet], link[rel=icon], script[src]')].map(part => part.href ?? part.src);
    (await navigator.serviceWorker.ready).active.postMessage({ keep: [location.pathname, ...parts] });
  }
}

// The page may be an old copy that a browser kept, and the store may hold a newer log; or the other way round.
function newest(one, other) {
  return other.length > one.length ? other : one;
}

function stored(key) {
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function store(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // No room, or none allowed: what is tapped still goes to the book while the page is open.
  }
}

// A UUID from random numbers: over plain http there is no randomUUID.
function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map(byte => byte.toString(16).padStart(2, '0')).join('');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}

function clock(instant) {
  return new Date(instant).toTimeString().slice(0, 5);
}
