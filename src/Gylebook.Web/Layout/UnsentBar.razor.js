// What is typed stays in the browser until the server says that it is stored: through a cut connection, a restart of
// the server, a reload. One mechanism for all fields of all pages; it knows no editor. See docs/decisions/0015-typed-text.md.
// A field may help with attributes: data-field, its name in the file; data-stored, what the book holds there;
// data-kept, its text is sent by a button, so it is not owed to the book.
// A part of a page with data-sends wants kept text sent after a reload; elsewhere it is offered beside what is stored.
const shelf = 'gylebook.typed|';
const tab = sessionStorage['gylebook.tab'] ??= Date.now().toString(36) + Math.random().toString(36).slice(2);
const patienceMs = 2500;
const againMs = 2000;
const touchMs = 20000;
const orphanMs = 180000;
const searching = '[type=search], [role=combobox]';
const typing = 'input:not([type=button]):not([type=submit]):not([type=password]):not([type=file]), textarea, select';

const notes = new Map();
const entered = new WeakMap();
let page = null;
let isDown = false;
let asking = 0;
let last = 0;
let timer = 0;
let path = here();

function here() {
  return location.pathname.slice(new URL(document.baseURI).pathname.length);
}

// Which field

const isField = target => target instanceof HTMLElement && target.matches(typing) && !target.matches(searching) && target.closest('main') !== null;
const fields = () => [...document.querySelectorAll('main :is(input, textarea, select)')].filter(isField);
const groupOf = radio => [...document.querySelectorAll('main input[type=radio]')].filter(other => other.name === radio.name);

function wordsOf(element) {
  const words = element.cloneNode(true);
  words.querySelectorAll('select, input, textarea, svg').forEach(inner => inner.remove());
  return words.textContent.replace(/\s+/g, ' ').trim();
}

function labelOf(field) {
  if (field.type === 'radio') {
    const legend = field.closest('fieldset')?.querySelector('legend');
    return legend ? wordsOf(legend) : field.name;
  }
  return field.getAttribute('aria-label') ?? [...(field.labels ?? [])].map(wordsOf).join(' ');
}

// The named parts of the page a field stands in, so that "Volume" of the bottle is not "Volume" of the keg.
function roomOf(field) {
  const rooms = [];
  for (let part = field.parentElement; part && part.tagName !== 'MAIN'; part = part.parentElement) {
    if (part.matches('section, fieldset')) {
      const name = part.querySelector(part.tagName === 'FIELDSET' ? 'legend' : 'h2, h3');
      rooms.unshift(name ? wordsOf(name) : '');
    }
  }
  return rooms.join('/');
}

function nameOf(field) {
  const own = field.dataset.field ?? (/^field-\d+$/.test(field.id) ? '' : field.id);
  return [roomOf(field), own, labelOf(field), field.type].join('|');
}

// Equal names are told apart by their order.
function idOf(field) {
  const name = nameOf(field);
  const equals = fields().filter(other => nameOf(other) === name && (other.type !== 'radio' || other === groupOf(other)[0]));
  return `${name}|${Math.max(0, equals.indexOf(field.type === 'radio' ? groupOf(field)[0] : field))}`;
}

const fieldOf = id => fields().find(field => id.startsWith(nameOf(field)) && idOf(field) === id);

// What it says

function textOf(field) {
  if (field.type === 'checkbox') {
    return field.checked ? 'yes' : 'no';
  }
  if (field.type === 'radio') {
    const chosen = groupOf(field).find(radio => radio.checked);
    return chosen ? [...chosen.labels].map(wordsOf).join(' ') : '';
  }
  return field.value;
}

const storedOf = field => field.dataset.stored ?? textOf(field);

function spoken(field, text) {
  const option = field?.tagName === 'SELECT' && [...field.options].find(choice => choice.value === text);
  return option ? wordsOf(option) : text;
}

// As if it were typed again: the editor does with it what it always does.
function type(field, text) {
  let target = field;
  if (field.type === 'radio') {
    target = groupOf(field).find(radio => [...radio.labels].map(wordsOf).join(' ') === text) ?? field;
    target.checked = true;
  } else if (field.type === 'checkbox') {
    field.checked = text === 'yes';
  } else {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }
  target.dispatchEvent(new Event('change', { bubbles: true }));
}

// Notes, in memory and on the shelf

function put(note) {
  note.at = Date.now();
  notes.set(note.key, note);
  try {
    const { field, ...kept } = note;
    localStorage.setItem(shelf + note.key, JSON.stringify(kept));
  } catch {
    // No room, or the browser keeps nothing: the note lives as long as the page.
  }
}

function drop(note) {
  notes.delete(note.key);
  try {
    localStorage.removeItem(shelf + note.key);
  } catch {
    // As above.
  }
  if (note.field?.isConnected) {
    entered.set(note.field, textOf(note.field));
    note.field.removeAttribute('data-unsent');
  }
}

function noted(event) {
  const field = event.target;
  if (!isField(field)) {
    return;
  }
  const id = idOf(field);
  const key = [tab, here(), id].join('|');
  const note = notes.get(key) ?? {
    key, id, tab, path: here(), label: labelOf(field), before: field.dataset.stored ?? entered.get(field) ?? '', sent: [],
    since: Date.now(), isKept: field.hasAttribute('data-kept'),
  };
  note.text = textOf(field);
  Object.assign(note, { field, seq: ++last, isOffered: false, isPlaced: true });
  if (note.sent.at(-1) !== note.text) {
    note.sent = [...note.sent.slice(-30), note.text];
  }
  if (note.isKept && note.text === '') {
    drop(note);
  } else {
    put(note);
  }
  soon();
}

// What the book holds is what we saw when we began to type, or a text of ours that arrived without our knowing.
const isOurs = (note, stored) => stored === note.before || note.sent.some(text => text !== '' && isSame(text, stored));
const isSame = (text, stored) => stored === text || stored.startsWith(`${text.trim()} `) || stored.startsWith(`${text.trim()}\u00A0`);

// Asking what is stored

const owed = () => [...notes.values()].filter(note => !note.isKept && !note.isOffered && note.isPlaced);

function soon() {
  show();
  clearTimeout(timer);
  timer = setTimeout(ask, 30);
}

async function ask() {
  const waiting = owed().filter(note => note.path === here() || !note.why);
  if (asking !== 0 || isDown || page === null || waiting.length === 0) {
    return;
  }
  const turn = asking = ++last;
  try {
    const failed = await page.invokeMethodAsync('SettledAsync');
    if (asking !== turn) {
      return;
    }
    waiting.filter(note => note.seq < turn).forEach(note => judge(note, failed[note.path]));
  } catch {
    // The connection broke, or the page is gone: whoever comes next asks again.
  }
  if (asking === turn) {
    asking = 0;
    show();
    const more = owed().filter(note => note.path === here() || !note.why);
    if (more.length > 0) {
      clearTimeout(timer);
      timer = setTimeout(ask, more.some(note => note.seq > turn) ? 30 : againMs);
    }
  }
}

function judge(note, why) {
  if (why === undefined) {
    drop(note);
  } else {
    note.why = why;
    put(note);
  }
}

// The connection goes and comes

function down() {
  isDown = true;
  asking = 0;
  show();
}

async function up() {
  isDown = false;
  asking = 0;
  const turn = asking = ++last;
  try {
    // What the server drew meanwhile is here before its answer.
    await page?.invokeMethodAsync('SettledAsync');
  } catch {
    return;
  }
  if (asking !== turn) {
    return;
  }
  asking = 0;
  notes.forEach(note => {
    if (note.tab === tab && note.path === here() && !note.isOffered && note.field?.isConnected) {
      again(note, note.field, true);
    }
  });
  if (document.activeElement?.matches(searching)) {
    document.activeElement.dispatchEvent(new Event('input', { bubbles: true }));
  }
  soon();
}

// Sends a text again where nothing else came between, and otherwise offers it.
function again(note, field, maySend) {
  const stored = storedOf(field);
  const isStanding = field.dataset.stored === undefined && stored === note.text;
  const isCommand = field.tagName === 'SELECT' && note.before === '' && !note.isKept;
  note.field = field;
  note.isPlaced = true;
  if (note.isKept) {
    type(field, note.text);
  } else if (maySend && (isStanding || isOurs(note, stored)) && !isCommand) {
    type(field, note.text);
  } else {
    note.isOffered = true;
    put(note);
    reset(field);
  }
}

// Shows what the book holds, where the field says that: the kept text stands in the bar.
function reset(field) {
  if (field.dataset.stored !== undefined && field.value !== field.dataset.stored) {
    field.value = field.dataset.stored;
  }
}

// After a reload, and on coming back to a page

function read() {
  for (const [name, value] of Object.entries(localStorage).filter(([name]) => name.startsWith(shelf))) {
    const key = name.slice(shelf.length);
    try {
      const note = JSON.parse(value);
      const isReload = performance.getEntriesByType('navigation')[0]?.type === 'reload';
      if (note.isKept && (note.tab !== tab || !isReload)) {
        localStorage.removeItem(name);
      } else if (!notes.has(key) && (note.tab === tab || Date.now() - note.at > orphanMs)) {
        notes.set(key, { ...note, seq: 0, isOffered: false, isPlaced: false });
      }
    } catch {
      localStorage.removeItem(name);
    }
  }
}

function place() {
  if (isDown || page === null || document.querySelector('main')?.inert) {
    return;
  }
  for (const note of [...notes.values()].filter(note => note.path === here() && !note.field?.isConnected)) {
    const field = fieldOf(note.id);
    note.isPlaced = false;
    if (field === undefined) {
      continue;
    }
    const stored = storedOf(field);
    if (!note.isKept && isSame(note.text, stored)) {
      drop(note);
    } else {
      again(note, field, note.tab === tab && field.closest('[data-sends]') !== null);
    }
  }
}

function moved() {
  if (path !== here()) {
    // A thing that its first save made has another address from then on; its fields are the same.
    const began = document.querySelector('main [data-began-at]')?.dataset.beganAt;
    for (const note of [...notes.values()].filter(note => note.path === path && path === began && note.field?.isConnected)) {
      drop(note);
      put({ ...note, path: here(), key: [note.tab, here(), note.id].join('|') });
    }
    path = here();
  }
  if ([...notes.values()].some(note => note.path === path && !note.field?.isConnected)) {
    place();
    show();
  }
}

// What the page shows of it

function lineOf(note) {
  const field = note.field?.isConnected ? note.field : undefined;
  const line = document.createElement('li');
  const what = document.createElement('span');
  const label = document.createElement('b');
  label.textContent = note.label || 'A field';
  const text = document.createElement('q');
  text.textContent = spoken(field, note.text);
  what.append(label, ': you typed ', text);
  line.append(what);
  if (note.path !== here()) {
    const link = document.createElement('a');
    link.href = note.path;
    link.textContent = 'on another page';
    line.append(link);
    return line;
  }
  if (note.isOffered) {
    const stored = document.createElement('q');
    stored.textContent = spoken(field, storedOf(field ?? note.field));
    what.append('; the book says ', stored);
    line.append(button('Use what I typed', note, () => {
      note.isOffered = false;
      type(note.field, note.text);
    }));
  }
  if (note.isOffered || field === undefined) {
    line.append(button('Leave it', note, () => leave(note)));
  }
  return line;
}

function leave(note) {
  const field = note.field?.isConnected ? note.field : undefined;
  drop(note);
  if (field) {
    reset(field);
  }
  soon();
}

function button(words, note, act) {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = words;
  made.disabled = isDown;
  made.setAttribute('aria-label', `${words}: ${note.label}`);
  made.addEventListener('click', () => {
    act();
    show();
  });
  return made;
}

function why(late) {
  if (isDown) {
    return 'Not saved yet, for there is no connection; kept on this page:';
  }
  return late.some(note => note.isOffered)
    ? 'Not in the book: this was typed before the page was loaded, and was not saved. It is kept until you choose.'
    : 'Not saved yet. What you typed is kept here, over a reload too, until it is in the book.';
}

function show() {
  const open = [...notes.values()].filter(note => !note.isKept);
  const mine = open.filter(note => note.path === here());
  document.documentElement.toggleAttribute('data-unsent', mine.some(note => !note.isOffered));
  const isLate = note => isDown || note.isOffered || note.why || note.path !== here() || !note.isPlaced || Date.now() - note.since > patienceMs;
  const late = open.filter(isLate);
  mine.forEach(note => note.field?.isConnected && note.field.toggleAttribute('data-unsent', isLate(note)));
  draw(document.getElementById('unsent'), late);
  if (open.length > late.length) {
    setTimeout(show, patienceMs / 4);
  }
}

let drawn = '';
function draw(bar, late) {
  const lines = late.map(lineOf);
  const now = isDown + here() + lines.map(line => line.outerHTML).join('');
  if (bar === null || now === drawn) {
    return;
  }
  drawn = now;
  bar.hidden = late.length === 0;
  bar.querySelector('p').textContent = late.length === 0 ? '' : why(late);
  bar.querySelector('ul').replaceChildren(...lines);
}

// A form that was sent owes nothing any more.
function sent(event) {
  [...notes.values()].filter(note => note.isKept && event.target.contains(note.field)).forEach(drop);
}

let isListening = false;
export function enter(layout) {
  page = layout;
  isDown = false;
  asking = 0;
  if (!isListening) {
    isListening = true;
    listen();
  }
  read();
  place();
  soon();
}

function listen() {
  document.addEventListener('focusin', event => isField(event.target) && entered.set(event.target, textOf(event.target)), true);
  document.addEventListener('input', noted, true);
  document.addEventListener('change', noted, true);
  document.addEventListener('submit', sent, true);
  document.addEventListener('gylebook-connected', up);
  document.getElementById('components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', event =>
    event.detail.state === 'hide' ? up() : down());
  addEventListener('storage', event => {
    const note = event.newValue === null && event.key?.startsWith(shelf) && notes.get(event.key.slice(shelf.length));
    if (note && note.tab !== tab) {
      notes.delete(note.key);
      show();
    }
  });
  new MutationObserver(moved).observe(document.body, { childList: true, subtree: true });
  setInterval(() => notes.forEach(note => note.tab === tab && put(note)), touchMs);
}
