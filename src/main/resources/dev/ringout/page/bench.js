/**
 * The page of `ringout bench`: what the program says goes in as documents (docs/reference/bench-api.md), what the mechanic does goes
 * out as posts. The page judges nothing and keeps nothing but its own looks; a screen is made anew from its documents each time.
 */

// ---------------------------------------------------------------- what the page holds

/** A key that arrives sooner after a step than a person can have read it was meant for the step before. */
const TOO_SOON_MS = 350;
/** Between two keys of a scanner, and after its last one: a person is slower. A key alone waits so long before it does anything. */
const SCAN_GAP_MS = 50;
/** A slow scanner's keys were done one by one already when its Enter comes: then that takes nothing, and what they did is undone. */
const SLOW_SCAN_GAP_MS = 100;
/** A key that means nothing on the bench: for so long after it an Enter is taken for a scanner's, however slow, and takes nothing. */
const ODD_KEY_MS = 3000;
const SCAN_SHORTEST = 2;
const SLOW_SCAN_SHORTEST = 4;
/** So long without a word from the program, and the page asks whether it is still there. */
const SILENCE_MS = 5000;
/** So long a value may take to be kept, and so long any other work, before it counts as not answered. */
const QUICK_MS = 10_000;
const PATIENT_MS = 120_000;
/** How often the screen of all benches is read anew. */
const SHOP_MS = 5000;

const SVG = 'http://www.w3.org/2000/svg';

const page = {
  state: null,
  /** `waiting`, `here`, `lost` (no answer), `shut` (the cookie counts no longer). */
  link: 'waiting',
  heardAt: 0,
  route: { screen: 'units' },
  docs: noDocs(),
  faces: new Map(),
  notice: null,
  lastUnit: '',
  search: '',
  drafts: new Map(),
  entry: noEntry(''),
  live: { text: '', stage: '' },
  /** What stands before somebody's eyes, and since when. */
  shown: { step: '', asked: '', since: 0, last: '', screen: '', frame: '', dialog: 0 },
  stale: true,
  busy: false,
  /** Who signed in, and what he may do; at a bench that its own machine opens nobody signs in, and whoever is there may all. */
  who: { shop: false, name: '', roles: [], may: [] },
  /** Nobody has signed in here: nothing but that can be done. */
  out: false,
  /** Who was signed in before. */
  before: '',
  events: null,
};

const may = (act) => !page.who.shop || page.who.may.includes(act);

/** What was asked for of the program: nothing yet. */
function noDocs() {
  return { units: null, unit: null, ticks: null, readings: null, difference: null, list: null, people: null, shop: null, lot: null };
}

/** Whose name stands beside what is done. */
const me = () => (page.who.shop ? page.who.name : page.state.tester);

/** The same, where who signs in nowhere says it in a field. */
const meOr = (field) => (page.who.shop ? page.who.name : draft(field, page.state.tester));

/** Whether somebody else leads the test at this bench. */
const ledByAnother = () => page.who.shop && Boolean(page.state.session) && page.state.tester !== page.who.name;

const byId = (id) => document.getElementById(id);

// ---------------------------------------------------------------- making elements

/**
 * An element. `onclick` and the like are listeners; `key` names it across renders; `once` says what it stands for: with another `once` it is
 * another element, so that a press that began on the old one does nothing.
 */
function el(tag, props = {}, ...children) {
  return filled(document.createElement(tag), props, children);
}

function draw(tag, props = {}, ...children) {
  return filled(document.createElementNS(SVG, tag), props, children);
}

function filled(node, props, children) {
  for (const [name, value] of Object.entries(props)) {
    if (value === false || value === null || value === undefined) continue;
    if (name.startsWith('on') && typeof value === 'function') hear(node, name.slice(2), value);
    else if (name === 'key' || name === 'once') node.dataset[name] = value;
    else if (name === 'len') node.style.setProperty('--len', value);
    else if (name === 'share') node.style.setProperty('--share', `${value}%`);
    else if (name === 'value' && 'value' in node) node.value = value;
    else node.setAttribute(name, value === true ? '' : value);
  }
  node.append(...solid(children));
  return node;
}

const solid = (children) => children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false);

/** What each element does on which event: held here, so that an element that stays can be given what its successor would do. */
const handlers = new WeakMap();

const dispatch = (event) => handlers.get(event.currentTarget)[event.type]?.(event);

function hear(node, kind, action) {
  if (!handlers.has(node)) handlers.set(node, {});
  const mine = handlers.get(node);
  if (!(kind in mine)) node.addEventListener(kind, dispatch);
  mine[kind] = action;
}

const press = (label, action, props = {}) => el('button', { type: 'button', onclick: action, key: [label].flat()[0], ...props }, label);

/** The key that does the same, told where there is room for it. */
const hint = (key) => el('kbd', { 'aria-hidden': 'true' }, key);

/** A field whose text stays while the screen is made anew. */
function field(key, label, props = {}, tag = 'input') {
  const id = `field-${key}`;
  const { kept, help, options, ...rest } = props;
  const input = el(tag, { id, key, autocomplete: 'off', ...rest, 'aria-describedby': help ? `${id}-help` : null,
    oninput: (event) => { page.drafts.set(key, event.target.value); props.oninput?.(event); } }, options ?? []);
  input.value = page.drafts.get(key) ?? kept ?? (tag === 'select' ? input.value : '');
  return el('div', { class: 'field' }, el('label', { for: id }, label), input,
    help ? el('p', { class: 'help', id: `${id}-help` }, help) : null);
}

const draft = (key, kept = '') => (page.drafts.get(key) ?? kept).trim();

function forget(...keys) {
  keys.forEach((key) => page.drafts.delete(key));
}

/** Something folded away: it stays as it is while the screen around it changes. */
const fold = (key, summary, ...children) => el('details', { key }, el('summary', { key: `fold-${key}` }, summary), ...children);

/**
 * Puts a screen up. Elements that stay the same stay themselves: with their focus, what was typed or chosen, how far they are scrolled, and a
 * finger that is just on them.
 */
function put(parent, ...children) {
  const key = parent.contains(document.activeElement) ? document.activeElement.dataset.key : null;
  putChildren(parent, solid(children).map((child) => (child instanceof Node ? child : document.createTextNode(child))));
  if (key && !parent.contains(document.activeElement)) parent.querySelector(`[data-key="${CSS.escape(key)}"]`)?.focus({ preventScroll: true });
}

function putChildren(parent, children) {
  const named = new Map([...parent.children].filter((child) => child.dataset.key).map((child) => [child.dataset.key, child]));
  let place = parent.firstChild;
  for (const child of children) {
    const old = child.dataset?.key ? named.get(child.dataset.key) : place?.dataset?.key ? null : place;
    if (!old || !isSame(old, child)) { parent.insertBefore(child, place); continue; }
    if (old === place) place = place.nextSibling;
    else parent.insertBefore(old, place);
    update(old, child);
  }
  while (place) {
    const next = place.nextSibling;
    place.remove();
    place = next;
  }
}

const isSame = (old, child) => old.nodeName === child.nodeName && old.dataset?.key === child.dataset?.key && old.dataset?.once === child.dataset?.once;

const HOLDS_TEXT = new Set(['INPUT', 'TEXTAREA', 'SELECT']);
const CHOSEN = new Set(['checkbox', 'radio', 'file']);

function update(old, child) {
  if (old.nodeType === Node.TEXT_NODE) {
    if (old.data !== child.data) old.data = child.data;
    return;
  }
  const folded = old.nodeName === 'DETAILS';
  for (const { name } of [...old.attributes]) if (!child.hasAttribute(name) && !(folded && name === 'open')) old.removeAttribute(name);
  for (const { name, value } of child.attributes) if (name !== 'style' && old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (old.style.cssText !== child.style.cssText) old.style.cssText = child.style.cssText;
  const [mine, its] = [handlers.get(old) ?? {}, handlers.get(child) ?? {}];
  for (const kind of Object.keys(mine)) mine[kind] = its[kind];
  for (const [kind, action] of Object.entries(its)) hear(old, kind, action);
  putChildren(old, [...child.childNodes]);
  if (HOLDS_TEXT.has(old.nodeName) && !CHOSEN.has(old.type) && old.value !== child.value) old.value = child.value;
}

const day = (at) => (at ? at.slice(0, 10) : '');

function clock(at) {
  const when = new Date(at);
  return Number.isNaN(when.getTime()) ? at : `${String(when.getHours()).padStart(2, '0')}:${String(when.getMinutes()).padStart(2, '0')}`;
}

const many = (count, one, more) => `${count.toLocaleString('en')} ${count === 1 ? one : more}`;

// ---------------------------------------------------------------- signs: never a colour alone

const SIGNS = {
  good: 'M5 12.5 L10 18 L19.5 6.5',
  bad: 'M6 6 L18 18 M18 6 L6 18',
  unsure: 'M8 8.5 C8 4.5 16 4.5 16 9 C16 12 12 12 12 15 M12 18.6 L12 19',
  none: 'M6 12 L18 12',
  back: 'M10 5 L4 11 L10 17 M4 11 L15 11 C22 11 21 20 14 20',
};

const VERDICTS = {
  conforms: { sign: 'good', word: 'Conforms' },
  faults: { sign: 'bad', word: 'Faults' },
  incomplete: { sign: 'unsure', word: 'Not all proven' },
  '': { sign: 'none', word: 'Not tested' },
};

const OUTCOMES = { good: 'Good', bad: 'Not good', unsure: 'Not sure' };

const sign = (name) => draw('svg', { class: `sign ${name}`, viewBox: '0 0 24 24', 'aria-hidden': 'true' }, draw('path', { d: SIGNS[name] }));

// ---------------------------------------------------------------- talking to the program

class Refused extends Error {
  constructor(status, problems) {
    super(problems.map((problem) => [problem.text, problem.place && `(${problem.place})`, problem.maybe].filter(Boolean).join(' ')).join(' '));
    this.status = status;
  }
}

async function ask(path, options = {}, patience = PATIENT_MS) {
  let answer;
  try {
    answer = await fetch(path, { credentials: 'same-origin', signal: AbortSignal.timeout(patience), ...options });
  } catch (failure) {
    lost();
    throw new Refused(0, [{ text: options.method === 'POST'
      ? 'No answer from the program. This may not be kept: look at it when the program is back.' : 'No answer from the program.' }]);
  }
  heard();
  const json = (answer.headers.get('content-type') ?? '').includes('json') ? await answer.json().catch(() => null) : null;
  if (answer.ok && json) return json;
  if (answer.status === 401) signedOut();
  if (answer.status === 403 && !json) setLink('shut');
  throw new Refused(answer.status, json?.problems ?? [{ text: `The program did not accept this (${answer.status}).` }]);
}

const post = (path, body = {}, patience = PATIENT_MS) =>
  ask(path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }, patience);

/** One thing at a time in a session; what is asked for before the answer came is dropped. */
async function act(what, body = {}) {
  if (page.busy) return false;
  page.busy = true;
  document.documentElement.dataset.busy = '';
  try {
    receive(await post(`/api/session/${what}`, body, what === 'take' ? QUICK_MS : PATIENT_MS));
    return true;
  } catch (failure) {
    refuse(failure);
    return false;
  } finally {
    page.busy = false;
    delete document.documentElement.dataset.busy;
  }
}

function refuse(failure) {
  if (!(failure instanceof Refused)) throw failure;
  tones.play('unsure');
  notice(failure.status === 409 ? 'Not kept: the step had changed. Look at the step, then press again.' : failure.message, 'bad');
}

/** The newest state; what was made before the one that is shown is dropped. */
function receive(state) {
  if (page.state && state.version <= page.state.version) return;
  page.state = state;
  const step = state.session?.step?.id ?? '';
  if (page.entry.step !== step) page.entry = noEntry(step);
  later(page.route.screen === 'bench' || !page.route.screen || page.shown.frame !== frameOf(state));
}

/** What of the state the other screens show: they are not made anew with every reading. */
const frameOf = (state) => JSON.stringify([state.session?.unit.id ?? '', state.tester, state.station, state.practice]);

let due = false;

/** A state may come in bursts: they are drawn once, after the tone. */
function later(screenToo = true) {
  page.stale ||= screenToo;
  if (due) return;
  due = true;
  const now = () => { due = false; render(); };
  if (document.hidden) setTimeout(now, 0);
  else requestAnimationFrame(now);
}

/** A browser gives a page's address few lines at once, and a page that it keeps for "back" would hold one: so that is let go. */
function listen() {
  const events = new EventSource('/api/events');
  page.events = events;
  addEventListener('pagehide', () => events.close(), { once: true });
  const on = (kind, action) => events.addEventListener(kind, (event) => { action(JSON.parse(event.data)); heard(); });
  on('tone', ({ tone }) => tones.play(tone));
  on('live', (live) => { page.live = live; showLive(); });
  on('state', receive);
  // A program that was started anew counts from the beginning.
  events.addEventListener('open', () => { if (page.state) page.state.version = -1; heard(); });
  events.addEventListener('error', () => {
    lost();
    if (events.readyState === EventSource.CLOSED && !page.out) setTimeout(askAgain, 2000);
  });
}

/** A stream that ended may have ended with the visit. */
async function askAgain() {
  if (page.out) return;
  await askWho();
  if (!page.out) listen();
}

function heard() {
  page.heardAt = performance.now();
  if (page.link !== 'here') setLink('here');
}

function lost() {
  if (page.out) return;
  if (page.link !== 'shut') setLink('lost');
}

function setLink(link) {
  if (page.link === link) return;
  const was = page.link;
  page.link = link;
  page.live = { text: '', stage: '' };
  if (link === 'lost') shout('No connection to the program. Nothing is kept.');
  if (link === 'here' && was === 'lost') { closeNotice(); tell('The program is back.'); load(); }
  later();
}

/** A cable or a network that goes silent tells nobody: so the page asks. */
async function watch() {
  if (page.out || page.link === 'shut' || performance.now() - page.heardAt < SILENCE_MS) return;
  try {
    const answer = await fetch('/api/state', { credentials: 'same-origin', signal: AbortSignal.timeout(3000) });
    if (answer.status === 401) signedOut();
    else if (answer.status === 403) setLink('shut');
    else if (answer.ok) { const state = await answer.json(); heard(); receive(state); }
  } catch (failure) {
    lost();
  }
}

// ---------------------------------------------------------------- tones and speech

const remembered = {
  get: (name, otherwise) => { try { return localStorage.getItem(name) ?? otherwise; } catch (refused) { return otherwise; } },
  set: (name, value) => { try { localStorage.setItem(name, value); } catch (refused) { /* a browser that keeps nothing still measures */ } },
};

/** Told apart by pitch, by number and by rhythm, not by loudness: start and length in seconds, hertz, how it swings. */
const TONES = {
  good: [[0, 0.07, 988, 'sine'], [0.08, 0.12, 1480, 'sine']],
  bad: [[0, 0.18, 196, 'square'], [0.24, 0.18, 196, 'square'], [0.48, 0.26, 147, 'square']],
  lifted: [[0, 0.035, 620, 'triangle']],
  unsure: [[0, 0.14, 523, 'triangle'], [0.2, 0.14, 415, 'triangle']],
};
const SHAKES = { good: 40, bad: [160, 80, 160, 80, 240], unsure: [80, 80, 80] };
const LOUDNESS = { square: 0.16, sine: 0.5, triangle: 0.45 };

const tones = {
  context: null,
  on: remembered.get('sound', 'on') === 'on',

  /** A browser lets a page sound from the first key or touch on. */
  start() {
    this.context ??= new AudioContext({ latencyHint: 'interactive' });
    if (this.context.state !== 'running') this.context.resume();
  },

  play(name) {
    if (this.on && this.context && TONES[name]) {
      const now = this.context.currentTime;
      for (const [at, length, hertz, shape] of TONES[name]) this.note(now + at, length, hertz, shape);
    }
    dispatchEvent(new CustomEvent('ringout:tone', { detail: { tone: name, at: performance.now() } }));
    if (SHAKES[name] && navigator.userActivation?.hasBeenActive) navigator.vibrate?.(SHAKES[name]);
  },

  note(at, length, hertz, shape) {
    const source = new OscillatorNode(this.context, { type: shape, frequency: hertz });
    const volume = new GainNode(this.context, { gain: 0 });
    volume.gain.setValueAtTime(LOUDNESS[shape], at);
    volume.gain.setTargetAtTime(0, at + length, 0.012);
    source.connect(volume).connect(this.context.destination);
    source.start(at);
    source.stop(at + length + 0.1);
  },
};

const ONES = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen',
  'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

function numberWords(digits) {
  const number = Number(digits);
  if (digits.length > 2) return [...digits].flatMap(numberWords);
  if (number < 20) return [ONES[number]];
  return number % 10 === 0 ? [TENS[number / 10]] : [TENS[Math.floor(number / 10)], ONES[number % 10]];
}

const speech = {
  on: remembered.get('speech', 'on') === 'on',
  clips: null,
  playing: null,

  voice() {
    const voices = 'speechSynthesis' in window ? speechSynthesis.getVoices() : [];
    return voices.find((voice) => voice.localService && voice.lang.toLowerCase().startsWith('en')) ?? null;
  },

  say(text) {
    if (!this.on || !text || !tones.context) return;
    const voice = this.voice();
    if (voice) this.speak(text, voice);
    else this.playClips(text);
  },

  speak(text, voice) {
    speechSynthesis.cancel();
    const sentence = new SpeechSynthesisUtterance(text);
    sentence.voice = voice;
    speechSynthesis.speak(sentence);
  },

  /** Words cut out of one small sound file, for a machine that has no voice. */
  async playClips(text) {
    this.clips ??= this.load();
    const clips = await this.clips;
    if (!clips) return;
    this.playing?.forEach((source) => source.stop());
    this.playing = [];
    let at = tones.context.currentTime + 0.02;
    for (const word of this.words(text, clips.index)) {
      const [start, length] = clips.index[word];
      const source = new AudioBufferSourceNode(tones.context, { buffer: clips.sound });
      source.connect(tones.context.destination);
      source.start(at, start, length);
      this.playing.push(source);
      at += length;
    }
  },

  async load() {
    try {
      const [index, sound] = await Promise.all([fetch('/speech.json').then((answer) => answer.json()),
        fetch('/speech.ogg').then((answer) => answer.arrayBuffer())]);
      return { index, sound: await tones.context.decodeAudioData(sound) };
    } catch (failure) {
      return null;
    }
  },

  /** A word that has no clip is spelt where it is a short name, else left out. */
  words(text, index) {
    return (text.match(/[A-Za-z]+|\d+/g) ?? []).flatMap((part) => {
      if (/^\d/.test(part)) return numberWords(part);
      const word = part.toLowerCase();
      return index[word] ? [word] : part.length <= 4 ? [...word] : [];
    }).filter((word) => index[word]);
  },
};

/** What is said of a step: only what the hands have to do; the probe that stays is not named again. */
function spokenStep(session, fresh = false) {
  const { step, last } = session;
  if (!step) return 'done';
  const again = step.again ? 'once more, ' : '';
  const sides = step.stays === 'from' && !step.again ? `to ${step.to.spoken}`
    : step.stays === 'to' && !step.again ? step.from.spoken : `${step.from.spoken}, to ${step.to.spoken}`;
  const result = !fresh || !last?.taken ? '' : { bad: 'not good, ', unsure: 'not sure, ' }[last.outcome] ?? '';
  return result + again + sides;
}

// ---------------------------------------------------------------- telling

function tell(text) { byId('announce').textContent = text; }

function shout(text) { byId('alert').textContent = text; }

let noticeTimer = 0;

/** A line under the head of the page: what went wrong stays until it is closed. */
function notice(text, kind = 'plain') {
  page.notice = { text, kind };
  if (kind === 'bad') shout(text);
  else tell(text);
  clearTimeout(noticeTimer);
  if (kind !== 'bad') noticeTimer = setTimeout(closeNotice, 6000);
  renderBanners();
}

function closeNotice() {
  page.notice = null;
  renderBanners();
}

/** Says a new step and the result before it once, in one sentence. */
function tellStep(session, fresh) {
  const { step, last } = session;
  const result = last ? `${last.taken ? OUTCOMES[last.outcome] : 'Taken back'}: ${last.value}. ` : '';
  const next = step ? `${step.again ? 'Once more: ' : ''}${step.from.spoken} to ${step.to.spoken}. Should read ${step.expected.text}.` : 'Nothing is left to measure.';
  if (fresh && last?.taken && last.outcome !== 'good') shout(`${result}${last.says}`);
  tell(fresh ? result + next : next);
}

// ---------------------------------------------------------------- where the page is

function decoded(part) {
  try { return decodeURIComponent(part); } catch (mistyped) { return part; }
}

/** `#/unit/ID/ticks` and the like. */
function readRoute() {
  const [screen = '', id = '', part = '', more = ''] = location.hash.replace(/^#\/?/, '').split('/').map(decoded);
  const known = ['units', 'unit', 'bench', 'record', 'list', 'new', 'people', 'shop', 'lot'];
  return { screen: known.includes(screen) ? screen : '', id, part, more };
}

const link = (...parts) => `#/${parts.map(encodeURIComponent).join('/')}`;

function go(...parts) { location.hash = link(...parts); }

function routed() {
  page.route = readRoute();
  if (page.route.screen === 'unit' || page.route.screen === 'record') page.lastUnit = page.route.id;
  closeDialog();
  closeNotice();
  load();
  later();
}

let loadTimer = 0;

/** What is searched for is asked for once nobody types on. */
function loadSoon() {
  clearTimeout(loadTimer);
  loadTimer = setTimeout(load, 200);
}

/** Brings the documents that the screen shows. */
async function load() {
  const { screen, id, part, more } = page.route;
  if (page.out) { later(); return; }
  try {
    if (screen === 'shop') page.docs.shop = await ask('/api/shop');
    if (screen === 'lot') {
      if (page.docs.lot?.id !== id) page.docs.lot = null;
      page.docs.lot = await ask(`/api/lots/${encodeURIComponent(id)}`);
    }
    if (screen === 'people') page.docs.people = await ask('/api/people?history');
    if (screen === 'units' || screen === 'new') page.docs.units = await ask(`/api/units?search=${encodeURIComponent(page.search)}`);
    if (screen === 'unit' || screen === 'record') {
      if (page.docs.unit?.id !== id) page.docs.unit = null;
      page.docs.unit = await ask(`/api/units/${encodeURIComponent(id)}`);
      await loadFaces(id);
      page.docs.units ??= await ask('/api/units?search=');
      if (screen === 'record' && page.who.shop && may('sign')) page.docs.keys = await ask('/api/keys');
    }
    if (screen !== 'unit') { later(); return; }
    if (part === 'readings') page.docs.readings = await ask(`/api/units/${encodeURIComponent(id)}/readings?search=${encodeURIComponent(draft('reading-search'))}`);
    if (part === 'ticks' || part === 'start') page.docs.ticks = await ask(`/api/units/${encodeURIComponent(id)}/ticks`);
    if (part === 'diff') page.docs.difference = { list: more, doc: await post(`/api/units/${encodeURIComponent(id)}/diff`, { list: more }) };
  } catch (failure) {
    refuse(failure);
  }
  later();
}

/** Asked for once: a unit whose faces can't be had is led without them. */
async function loadFaces(id) {
  if (page.faces.has(id)) return;
  page.faces.set(id, []);
  page.faces.set(id, (await ask(`/api/units/${encodeURIComponent(id)}/faces`)).items.map(placed));
}

/** A face is of the cavities whose place is known: the shell has none. Where nobody knows any, they are drawn in rows, in their order, and it is said. */
function placed(item) {
  const known = item.cavities.filter((cavity) => cavity.x !== null && cavity.y !== null);
  if (known.length) return { ...item, cavities: known, known: true };
  const cavities = item.cavities.map((cavity, at) => ({ ...cavity, x: (at % 12) * 8, y: -Math.floor(at / 12) * 8 }));
  return { ...item, cavities, shape: 'strip', from: 'in the order of the list, not as it looks', known: false };
}

// ---------------------------------------------------------------- the frame around every screen

const TITLES = { units: 'Units', unit: 'Unit', bench: 'Bench', record: 'Record', list: 'Wire list', new: 'New unit', people: 'People', shop: 'Shop', lot: 'Lot' };

function render() {
  if (page.out) return renderSignIn();
  if (!page.state) return renderBanners();
  if (!page.route.screen) {
    history.replaceState(null, '', link(page.state.session ? 'bench' : 'units'));
    page.route = readRoute();
    load();
  }
  const { screen, id, part } = page.route;
  document.documentElement.dataset.screen = screen;
  document.title = `${TITLES[screen]}${page.state.practice ? ' (practice)' : ''}: ringout bench`;
  byId('skip').textContent = screen === 'bench' ? 'To the step' : 'To the content';
  renderTop();
  renderBanners();
  if (page.stale) put(byId('main'), screenOf(screen, part));
  page.stale = false;
  page.shown.frame = frameOf(page.state);
  arrive(`${screen}/${id}/${part}`);
  shownStep(page.state);
}

function screenOf(screen, part) {
  if (screen === 'bench') return benchScreen();
  if (screen === 'list') return listScreen();
  if (screen === 'new') return startScreen(null);
  if (screen === 'units') return unitsScreen();
  if (screen === 'people') return peopleScreen();
  if (screen === 'shop') return shopScreen();
  if (screen === 'lot') return lotScreen();
  if (!page.docs.unit) return [el('h1', {}, TITLES[screen]), waiting()];
  if (screen === 'record') return recordScreen(page.docs.unit);
  if (part === 'ticks') return ticksScreen(page.docs.unit);
  if (part === 'readings') return readingsScreen(page.docs.unit);
  if (part === 'diff') return differenceScreen(page.docs.unit);
  if (part === 'start') return startScreen(page.docs.unit);
  return unitScreen(page.docs.unit);
}

const waiting = () => el('p', { class: 'quiet' }, 'One moment …');

/** A new screen begins at its top, with its heading as the first thing that is read. */
function arrive(where) {
  if (page.shown.screen === where) return;
  const first = page.shown.screen === '';
  page.shown.screen = where;
  scrollTo(0, 0);
  if (!first) byId('main').focus({ preventScroll: true });
}

/** From when on the step stands before somebody's eyes, and what is said of it. */
function shownStep(state) {
  const { session } = state;
  const { shown } = page;
  const asked = askedOf(state);
  if (shown.asked !== asked) Object.assign(shown, { asked, since: performance.now() });
  const step = session?.step?.id ?? '';
  const last = session?.last ? `${session.last.id} ${session.last.taken}` : '';
  const [news, fresh] = [shown.step !== step, shown.last !== last];
  Object.assign(shown, { step, last });
  if (!session || page.route.screen !== 'bench' || !(news || fresh)) return;
  tellStep(session, fresh);
  if (news) speech.say(spokenStep(session, fresh));
}

function renderTop() {
  const { practice, session } = page.state;
  const unit = session?.unit.id ?? page.lastUnit;
  const tab = (screen, label, target) => el('li', {}, target
    ? el('a', { href: target, key: `tab-${screen}`, 'aria-current': page.route.screen === screen ? 'page' : null }, label)
    : el('span', { class: 'off' }, label));
  const known = page.lastUnit || unit;
  put(byId('top'),
    el('nav', { 'aria-label': 'Screens' }, el('ul', {},
      tab('units', 'Units', link('units')),
      tab('unit', 'Unit', known && link('unit', known)),
      tab('bench', 'Bench', link('bench')),
      tab('record', 'Record', known && link('record', known)),
      page.who.shop && may('oversee') ? tab('shop', 'Shop', link('shop')) : null,
      page.who.shop && may('people') ? tab('people', 'People', link('people')) : null)),
    practice ? el('p', { class: 'practice' }, 'PRACTICE') : null,
    el('p', { class: 'station' }, [page.state.station, me()].filter(Boolean).join(', ')),
    press('Set up', settingsDialog, { class: 'tool' }));
}

const noticeBanner = () => page.notice && el('div', { class: `banner ${page.notice.kind}` }, sign(page.notice.kind === 'bad' ? 'bad' : 'none'),
  el('span', {}, page.notice.text), press('Close', closeNotice, { key: 'close-notice' }));

function renderBanners() {
  const banners = [];
  if (page.link === 'lost') banners.push(el('p', { class: 'banner bad' }, sign('bad'),
    el('span', {}, el('strong', {}, 'No connection to the program. '), 'Nothing is kept until it is back. The page tries by itself.')));
  if (page.link === 'shut') banners.push(el('p', { class: 'banner bad' }, sign('bad'),
    el('span', {}, el('strong', {}, 'This page no longer has access. '), 'Nothing is kept. Open the address that the program shows.')));
  const trouble = page.state?.session?.trouble;
  if (trouble) banners.push(el('p', { class: 'banner bad', role: 'alert' }, sign('bad'), el('span', { id: 'trouble' }, trouble)));
  banners.push(noticeBanner());
  put(byId('banners'), banners);
}

// ---------------------------------------------------------------- faces

/** One item as it is seen from its wiring side. `marks` are the pins of the step; `states` says of each pin how it stands. */
function face(item, { marks = [], states = null, label }) {
  const pitch = nearest(item.cavities);
  const radius = pitch * 0.44;
  const marked = item.cavities.filter((cavity) => marks.includes(cavity.pin));
  const box = bounds(item.cavities);
  const view = viewOf(box, marked[0], pitch, item.shape === 'insert');
  const svg = draw('svg', { class: `face ${item.shape}`, viewBox: view.join(' '), role: 'img', 'aria-label': label });
  if (item.shape === 'insert') svg.append(shell(item.cavities, box, pitch));
  if (marked.length === 1) svg.append(hairs(marked[0], view));
  for (const cavity of item.cavities) {
    if (!marked.includes(cavity)) svg.append(hole(cavity, radius, item.shape, states ? states.get(cavity.pin) ?? 'unused' : 'plain'));
  }
  svg.append(...marked.map((cavity) => target(cavity, radius, item.shape)));
  return svg;
}

function nearest(cavities) {
  let least = Infinity;
  cavities.forEach((one, at) => cavities.slice(at + 1, at + 40).forEach((other) => {
    const apart = Math.hypot(one.x - other.x, one.y - other.y);
    if (apart > 0 && apart < least) least = apart;
  }));
  return least === Infinity ? 8 : least;
}

function bounds(cavities) {
  const xs = cavities.map((cavity) => cavity.x);
  const ys = cavities.map((cavity) => -cavity.y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { left, right, top, bottom, width: right - left, height: bottom - top };
}

/** Far wider than high: a strip, or an insert of two or three rows. */
const isLong = (box, pitch) => box.width > 6 * pitch && box.width > 2.2 * box.height;

/** The whole item; of a long one, where a cavity is meant, only what is near that. */
function viewOf(box, marked, pitch, round) {
  const window = marked && isLong(box, pitch);
  const [left, width] = window ? [marked.x - 2.6 * pitch, 5.2 * pitch] : [box.left, box.width];
  const margin = pitch * (round ? 1.15 : 0.8);
  return [left - margin, box.top - margin, width + 2 * margin, box.height + 2 * margin].map((part) => Math.round(part * 100) / 100);
}

/** The shell of a round insert touches its outermost cavities; around rows it is a box. */
function shell(cavities, box, pitch) {
  if (isLong(box, pitch)) {
    const margin = pitch * 0.7;
    return draw('rect', { class: 'shell', x: box.left - margin, y: box.top - margin, width: box.width + 2 * margin, height: box.height + 2 * margin, rx: pitch * 0.5 });
  }
  const [cx, cy] = [box.left + box.width / 2, box.top + box.height / 2];
  return draw('circle', { class: 'shell', cx, cy, r: Math.max(...cavities.map((cavity) => Math.hypot(cavity.x - cx, -cavity.y - cy))) + pitch * 0.66 });
}

const outline = (cavity, radius, shape, kind) => (shape === 'strip'
  ? draw('rect', { class: kind, x: cavity.x - radius, y: -cavity.y - radius, width: 2 * radius, height: 2 * radius, rx: radius * 0.2 })
  : draw('circle', { class: kind, cx: cavity.x, cy: -cavity.y, r: radius }));

const letter = (cavity, size, kind) => draw('text', { class: kind, x: cavity.x, y: -cavity.y, 'font-size': size / Math.max(1, cavity.pin.length * 0.62), dy: '0.36em' }, cavity.pin);

function hole(cavity, radius, shape, state) {
  const says = draw('title', {}, `${cavity.pin}${cavity.signal ? `, ${cavity.signal}` : ''}${STATES[state] ? `: ${STATES[state].word}` : ''}`);
  const group = draw('g', { class: `hole ${state}` }, says, outline(cavity, radius, shape, 'rim'));
  const mark = STATES[state]?.sign;
  if (mark) group.append(draw('path', { d: SIGNS[mark], class: 'state', transform: `translate(${cavity.x} ${-cavity.y - radius * 0.36}) scale(${radius / 22}) translate(-12 -12)` }));
  group.append(draw('text', { class: 'pin', x: cavity.x, y: -cavity.y + (mark ? radius * 0.5 : 0), 'font-size': radius * (mark ? 0.85 : 1.1) / Math.max(1, cavity.pin.length * 0.62), dy: '0.34em' }, cavity.pin));
  return group;
}

/** Two lines behind the cavities that cross where the probe goes in. */
const hairs = (cavity, [left, top, width, height]) => draw('path', { class: 'hairs', d: `M${left} ${-cavity.y} h${width} M${cavity.x} ${top} v${height}` });

/** The cavity of the step: larger, filled, and of the other shape than its neighbours. */
function target(cavity, radius, shape) {
  return draw('g', { class: 'target' }, outline(cavity, radius * (shape === 'strip' ? 1.1 : 1.02), shape === 'strip' ? 'insert' : 'strip', 'rim'),
    letter(cavity, radius * 1.5, 'pin'));
}

const STATES = {
  proven: { sign: 'good', word: 'proven' },
  failing: { sign: 'bad', word: 'failing' },
  unproven: { sign: 'unsure', word: 'not proven' },
  unused: { sign: null, word: 'no wire' },
};

// ---------------------------------------------------------------- Bench

const meterOf = (state) => (state.session?.step?.kind === 'insulation' ? state.insulationMeter : state.meter);
const whichMeter = (state) => (state.session?.step?.kind === 'insulation' ? 'insulationMeter' : 'meter');
const isTyped = (state) => meterOf(state).state === 'typed';

function benchScreen() {
  const { state } = page;
  const session = state.session;
  if (!session) return [el('h1', {}, 'Bench'), el('p', {}, 'No unit is being tested here.'), el('p', {}, el('a', { class: 'button', href: link('units') }, 'Choose a unit'))];
  if (!page.faces.has(session.unit.id)) loadFaces(session.unit.id).then(later, refuse);
  const gated = gateOf(state);
  const looksOn = ledByAnother();
  const keys = !gated && !looksOn && (page.entry.open || isTyped(state));
  return el('div', { class: `bench${keys ? ' typing' : ''}${gated ? ' gated' : ''}${session.step ? '' : ' over'}`, 'data-gate': gated },
    runStrip(session),
    session.step ? el('div', { class: 'hands' }, switchBar(session.step), pointsPanel(session)) : null,
    el('section', { class: 'value', 'aria-label': 'Value' },
      looksOn ? session.step && expectPanel(session.step) : gated ? GATES[gated](state) : [expectPanel(session.step), liveRow(state, session.step), keypad(state, session.step)], lastPanel(session)),
    looksOn ? anothersTest(state) : actions(state, session),
    el('aside', { class: 'beside', 'aria-label': 'What is found so far', tabindex: '0', key: 'beside' }, foundParts(session)));
}

/** What is read stands under the name of who leads: another looks on, or takes the test over. */
const anothersTest = (state) => el('div', { class: 'actions looking' },
  el('p', {}, el('strong', {}, `${state.tester} leads this test. `), 'You see it as it goes on.'),
  may('test') ? el('a', { class: 'button second', href: link('unit', state.session.unit.id, 'start') }, 'Take it over') : null);

/** Whether somebody else is still at the unit. */
const LEADS = { here: '', silent: ' (nothing is heard of this bench)', left: ' (left)' };

function runStrip(session) {
  const { progress, step, unit, leading, others } = session;
  const along = { plan: '', telling: 'telling readings', jump: 'after a jump' }[leading];
  const count = session.found.faults.length;
  return el('div', { class: 'run' },
    el('div', { class: 'where' },
      el('h1', {}, step ? (step.number ? `Step ${step.number}` : 'Extra step') : session.found.working ? 'Looking what is left' : 'All measured', el('span', { class: 'unit' }, ` Unit ${unit.serial}`)),
      el('p', { class: 'so-far' }, [`${progress.made} of ${progress.of}`, progress.skipped ? `${progress.skipped} skipped` : '',
        progress.minutes == null ? '' : `${progress.minutes} min left`, along].filter(Boolean).join(', ')),
      page.state.practice ? el('p', { class: 'practice' }, 'PRACTICE') : null,
      others.length ? el('p', { class: 'others' }, others.map((other) => `${other.station}: ${other.who} ${other.text}${LEADS[other.leads]}`).join('; ')) : null),
    press(count ? many(count, 'fault', 'faults') : 'No fault', foundDialog, { class: `found-count ${count ? 'bad' : ''}`, key: 'found' }),
    el('progress', { max: progress.of, value: progress.made, 'aria-label': 'Steps made' }));
}

function switchBar(step) {
  if (!step.state.length) return null;
  const now = step.state.filter((one) => one.changed);
  return el('p', { class: `switches${now.length ? ' change' : ''}` }, now.length ? el('strong', {}, 'First set: ') : 'Set: ',
    el('b', {}, step.state.map((one) => one.text).join(', ')));
}

function pointsPanel(session) {
  const { step, unit } = session;
  const items = page.faces.get(unit.id) ?? [];
  return el('section', { class: 'points', 'aria-label': 'Points' },
    pointRow(step.from, 'Red lead', step.stays === 'from', step.stays !== '', items),
    pointRow(step.to, 'Black lead', step.stays === 'to', step.stays !== '', items));
}

function pointRow(side, lead, stays, other, items) {
  const first = side.points[0];
  const item = items.find((one) => first && one.ref.toLowerCase() === first.item.toLowerCase());
  const marks = side.points.filter((point) => point.item === first.item).map((point) => point.pin);
  const place = item?.known && item.cavities.some((cavity) => marks.includes(cavity.pin));
  const how = side.how || (side.rest ? 'Every other net, tied together.' : side.points.length > 1 ? 'Tied together.' : '');
  return el('div', { class: `point ${stays ? 'stays' : 'moves'}` },
    el('p', { class: 'lead' }, el('span', {}, lead), stays ? el('b', {}, 'stays') : other ? el('b', {}, 'moves') : null, el('strong', {}, caseOf(side))),
    el('div', { class: 'words' }, pointName(side), how || !item?.title ? null : el('p', { class: 'said' }, item.title)),
    how ? el('p', { class: 'how' }, how) : null,
    place ? el('figure', {}, face(item, { marks, label: `${item.ref} ${item.from}, ${side.spoken} marked` }),
      el('figcaption', {}, `${item.ref} ${item.from}`)) : null);
}

/** The pin stands on a ground of its own: the eye goes to it. */
function pointName(side) {
  if (!side.points.length) return el('p', { class: 'name', len: side.text.length }, side.text);
  const total = side.text.length;
  const rows = side.points.length > 2 ? 2 : 1;
  return el('p', { class: `name${rows > 1 ? ' several' : ''}`, len: Math.ceil(total / rows) + side.points.length * 0.5 },
    side.points.map((point) => el('span', { class: 'one' }, `${point.item}-`, el('span', { class: 'pin' }, point.pin))));
}

/** Small a and large A are two pins: said in words wherever a pin is a letter. */
function caseOf(side) {
  const letters = side.points.length === 1 && /^[A-Za-z]$/.test(side.points[0].pin);
  return letters ? side.spoken.split(',').pop().trim() : '';
}

/** What has to be done before a value can be taken, if anything. */
function gateOf(state) {
  const { session } = state;
  const meter = meterOf(state);
  if (!session.step) return 'over';
  if (session.offer) return 'offer';
  if (meter.state === 'lost') return 'lost';
  if (meter.needsLeads) return 'leads';
  return session.step.confirm ? 'cautions' : '';
}

/** It stands in place of the value: nothing can be taken past it. */
const GATES = {
  over: (state) => overPanel(state.session),
  offer: (state) => offerPanel(state.session),
  lost: (state) => lostPanel(state, meterOf(state)),
  leads: () => leadsPanel(),
  cautions: (state) => cautionsPanel(state.session.step),
};

function expectPanel(step) {
  const remarks = [
    step.again ? el('p', { class: 'again' }, sign('unsure'), 'Read once more: the value before failed.') : null,
    step.reverse ? el('p', { class: 'again' }, sign('back'), 'Leads exchanged: the second value of a diode.') : null,
    step.volts ? el('p', { class: 'again' }, sign('unsure'), `${step.volts}, put on at the tester by hand. Discharge after.`) : null];
  return el('div', { class: 'expect' },
    el('p', { class: 'should' }, el('span', { class: 'label' }, 'Should read '), el('b', {}, step.expected.text)),
    el('p', { class: 'means' }, step.expected.means), remarks);
}

const NO_VALUE = '–';

const STAGES = { lift: 'Lift the probes', open: 'Touch both points', touched: 'Hold still', taken: 'Taken' };

function stageWords(state, step) {
  if (page.link !== 'here') return 'No connection: nothing is kept';
  if (entryText(step)) return 'Typed: press Take';
  const meter = meterOf(state);
  if (meter.state === 'opening') return 'The meter is being opened';
  if (meter.state === 'typed') return 'Type what the meter shows';
  if (step.asks !== 'joined') return 'Touch both points, then press Take';
  return STAGES[page.live.stage] ?? 'Touch both points';
}

function liveRow(state, step) {
  const typed = entryText(step);
  return el('div', { class: 'live', 'data-stage': typed ? 'typed' : page.live.stage },
    el('div', { class: 'reading' },
      typed || isTyped(state) || page.entry.open ? typedValue(typed || `${NO_VALUE} ${unitOf(step)}`) : liveValue(),
      el('p', { class: 'echo', 'aria-hidden': 'true' }, 'should read ', el('b', {}, step.expected.text)),
      el('p', { class: 'stage', id: 'stage' }, stageWords(state, step))),
    typed || page.entry.open || isTyped(state)
      ? press('Delete', rubOut, { class: 'tool' }) : press('Type', openKeys, { class: 'tool' }));
}

/** As large as it fits: a value that is cut could be read for another one. */
const held = (node) => el('div', { class: 'held' }, node);

const lengthOf = (text) => Math.max(7, text.length);

const typedValue = (text) => held(el('input', { class: 'now', id: 'now', readonly: true, inputmode: 'none', 'aria-label': 'Value typed', value: text, len: lengthOf(text), key: 'now' }));

function liveValue() {
  const text = page.live.text || NO_VALUE;
  return held(el('p', { class: 'now', id: 'now', len: lengthOf(text) }, text));
}

/** Ten times a second: the texts alone, and only where they changed. */
function showLive() {
  const session = page.state?.session;
  if (!session?.step || page.route.screen !== 'bench') return;
  const now = byId('now');
  const stage = byId('stage');
  const value = page.live.text || NO_VALUE;
  if (now && now.tagName === 'P' && now.textContent !== value) {
    now.textContent = value;
    now.style.setProperty('--len', lengthOf(value));
  }
  const words = stageWords(page.state, session.step);
  if (stage && stage.textContent !== words) stage.textContent = words;
  const row = stage?.closest('.live');
  if (row && !entryText(session.step)) row.dataset.stage = page.live.stage;
}

function lastPanel(session) {
  const { last } = session;
  if (!last) return el('div', { class: 'last none' }, el('p', {}, 'Nothing is taken yet.'));
  const kind = last.taken ? last.outcome : 'back';
  return el('div', { class: `last ${kind}`, key: 'last', once: `${last.id} ${last.taken}` }, sign(kind),
    el('p', { class: 'what' }, el('strong', {}, last.taken ? OUTCOMES[last.outcome] : 'Taken back'), ' ', el('b', {}, last.value), el('span', {}, ` ${last.text}`)),
    el('p', { class: 'says' }, last.taken ? last.says : 'It counts no longer.'));
}

function actions(state, session) {
  const { step } = session;
  const blocked = page.link !== 'here' || gateOf(state) !== '';
  const small = (label, key, action, off) => press([label, hint(key)], action, { class: 'small', key: `do-${label}`, 'aria-disabled': off ? 'true' : null });
  return el('div', { class: 'actions' },
    el('div', { class: 'main' },
      press(['Take back', hint('Backspace')], backDialog, { class: 'back', key: 'back', 'aria-disabled': session.last?.taken ? null : 'true' }),
      step ? press(['Take', hint('Space')], takeNow, { class: 'take', key: 'take', once: askedOf(state), 'aria-disabled': blocked ? 'true' : null })
        : press('End the test', finishDialog, { class: 'take', key: 'finish' }),
      press('More', moreDialog, { class: 'more small', key: 'more-narrow' })),
    el('div', { class: 'others' },
      small('Skip', 'S', skipDialog, !step), small('Note', 'N', noteDialog), small('Photo', 'P', photoDialog),
      small('Jump', '/', () => jumpDialog()), small('Why', '?', whyDialog, !step), small('More', '+', moreDialog)));
}

const gate = (title, ...children) => el('div', { class: 'gate' }, el('h2', {}, title), ...children);

const cautionsPanel = (step) => gate('Before this step',
  el('ul', {}, step.cautions.map((caution) => el('li', {}, caution))),
  press(['Read and done', hint('C')], confirmCautions, { class: 'wide', key: 'confirm', once: step.id }));

const leadsPanel = () => gate('Leads first',
  el('p', {}, 'Lift the probes, then hold the two firmly together, metal on metal. What they read is subtracted from every reading.'),
  liveValue(),
  press(['Measure the leads', hint('Space')], takeNow, { class: 'wide', key: 'leads' }));

const lostPanel = (state, meter) => gate('The meter is lost',
  el('p', {}, meter.trouble), el('p', {}, 'Nothing is taken until it is back. The step stays.'),
  el('div', { class: 'pair' },
    press('Try again', () => act('meter', { which: whichMeter(state), address: meter.address, profile: meter.profile }), { class: 'wide', key: 'retry' }),
    press('Type values', () => act('meter', { which: whichMeter(state), address: 'none', profile: '' }), { class: 'wide second', key: 'type-instead' })));

const offerPanel = ({ offer }) => gate('This item is done, with a fault',
  el('p', {}, offer.text),
  el('div', { class: 'pair' },
    press([`Find it now: ${many(offer.telling, 'reading', 'readings')}`, hint('F')], () => act('lead', { follow: true }), { class: 'wide', key: 'follow', once: offer.text }),
    press(['Go on, find it later', hint('G')], () => act('lead', { follow: false }), { class: 'wide second', key: 'go-on', once: offer.text })));

const overPanel = (session) => gate('Nothing is left to measure',
  session.progress.skipped ? el('p', {}, `${many(session.progress.skipped, 'step was', 'steps were')} skipped: what they prove stays open.`) : null,
  el('p', {}, session.found.faults.length ? `${many(session.found.faults.length, 'fault', 'faults')} so far. End the test to see the verdict.` : 'End the test to see the verdict.'),
  el('p', {}, el('a', { class: 'button', href: link('unit', session.unit.id) }, 'See the unit')));

function foundParts(session) {
  const { faults, working } = session.found;
  const { sentences } = session.open;
  return [
    el('h2', {}, 'Faults so far', working ? el('small', {}, ' being worked out …') : null),
    faults.length ? el('ol', { class: 'faults' }, faults.map(faultItem)) : el('p', {}, 'None.'),
    sentences.length ? [el('h2', {}, 'Still open'), openList(session.open)] : null];
}

const faultItem = (fault) => el('li', {},
  el('p', { class: 'fault' }, sign('bad'), el('strong', {}, fault.title), ' ', el('span', { class: 'tag' }, fault.certainty)),
  el('p', {}, fault.text),
  fault.readings.length ? el('ul', { class: 'plain mono' }, fault.readings.map((reading) => el('li', {}, reading))) : null,
  fault.others.length ? fold(`else-${fault.title}`, 'What else it may be', el('ul', {}, fault.others.map((other) => el('li', {}, other)))) : null);

const openList = (open) => el('ul', { class: 'open' }, open.sentences.map((sentence) => el('li', {}, sentence)),
  open.more ? el('li', {}, `and ${open.more} more`) : null);

// ---------------------------------------------------------------- Bench: what the hands do

const askedOf = (state) => (state.session ? `${state.session.step?.id ?? 'none'} ${gateOf(state)}` : '');

/** Whether what is asked now stood there long enough to be meant. */
const isRead = () => page.shown.asked === askedOf(page.state) && performance.now() - page.shown.since >= TOO_SOON_MS;

const STOPPED = {
  over: 'Nothing is left to measure.',
  offer: 'Choose first how to go on.',
  lost: 'The meter is lost.',
  cautions: 'Confirm first what stands under “Before this step”.',
};

/** Takes for the step that stands there: not for one that came up as the key was on its way. */
function takeNow() {
  const { state } = page;
  if (page.busy || !state?.session) return;
  const gated = gateOf(state);
  if (page.link !== 'here') notice('No connection: nothing is kept.');
  else if (STOPPED[gated]) notice(STOPPED[gated]);
  else if (!isRead()) notice('This has just changed. Look at it, then press again.');
  else if (gated === 'leads') act('leads');
  else takeStep(state.session.step, entryText(state.session.step));
}

async function takeStep(step, typed) {
  if (!typed && isTyped(page.state)) { notice('Type first what the meter shows.'); return; }
  const { volts } = page.entry;
  const kept = await act('take', !typed ? { step: step.id } : volts ? { step: step.id, typed, volts } : { step: step.id, typed });
  if (kept) { page.entry = noEntry(page.state.session?.step?.id ?? ''); later(); }
}

function confirmCautions() {
  const step = page.state.session?.step;
  if (step?.confirm && isRead()) act('confirm', { step: step.id });
}

const unitOf = (step) => page.entry.unit || step.unit;

/** What was typed for this step, with its unit; empty where nothing was. */
function entryText(step) {
  const { entry } = page;
  if (entry.step !== step.id) return '';
  if (entry.over) return 'OL';
  return /\d/.test(entry.digits) ? `${entry.digits} ${unitOf(step)}` : entry.digits;
}

function keypad(state, step) {
  if (!isTyped(state) && !page.entry.open) return null;
  const key = (label, action, kind = '', pressed = null) => el('button', { type: 'button', class: kind, onclick: action, key: `key-${label}`, 'aria-pressed': pressed }, label);
  const digit = (label) => key(label, () => typeIn(label), 'digit');
  const unit = (label) => key(label, () => chooseUnit(label), 'unit', String(unitOf(step) === label && !page.entry.over));
  const volts = page.entry.volts || step.volts;
  const last = step.volts ? el('button', { type: 'button', class: 'unit volts', onclick: () => voltsDialog(step), key: 'key-volts', 'aria-label': `Test volts: ${volts}` }, volts) : el('span');
  const [first, second, third, fourth] = [0, 1, 2, 3].map((at) => (step.units[at] ? unit(step.units[at]) : last));
  return el('div', { class: 'keypad', role: 'group', 'aria-label': 'Keys for the value' },
    digit('7'), digit('8'), digit('9'), digit('0'), first, second,
    digit('4'), digit('5'), digit('6'), digit('.'), third, fourth,
    digit('1'), digit('2'), digit('3'), digit('−'), digit('>'), key('OL', typeOver, 'over', String(page.entry.over)));
}

function openKeys() { page.entry.open = true; later(); }

function typeIn(character) {
  const { entry } = page;
  if (!page.state.session?.step || entry.digits.length > 11) return;
  entry.over = false;
  entry.open = true;
  if ((character === '.' && entry.digits.includes('.')) || ('>−'.includes(character) && entry.digits)) {
    scanner.oddAt = performance.now();
    return;
  }
  entry.digits += character;
  later();
}

/** What is typed for a step, before anything is. */
function noEntry(step) { return { step, digits: '', unit: '', volts: '', over: false, open: false }; }

function typeOver() { Object.assign(page.entry, { over: true, digits: '', open: true }); later(); }

function chooseUnit(unit) { page.entry.unit = unit; page.entry.over = false; later(); }

/** A tester that stood at other volts than are asked for shows something else: the row says so. */
function voltsDialog(step) {
  textLine('Test volts', 'volts', `This step asks for ${step.volts}. If the tester was set to other volts, type them`, 'These were on', async (volts) => {
    if (!/^\d{1,5}([.,]\d{1,2})?\s*v?$/i.test(volts)) { notice('Type the volts as the tester shows them, such as 250 V.', 'bad'); return false; }
    page.entry.volts = `${volts.replace(',', '.').replace(/\s*v$/i, '')} V`;
    later();
    return true;
  });
}

function rubOut() {
  const { entry } = page;
  if (entry.over) entry.over = false;
  else if (entry.digits) entry.digits = entry.digits.slice(0, -1);
  else entry.open = false;
  later();
}

/** Opens a unit by its serial number; else looks on the bench for a point, an item or a wire of that name. */
async function scanned(text) {
  tell(`Scanned: ${text}`);
  try {
    const found = await ask(`/api/units?search=${encodeURIComponent(text)}`);
    const unit = found.units.find((one) => one.serial.toLowerCase() === text.toLowerCase());
    if (unit) { go('unit', unit.id); return; }
  } catch (failure) {
    refuse(failure);
    return;
  }
  if (page.route.screen === 'bench' && page.state.session) { await act('jump', { to: text }); return; }
  notice(`No unit has the serial number ${text}.`, 'bad');
}

// ---------------------------------------------------------------- dialogs

/** One dialog at a time; the step can't be answered while one is open. */
function dialog(title, content, closing = 'Close') {
  const box = byId('dialog');
  box.replaceChildren(el('div', { class: 'sheet' }, el('h2', { id: 'dialog-title', tabindex: '-1' }, title), content,
    closing ? el('div', { class: 'closing' }, press(closing, closeDialog, { key: 'dialog-close' })) : null));
  if (!box.open) box.showModal();
  page.shown.dialog = performance.now();
  (box.querySelector('[autofocus]') ?? byId('dialog-title')).focus();
}

function closeDialog() {
  const box = byId('dialog');
  if (!box.open) return;
  box.close();
  box.replaceChildren();
  byId('main').focus({ preventScroll: true });
}

/** A few large reasons, and a field for any other. */
function reasonDialog(title, lead, reasons, done) {
  const send = async (why) => {
    if (!why) return;
    closeDialog();
    forget('why');
    await done(why);
  };
  forget('why');
  dialog(title, [el('p', {}, lead),
    el('div', { class: 'choices' }, reasons.map((reason, at) => press([reason, hint(String(at + 1))], () => send(reason), { class: 'wide second', key: `why-${at}`, 'data-choice': at + 1 }))),
    el('form', { onsubmit: (event) => { event.preventDefault(); send(draft('why')); } },
      field('why', 'Another reason'), el('button', { class: 'wide', key: 'why-send' }, title))], 'Leave it');
}

function backDialog() {
  const last = page.state.session?.last;
  if (!last?.taken) { notice('Nothing to take back.'); return; }
  reasonDialog('Take back', `${last.text}: ${last.value}. It stays in the record as taken back.`,
    ['The probe slipped', 'I was at another pin', 'The switch was in another position', 'I typed it wrong'], (why) => act('back', { reading: last.id, why }));
}

function skipDialog() {
  const step = page.state.session?.step;
  if (!step) return;
  reasonDialog('Skip', `${step.from.text} to ${step.to.text}. A step that was skipped proves nothing: the unit can’t conform by it.`,
    ['I can’t reach it', 'It is not fitted yet', 'It is damaged', 'Another person reads it'], (why) => act('skip', { step: step.id, why }));
}

function noteDialog() {
  textDialog('Note', 'note', 'What you saw', 'Keep the note', (text) => act('note', { text }));
}

function textDialog(title, key, label, button, done) {
  dialog(title, el('form', { onsubmit: async (event) => {
    event.preventDefault();
    const text = draft(key);
    if (text && await done(text) !== false) { forget(key); closeDialog(); }
  } }, field(key, label, { rows: 4, autofocus: true }, 'textarea'), el('button', { class: 'wide', key: `${key}-send` }, button)), 'Leave it');
}

function photoDialog() {
  const send = async (event) => {
    event.preventDefault();
    const [file] = byId('field-photo').files;
    if (!file) return;
    const picture = await shrunk(file);
    try {
      receive(await ask(`/api/session/photo?text=${encodeURIComponent(draft('photo-text'))}`, { method: 'POST', headers: { 'Content-Type': picture.type }, body: picture }));
      forget('photo', 'photo-text');
      closeDialog();
      notice('The photo is kept.');
    } catch (failure) {
      refuse(failure);
    }
  };
  forget('photo');
  dialog('Photo', el('form', { onsubmit: send },
    el('div', { class: 'field' }, el('label', { for: 'field-photo' }, 'Picture'), el('input', { id: 'field-photo', type: 'file', accept: 'image/jpeg,image/png', capture: 'environment', autofocus: true })),
    field('photo-text', 'What it shows'), el('button', { class: 'wide', key: 'photo-send' }, 'Keep the photo')), 'Leave it');
}

/** A camera's picture is larger than a record needs and than the store takes. */
async function shrunk(file, longest = 2400) {
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture || (file.size < 4e6 && ['image/jpeg', 'image/png'].includes(file.type))) return file;
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
  const canvas = el('canvas', { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((done) => { canvas.toBlob((blob) => done(blob ?? file), 'image/jpeg', 0.85); });
}

function jumpDialog() {
  textLine('Jump', 'jump', 'A point, an item or a wire, such as P2-3, TB1 or W013', 'Go there', (to) => act('jump', { to }));
}

function textLine(title, key, label, button, done) {
  forget(key);
  dialog(title, el('form', { onsubmit: async (event) => {
    event.preventDefault();
    const text = draft(key);
    if (text && await done(text)) closeDialog();
  } }, field(key, label, { autofocus: true, autocapitalize: 'off', spellcheck: 'false' }), el('button', { class: 'wide', key: `${key}-send` }, button)), 'Leave it');
}

function whyDialog() {
  const session = page.state.session;
  if (!session?.step) return;
  const { step } = session;
  dialog(`Why ${step.number ? `step ${step.number}` : 'this step'}`, [
    el('ul', {}, step.why.map((sentence) => el('li', {}, sentence))),
    el('p', {}, `Should read ${step.expected.text}. ${step.expected.means}`),
    step.wire ? el('p', {}, `It is about ${step.wire}.`) : null,
    step.cautions.length ? [el('h3', {}, 'Cautions'), el('ul', {}, step.cautions.map((caution) => el('li', {}, caution)))] : null]);
}

function foundDialog() {
  const session = page.state.session;
  if (session) dialog('So far', el('div', { class: 'beside-copy' }, foundParts(session)));
}

function moreDialog() {
  const { state } = page;
  const choose = (label, action) => press(label, () => { closeDialog(); action(); }, { class: 'wide second' });
  const { meter, session } = state;
  dialog('More', [
    el('p', {}, `Meter: ${meter.text || meter.address}. ${meter.leads ? `Leads ${meter.leads.text}, at ${clock(meter.leads.at)}.` : ''}`),
    el('div', { class: 'choices' },
      ...(session?.step ? [choose('Skip this step', skipDialog), choose('Why this step', whyDialog)] : []),
      ...(session?.last?.taken ? [choose('Take back', backDialog)] : []),
      choose('Note', noteDialog), choose('Photo', photoDialog), choose('Jump', jumpDialog),
      choose('Measure the leads', () => leadsDialog()),
      choose('Another meter', () => meterDialog('meter')),
      choose('Another insulation meter', () => meterDialog('insulationMeter')),
      choose('Conditions have changed', conditionsDialog),
      choose('Leave it for later', leaveDialog),
      choose('End the test', finishDialog))]);
}

function leadsDialog() {
  dialog('Measure the leads', [el('p', {}, 'Lift the probes, then hold the two firmly together, metal on metal.'),
    press('Measure', async () => { if (await act('leads')) closeDialog(); }, { class: 'wide' })], 'Leave it');
}

function meterDialog(which) {
  const meter = page.state[which];
  forget('meter-address', 'meter-profile');
  dialog(which === 'meter' ? 'Meter' : 'Insulation meter', el('form', { onsubmit: async (event) => {
    event.preventDefault();
    if (await act('meter', { which, address: draft('meter-address', meter.address), profile: draft('meter-profile', meter.profile) })) closeDialog();
  } }, field('meter-address', 'Address', { kept: meter.address, help: '192.0.2.7:5025, /dev/ttyUSB0, COM3; none: values are typed' }),
  field('meter-profile', 'Profile', { kept: meter.profile, help: 'How the meter is spoken to; see ringout meters' }),
  el('button', { class: 'wide', key: 'meter-send' }, 'Use this meter')), 'Leave it');
}

const CONDITIONS = [
  ['temperature', 'Temperature of the wires', '20 °C'], ['humidity', 'Humidity', '46 %'], ['procedure', 'Procedure', ''], ['inspector', 'Inspector', ''],
  ['work order', 'Work order', ''], ['instrument', 'Instrument', 'milliohm meter'], ['instrument number', 'Its own number', 'T-118'], ['calibration due', 'Its calibration is due', '2027-03-31'],
  ['insulation instrument number', 'Number of the insulation tester', 'T-204'], ['insulation calibration due', 'Its calibration is due', '2027-03-31']];

/** Fields of the sheet Job; what stands there already is shown, and only what changed is sent. */
function conditionFields(known) {
  return CONDITIONS.map(([name, label, example]) => field(`job-${name}`, label,
    { kept: known.find((one) => one.name === name)?.value ?? '', placeholder: example ? `such as ${example}` : null }));
}

function changedConditions(known) {
  return CONDITIONS.map(([name]) => ({ name, value: draft(`job-${name}`, known.find((one) => one.name === name)?.value ?? '') }))
    .filter(({ name, value }) => value !== (known.find((one) => one.name === name)?.value ?? ''));
}

const forgetConditions = () => forget(...CONDITIONS.map(([name]) => `job-${name}`));

function conditionsDialog() {
  const known = page.state.session?.conditions ?? [];
  forgetConditions();
  dialog('Conditions', el('form', { onsubmit: async (event) => {
    event.preventDefault();
    if (await act('conditions', { conditions: changedConditions(known) })) closeDialog();
  } }, el('div', { class: 'fields' }, conditionFields(known)), el('button', { class: 'wide', key: 'conditions-send' }, 'Keep this')), 'Leave it');
}

function leaveDialog() {
  dialog('Leave it for later', [el('p', {}, 'All that was taken is kept. The test goes on at the same step, from the unit’s screen.'),
    press('Leave it for later', async () => { const unit = page.state.session.unit.id; if (await act('leave')) go('unit', unit); }, { class: 'wide', key: 'leave' })], 'Stay');
}

function finishDialog() {
  const session = page.state.session;
  const missing = session.progress.of - session.progress.made;
  dialog('End the test', [el('p', {}, missing ? `${many(missing, 'step is', 'steps are')} not measured: the unit can’t conform by this test.` : 'Everything of the plan is measured.'),
    press('End the test', async () => { const unit = session.unit.id; if (await act('finish')) go('unit', unit); }, { class: 'wide', key: 'finish-now' })], 'Stay');
}

// ---------------------------------------------------------------- looks

function settingsDialog() {
  const choice = (name, label, value, chosen, action) => el('label', { class: 'choice' },
    el('input', { type: 'radio', name, value, checked: chosen === value, key: `${name}-${value}`, onchange: () => action(value) }), el('span', {}, label));
  const group = (name, title, choices, chosen, action) => el('fieldset', {}, el('legend', {}, title),
    choices.map(([value, label]) => choice(name, label, value, chosen, action)));
  dialog('Set up', [
    page.who.shop ? signedInPart() : null,
    group('look', 'Look', [['device', 'As the device'], ['light', 'Light'], ['dark', 'Dark'], ['contrast', 'High contrast']], remembered.get('look', 'device'),
      (value) => { remembered.set('look', value); applyLook(); }),
    group('sound', 'Tones', [['on', 'On'], ['off', 'Off']], tones.on ? 'on' : 'off', (value) => { remembered.set('sound', value); tones.on = value === 'on'; tones.play('good'); }),
    group('speech', 'Speech', [['on', 'On'], ['off', 'Off']], speech.on ? 'on' : 'off',
      (value) => { remembered.set('speech', value); speech.on = value === 'on'; if (page.state?.session) speech.say(spokenStep(page.state.session)); }),
    el('div', { class: 'tries' }, Object.entries({ good: 'Good', bad: 'Not good', unsure: 'Not sure', lifted: 'Lifted' }).map(([name, label]) => press(`Hear “${label}”`, () => tones.play(name), { class: 'second' }))),
    fold('keys', 'Keys', el('dl', { class: 'keys' }, KEYS.flatMap(([key, does]) => [el('dt', {}, key), el('dd', {}, does)]))),
    page.who.shop ? null : fold('browsers', 'Another browser on this machine', el('p', {}, 'Each browser needs a new address. It works once.'),
      press('Make an address', otherBrowser, { class: 'second', key: 'other-browser' }), el('p', { id: 'other-address', class: 'address', 'aria-live': 'polite' })),
    el('p', { class: 'quiet' }, `${page.state.program}. Store: ${page.state.store}.`)]);
}

async function otherBrowser() {
  try {
    const { address } = await post('/api/ticket');
    byId('other-address')?.replaceChildren(address);
  } catch (failure) {
    refuse(failure);
  }
}

const KEYS = [
  ['Space, Page Down, Enter', 'take the value; a foot pedal sends Page Down'], ['Backspace', 'rub out what was typed, else take back'], ['0 to 9, point, > and −', 'type a value'],
  ['m, R, k, M, G', 'behind a number: mΩ, Ω, kΩ, MΩ, GΩ'], ['O', 'OL: more than the meter can show'], ['S', 'skip'], ['N', 'note'], ['P', 'photo'], ['/', 'jump; on Units, search'],
  ['?', 'why this step'], ['+', 'more'], ['C', 'cautions read and done'], ['F, G', 'find the fault now, or go on'], ['1 to 4', 'choose a reason']];

/** The look that was chosen, else the device's. */
function applyLook() {
  const chosen = remembered.get('look', 'device');
  const dark = matchMedia('(prefers-color-scheme: dark)').matches;
  const contrast = matchMedia('(prefers-contrast: more)').matches;
  document.documentElement.dataset.look = chosen === 'contrast' || (chosen === 'device' && contrast) ? `contrast-${dark ? 'dark' : 'light'}`
    : chosen === 'device' ? (dark ? 'dark' : 'light') : chosen;
}

// ---------------------------------------------------------------- Units

function unitsScreen() {
  const doc = page.docs.units;
  return [
    el('div', { class: 'head' }, el('h1', {}, 'Units'),
      field('search', 'Search, or scan a serial number', { type: 'search', kept: page.search, oninput: (event) => {
        page.search = event.target.value.trim();
        loadSoon();
      } })),
    doc ? [unitList(doc.units), may('test') ? newUnit(doc.lists) : null, may('list') ? newList() : null] : waiting()];
}

function unitList(units) {
  if (!units.length) return el('p', { class: 'quiet' }, page.search ? `No unit found for “${page.search}”.` : 'No unit is in the store yet. Make one from a wire list below.');
  return el('ul', { class: 'cards', 'aria-label': 'Units' }, units.map((unit) => {
    const verdict = VERDICTS[unit.verdict] ?? VERDICTS[''];
    return el('li', {}, el('a', { class: `card ${verdict.sign}`, href: link('unit', unit.id), key: `unit-${unit.id}` },
      sign(verdict.sign),
      el('span', { class: 'serial' }, unit.serial),
      el('span', { class: 'verdict' }, verdict.word, unit.underWay ? el('span', { class: 'tag' }, 'under way') : null, unit.practice ? el('span', { class: 'tag' }, 'practice') : null),
      el('span', { class: 'title' }, `${unit.title}, ${unit.drawing}, revision ${unit.revision}`),
      el('span', { class: 'quiet' }, unit.tests ? `${many(unit.tests, 'test', 'tests')}, last ${unit.day}, ${unit.who}` : 'No test yet')));
  }));
}

function newUnit(lists) {
  return el('section', { 'aria-labelledby': 'new-unit' }, el('h2', { id: 'new-unit' }, 'New unit'),
    lists.length ? el('form', { class: 'fields', onsubmit: (event) => {
      event.preventDefault();
      const serial = draft('serial');
      if (serial) go('new', byId('field-list').value, serial);
    } },
    field('list', 'Made to', { options: lists.map((list) => el('option', { value: list.id }, `${list.drawing} ${list.revision}: ${list.title}`)) }, 'select'),
    field('serial', 'Serial number', { autocapitalize: 'off', spellcheck: 'false', required: true }),
    el('button', { class: 'wide', key: 'new-unit' }, 'Test a new unit')) : el('p', {}, 'First give the page a wire list, below.'));
}

function newList() {
  const chosen = (event) => { const [file] = event.target.files; if (file) sendList(file); };
  return el('section', { 'aria-labelledby': 'new-list' }, el('h2', { id: 'new-list' }, 'New wire list'),
    el('div', { class: 'drop' }, el('p', {}, 'Drop a spreadsheet anywhere on this page. Any layout will do: you see how it was understood before it is taken.'),
      el('label', { class: 'button', for: 'field-file' }, 'Choose a file'),
      el('input', { class: 'unseen-file', id: 'field-file', type: 'file', key: 'file', onchange: chosen })));
}

async function sendList(file) {
  notice(`${file.name} is being read …`);
  try {
    page.docs.list = await ask(`/api/lists?name=${encodeURIComponent(file.name)}`, { method: 'POST', headers: { 'Content-Type': 'application/octet-stream' }, body: file });
    closeNotice();
    go('list', page.docs.list.id);
    later();
  } catch (failure) {
    refuse(failure);
  }
}

// ---------------------------------------------------------------- Wire list

const LIST_STATES = {
  sure: { sign: 'good', word: 'Understood.' },
  unsure: { sign: 'unsure', word: 'Not sure: choose below how it is meant.' },
  refused: { sign: 'bad', word: 'Not understood. Nothing is taken.' },
};

function listScreen() {
  const list = page.docs.list;
  if (!list) return [el('h1', {}, 'Wire list'), el('p', {}, 'Give the file again: the page was loaded again.'), newList()];
  const standing = LIST_STATES[list.state];
  return [
    el('h1', {}, list.file), el('p', { class: 'quiet' }, [list.title, list.drawing, list.revision && `revision ${list.revision}`].filter(Boolean).join(', ')),
    el('p', { class: `headline ${standing.sign}` }, sign(standing.sign), el('strong', {}, list.taken ? 'Taken. Now you can make units from it.' : standing.word)),
    el('div', { class: 'row' }, list.taken ? el('a', { class: 'button', href: link('units') }, 'To the units')
      : list.state === 'sure' ? press('Take this list', takeList, { class: 'wide', key: 'take-list' }) : null,
    list.taken ? null : el('a', { class: 'button second', href: link('units') }, 'Leave it')),
    list.choices.length ? choicesPart(list) : null,
    list.problems.length ? remarksPart('Doubts in the file', list.problems) : null,
    list.says.length ? el('section', {}, el('h2', {}, 'How it was understood'), el('ul', {}, list.says.map((sentence) => el('li', {}, sentence)))) : null,
    list.remarks.length ? remarksPart('Remarks on the paper', list.remarks) : null,
    list.wires.length ? wiresPart(list) : null];
}

const choicesPart = (list) => el('section', {}, el('h2', {}, 'How is it meant?'),
  el('ul', { class: 'cards' }, list.choices.map((choice, at) => el('li', {}, el('div', { class: 'card open' },
    el('p', {}, el('strong', {}, choice.text)), el('p', {}, 'Its first wires would be:'), el('ul', { class: 'plain mono' }, choice.first.map((wire) => el('li', {}, wire))),
    press('It is meant so', () => readList(choice.options), { class: 'wide', key: `choice-${at}`, 'aria-label': `It is meant so: ${choice.text}` }))))));

const severitySign = (severity) => ({ error: 'bad', warning: 'unsure' }[severity] ?? 'none');

const remarksPart = (title, remarks) => el('section', {}, el('h2', {}, title, ` (${remarks.length})`),
  el('ul', { class: 'remarks' }, remarks.map((remark) => el('li', {}, sign(severitySign(remark.severity)),
    el('span', {}, el('b', {}, `${remark.severity}: `), remark.text, remark.place ? el('span', { class: 'place' }, ` ${remark.place}`) : null)))));

/** Each wire as it was understood, with the doubts of its own row below it. */
function wiresPart(list) {
  const doubts = (place) => list.problems.filter((problem) => problem.place === place);
  return el('section', {}, el('h2', {}, 'Row by row'),
    el('ol', { class: 'rows' }, list.wires.map((wire) => el('li', {}, el('span', {}, wire.sentence), el('span', { class: 'place' }, wire.place),
      doubts(wire.place).map((doubt) => el('p', { class: 'doubt' }, sign(severitySign(doubt.severity)), doubt.text))))),
    list.more ? el('p', {}, `and ${list.more} more`) : null);
}

async function readList(options) {
  try {
    page.docs.list = await post(`/api/lists/${encodeURIComponent(page.docs.list.id)}/read`, { options });
    tell(LIST_STATES[page.docs.list.state].word);
  } catch (failure) {
    refuse(failure);
  }
  later();
}

async function takeList() {
  try {
    await post(`/api/lists/${encodeURIComponent(page.docs.list.id)}/take`);
    page.docs.list = { ...page.docs.list, taken: true };
    notice('The list is taken.');
  } catch (failure) {
    refuse(failure);
  }
  later();
}

// ---------------------------------------------------------------- Unit

const unitHead = (unit, title) => [
  el('h1', {}, title), el('p', { class: 'quiet' }, `${unit.title}, ${unit.drawing}, revision ${unit.revision}`)];

function verdictLine(unit) {
  const verdict = VERDICTS[unit.verdict] ?? VERDICTS[''];
  return el('p', { class: `headline ${verdict.sign}` }, sign(verdict.sign), el('strong', {}, unit.headline || verdict.word));
}

function unitScreen(unit) {
  const here = page.state.session?.unit.id === unit.id;
  return [
    el('div', { class: 'head' }, el('div', {}, unitHead(unit, `Unit ${unit.serial}`)), verdictLine(unit)),
    el('div', { class: 'row' },
      here ? el('a', { class: 'button', href: link('bench') }, ledByAnother() ? 'Look on at the bench' : 'Go on at the bench')
        : !may('test') ? null : el('a', { class: 'button', href: link('unit', unit.id, 'start') }, unit.underWay ? 'Go on where it was left' : unit.tests ? 'Start a retest' : 'Start the test'),
      el('a', { class: 'button second', href: link('record', unit.id) }, 'Record'),
      el('a', { class: 'button second', href: link('unit', unit.id, 'readings') }, 'Readings'),
      el('a', { class: 'button second', href: link('unit', unit.id, 'ticks') }, 'Tick ends as they are made')),
    unit.leads.length ? el('p', { class: 'leads' }, `${unit.leads.map((lease) => `${lease.station}: ${lease.who} ${lease.silent ? 'led this test, and nothing is heard of this bench any more' : 'leads this test'}`).join('; ')}.`) : null,
    el('div', { class: 'columns' },
      el('section', { 'aria-labelledby': 'proof' }, el('h2', { id: 'proof' }, 'What is proven'), proofTable(unit)),
      faultsPart(unit),
      unit.open.sentences.length ? el('section', {}, el('h2', {}, 'What is still open'), openList(unit.open)) : null),
    facesPart(unit),
    el('div', { class: 'columns' }, historyPart(unit), papersPart(unit), differencePart(unit))];
}

const proofTable = (unit) => el('table', { class: 'proof' },
  el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'What'), el('th', { scope: 'col' }, 'Proven'), el('td', {}))),
  el('tbody', {}, unit.proof.map((row) => el('tr', {}, el('th', { scope: 'row' }, row.what),
    el('td', {}, `${row.shown.toLocaleString('en')} of ${row.demanded.toLocaleString('en')}`),
    el('td', { class: 'share' }, sign(row.shown >= row.demanded ? 'good' : 'unsure'), el('span', { class: 'bar', share: row.demanded ? (100 * row.shown) / row.demanded : 100, 'aria-hidden': 'true' }))))));

const faultsPart = (unit) => el('section', { 'aria-labelledby': 'faults' }, el('h2', { id: 'faults' }, 'Faults'),
  unit.faults.length ? el('ol', { class: 'faults' }, unit.faults.map(faultItem)) : el('p', {}, 'None is seen.'));

function facesPart(unit) {
  const items = (page.faces.get(unit.id) ?? []).filter((item) => item.cavities.length);
  if (!items.length) return null;
  return el('section', { 'aria-labelledby': 'faces' }, el('h2', { id: 'faces' }, 'Faces'),
    el('ul', { class: 'legend' }, Object.entries(STATES).map(([state, { word }]) => el('li', {}, draw('svg', { class: 'face', viewBox: '-1.2 -1.2 2.4 2.4', 'aria-hidden': 'true' }, hole({ x: 0, y: 0, pin: '', signal: '' }, 1, 'insert', state)), word))),
    el('div', { class: 'faces' }, items.map((item) => faceFigure(item, unit.cavities.filter((cavity) => cavity.item === item.ref)))));
}

function faceFigure(item, cavities) {
  const states = new Map(cavities.map((cavity) => [cavity.pin, cavity.state]));
  const named = ['failing', 'unproven'].map((state) => [STATES[state].word, cavities.filter((cavity) => cavity.state === state)]).filter(([, some]) => some.length);
  const proven = cavities.filter((cavity) => cavity.state === 'proven').length;
  const words = [`${proven} proven`, ...named.map(([word, some]) => `${word}: ${some.map((cavity) => cavity.pin).join(', ')}`)].join('; ');
  const long = isLong(bounds(item.cavities), nearest(item.cavities));
  return el('figure', { class: !item.known ? 'unknown' : long ? 'long' : 'compact' }, el('figcaption', {}, el('strong', {}, item.ref), ` ${[item.title, item.from].filter(Boolean).join(', ')}`),
    face(item, { states, label: `${item.ref}: ${words}` }), el('p', { class: 'states' }, words),
    named.length ? fold(`missing-${item.ref}`, `What is missing at ${item.ref}`, el('ul', {}, named.flatMap(([word, some]) => some.map((cavity) => el('li', {}, `${cavity.pin}: ${word}`))))) : null);
}

function historyPart(unit) {
  return el('section', { 'aria-labelledby': 'history' }, el('h2', { id: 'history' }, 'History'),
    unit.history.length ? el('ol', { class: 'history' }, unit.history.map((entry) => el('li', {},
      el('p', { class: 'place' }, [`${day(entry.at)} ${clock(entry.at)}`, entry.who, entry.station].filter(Boolean).join(', ')), el('p', {}, entry.text),
      entry.photo ? el('a', { class: 'photo', href: entry.photo, target: '_blank', rel: 'noopener' }, el('img', { src: entry.photo, alt: entry.text, loading: 'lazy' })) : null))) : el('p', {}, 'Nothing yet.'),
    !may('note') ? null : press('Add a note', () => textDialog('Note', 'unit-note', 'What people should know about this unit', 'Keep the note', async (text) => {
      try { await post(`/api/units/${encodeURIComponent(unit.id)}/note`, { text, who: me() }); await load(); return true; } catch (failure) { refuse(failure); return false; }
    }), { class: 'second', key: 'add-note' }));
}

const papersPart = (unit) => el('section', { 'aria-labelledby': 'papers' }, el('h2', { id: 'papers' }, 'Papers to print'),
  el('ul', { class: 'links' }, unit.papers.map((paper) => el('li', {}, el('a', { class: 'button second', href: paper.href, target: '_blank', rel: 'noopener' }, paper.title)))));

function differencePart(unit) {
  const others = (page.docs.units?.lists ?? []).filter((list) => list.drawing !== unit.drawing || list.revision !== unit.revision);
  if (!others.length) return null;
  return el('section', { 'aria-labelledby': 'diff' }, el('h2', { id: 'diff' }, 'Towards another list'),
    el('ul', { class: 'links' }, others.map((list) => el('li', {}, el('a', { class: 'button second', href: link('unit', unit.id, 'diff', list.id) }, `What changes towards ${list.drawing} ${list.revision}`)))));
}

// ---------------------------------------------------------------- starting a test

/** A new unit (`#/new/LIST/SERIAL`), the test that was left, or a retest: who was at the unit in between is asked and kept. */
function startScreen(unit) {
  const { id, part: serial } = page.route;
  const retest = unit && unit.tests > 0 && !unit.underWay;
  const known = knownConditions(unit);
  const list = page.docs.units?.lists.find((one) => one.id === id);
  const title = unit ? `Unit ${unit.serial}: ${retest ? 'retest' : unit.underWay ? 'go on' : 'first test'}` : `New unit ${serial}`;
  return [
    unit ? unitHead(unit, title) : [el('h1', {}, title), el('p', { class: 'quiet' }, list ? `${list.title}, ${list.drawing}, revision ${list.revision}` : '')],
    el('form', { onsubmit: (event) => { event.preventDefault(); startTest(unit, retest); } },
      ledByAnother() ? el('p', { class: 'banner unsure' }, sign('unsure'), el('span', {}, el('strong', {}, `${page.state.tester} leads a test at this bench. `), 'Ask first: from now on the test is led in your name. Earlier readings keep the other name.')) : null,
      page.who.shop ? el('p', {}, `${page.who.name} holds the probes.`)
        : el('div', { class: 'fields' }, field('tester', 'Who holds the probes', { kept: page.state.tester, required: true })),
      retest ? reworkFields(unit) : null,
      silent(unit).length ? el('section', {}, el('p', { class: 'banner unsure' }, sign('unsure'), el('span', {}, `Nothing is heard any more of ${silent(unit).map((lease) => `${lease.station} (${lease.who})`).join(', ')}, where this test was led. Look there first: nobody may hold probes at this unit.`)),
        el('div', { class: 'fields' }, field('word', 'Why you take the test over', { required: true }))) : null,
      el('section', {}, el('h2', {}, 'Conditions'), el('p', { class: 'help' }, 'A blank field keeps what the station has.'), el('div', { class: 'fields' }, conditionFields(known))),
      el('button', { class: 'wide', key: 'start' }, unit?.underWay ? 'Go on' : 'Start'))];
}

/** Benches that lead the unit's test and of which nothing is heard any more: they are taken over, with a word. */
const silent = (unit) => (unit?.leads ?? []).filter((lease) => lease.silent && lease.station !== page.state.station);

/** What the sheet Job says already, where this unit is the one on the bench. */
const knownConditions = (unit) => (unit && page.state.session?.unit.id === unit.id ? page.state.session.conditions : []);

function reworkFields(unit) {
  const items = page.faces.get(unit.id) ?? [];
  const wires = [...new Set((page.docs.ticks?.ends ?? []).map((end) => end.wire))];
  const tick = (ref) => el('label', { class: 'choice' }, el('input', { type: 'checkbox', name: 'opened', value: ref, key: `opened-${ref}`,
    checked: page.drafts.get(`opened-${ref}`) === 'yes', onchange: (event) => page.drafts.set(`opened-${ref}`, event.target.checked ? 'yes' : '') }), el('span', {}, ref));
  return [
    el('fieldset', {}, el('legend', {}, 'Which items were opened since the last test?'), items.map((item) => tick(item.ref))),
    el('div', { class: 'fields' },
      field('touched', 'Which wires were worked on?', { list: 'wires', placeholder: 'such as W048, W049', help: 'Put commas between them. Readings at what was opened or touched no longer count and are asked for again.' }),
      field('rework-why', 'What was done?')),
    el('datalist', { id: 'wires' }, wires.map((wire) => el('option', { value: wire })))];
}

async function startTest(unit, retest) {
  const { id, part: serial } = page.route;
  const opened = [...document.querySelectorAll('input[name=opened]:checked')].map((box) => box.value);
  const touched = draft('touched').split(/[,;+\s]+/).filter(Boolean);
  const body = { ...(unit ? { unit: unit.id } : { list: id, serial }), tester: meOr('tester'), takeOver: ledByAnother(),
    conditions: changedConditions(knownConditions(unit)), opened: retest ? opened : [], touched: retest ? touched : [], why: retest ? draft('rework-why') : '', word: silent(unit).length ? draft('word') : '' };
  if (await act('start', body)) {
    page.drafts.clear();
    go('bench');
  }
}

// ---------------------------------------------------------------- readings

/** Every reading of the unit, of whichever test, found by its points: one that was none is taken back here. */
function readingsScreen(unit) {
  const doc = page.docs.readings;
  return [
    unitHead(unit, `Unit ${unit.serial}: readings`),
    el('p', { class: 'quiet' }, 'A reading that is taken back stays in the record but no longer counts. What it showed is then not proven.'),
    el('div', { class: 'fields' },
      field('reading-search', 'A point, a day or a person', { type: 'search', autocapitalize: 'off', spellcheck: 'false', oninput: loadSoon }),
      page.who.shop ? null : field('reading-who', 'Who takes back', { kept: page.state.tester })),
    !doc ? waiting() : !doc.readings.length ? el('p', {}, 'No reading is found.') : el('ol', { class: 'readings' }, doc.readings.map((row) => readingRow(unit, row))),
    doc?.more ? el('p', { class: 'quiet' }, `${many(doc.more, 'reading', 'readings')} more: type more of what you look for.`) : null];
}

function readingRow(unit, row) {
  const kind = row.takenBack ? 'back' : row.outcome;
  return el('li', { key: row.cell }, sign(kind),
    el('p', {}, el('b', {}, row.value), ` ${row.text}`, el('span', { class: 'place' }, [row.takenBack ? 'Taken back' : OUTCOMES[row.outcome], row.at, row.who, row.cell].filter(Boolean).join(', '))),
    row.takenBack || !may('take-back') ? null : press('Take back', () => takeBackDialog(unit, row), { class: 'second', key: `back-${row.cell}`, 'aria-label': `Take back ${row.text}, ${row.value}` }));
}

const MISREAD = ['The probe slipped', 'It was another pin', 'The switch was in another position', 'It was typed wrong'];

function takeBackDialog(unit, row) {
  const who = meOr('reading-who');
  if (!who) { notice('Say first who takes it back.', 'bad'); return; }
  reasonDialog('Take back', `${row.text}: ${row.value}. It stays in the record as taken back.`, MISREAD, async (why) => {
    try {
      await post(`/api/units/${encodeURIComponent(unit.id)}/take-back`, { cell: row.cell, why, who });
      await load();
      notice('Taken back.');
    } catch (failure) {
      refuse(failure);
    }
  });
}

// ---------------------------------------------------------------- ticks

function ticksScreen(unit) {
  const ends = page.docs.ticks?.ends ?? [];
  const items = [...new Set(ends.map((end) => end.item))];
  const item = draft('tick-item', items[0] ?? '');
  const mine = ends.filter((end) => end.item === item);
  const made = mine.filter((end) => end.made);
  const states = new Map(unit.cavities.filter((cavity) => cavity.item === item).map((cavity) => [cavity.pin, cavity.state]));
  const untested = made.filter((end) => states.get(end.pin) !== 'proven').length;
  return [
    unitHead(unit, `Unit ${unit.serial}: ends made`),
    el('div', { class: 'fields' },
      page.who.shop ? null : field('tick-who', 'Who ticks', { kept: page.state.tester, oninput: later }),
      field('tick-item', 'Item', { kept: item, onchange: later, options: items.map((ref) => el('option', { value: ref }, ref)) }, 'select')),
    el('p', { class: 'quiet' }, `${item}: ${made.length} of ${mine.length} made, ${mine.filter((end) => end.checked).length} checked by a second person, ${untested} made and not yet tested.`),
    el('ol', { class: 'ticks' }, mine.map((end) => tickRow(unit, end, states.get(end.pin))))];
}

function tickRow(unit, end, state) {
  const who = meOr('tick-who');
  const send = (what) => async () => {
    if (!who) { notice('Say first who ticks.', 'bad'); return; }
    const path = `/api/units/${encodeURIComponent(unit.id)}/ticks`;
    try {
      const answer = await post(path, { wire: end.wire, item: end.item, pin: end.pin, what, who });
      page.docs.ticks = answer.ends ? answer : await ask(path);
    } catch (failure) {
      refuse(failure);
    }
    later();
  };
  const key = `${end.wire}-${end.item}-${end.pin}`;
  const said = (label) => ({ 'aria-label': `${label}: ${end.wire} at ${end.item}-${end.pin}`, key: `${key}-${label}` });
  const own = end.made && end.made.who === who;
  return el('li', {},
    el('p', { class: 'end' }, el('b', {}, `${end.item}-${end.pin}`), el('span', {}, ` ${end.wire}`)),
    el('p', { class: 'tested' }, STATES[state]?.sign ? sign(STATES[state].sign) : null, state === 'proven' ? 'tested' : state === 'failing' ? 'failing' : 'not tested'),
    el('p', { class: 'place' }, end.made ? `made by ${end.made.who}, ${clock(end.made.at)}` : 'not made', end.checked ? `; checked by ${end.checked.who}, ${clock(end.checked.at)}` : ''),
    !may('tick') ? null : el('div', { class: 'row' },
      end.made ? el('span', { class: 'done' }, sign('good'), 'Made') : press('Made', send('made'), said('Made')),
      !end.made ? null : end.checked ? el('span', { class: 'done' }, sign('good'), 'Checked')
        : own ? el('span', { class: 'quiet' }, 'Another person checks') : press('Checked', send('checked'), said('Checked')),
      end.made ? press('Undo', send('undone'), { class: 'second', ...said('Undo') }) : null));
}

// ---------------------------------------------------------------- another revision

function differenceScreen(unit) {
  const held = page.docs.difference;
  const list = page.docs.units?.lists.find((one) => one.id === page.route.more);
  const head = unitHead(unit, `Unit ${unit.serial}: towards ${list ? `${list.drawing} ${list.revision}` : 'another list'}`);
  if (!held || held.list !== page.route.more) return [head, waiting()];
  const { doc } = held;
  const part = (title, lines, tag = 'ul') => (lines.length ? el('section', {}, el('h2', {}, `${title} (${lines.length})`), el(tag, {}, lines.map((line) => el('li', {}, line)))) : null);
  return [head,
    el('p', { class: `headline ${doc.electrical === 'changed' ? 'unsure' : 'good'}` }, sign(doc.electrical === 'changed' ? 'unsure' : 'good'),
      el('strong', {}, doc.electrical === 'changed' ? 'What is joined changes.' : 'Nothing changes electrically.')),
    part('Look out', (doc.risks ?? []).map((risk) => risk.text ?? String(risk))),
    part('The work, step by step', (doc.rework ?? []).map((step) => step.text), 'ol'),
    part('Wires that change', (doc.wires ?? []).map(wireChange)),
    part('Other changes', (doc.others ?? []).map((other) => other.text)),
    part('Parts needed', doc.partsPlus ?? []), part('Parts left over', doc.partsMinus ?? []),
    part('Readings to take again', (doc.retest ?? []).map((reading) => `${reading.from} to ${reading.to}, ${reading.kind}: ${reading.why?.text ?? ''}`))];
}

function wireChange(change) {
  const ends = [change.from ?? change.end, change.to].filter(Boolean).join(' to ');
  const values = change.field ? `${change.field} ${change.old} becomes ${change.new}` : change.new ? `becomes ${change.new}` : ends;
  return `${change.wire}, ${change.change}: ${values}`;
}

// ---------------------------------------------------------------- Record

const ROLES = [['tester', 'Tester'], ['inspector', 'Inspector'], ['engineer', 'Engineer'], ['lead', 'Lead']];

function recordScreen(unit) {
  const signatures = unit.history.filter((entry) => entry.kind === 'signature');
  return [
    el('div', { class: 'head' }, el('div', {}, unitHead(unit, `Record of unit ${unit.serial}`)), verdictLine(unit)),
    page.state.practice || unit.practice ? el('p', { class: 'banner unsure' }, sign('unsure'), el('span', {}, 'A practice unit: this record proves nothing about a real one.')) : null,
    el('div', { class: 'columns' },
      el('section', { 'aria-labelledby': 'files' }, el('h2', { id: 'files' }, 'The record itself'),
        el('p', {}, 'Every reading with its limit, how it was entered and what the meter said.'),
        el('ul', { class: 'links' }, unit.record.map((form) => el('li', {}, el('a', { class: 'button', href: form.href, target: '_blank', rel: 'noopener' }, form.title))))),
      el('section', { 'aria-labelledby': 'proof' }, el('h2', { id: 'proof' }, 'What is proven'), proofTable(unit)),
      faultsPart(unit),
      unit.open.sentences.length ? el('section', {}, el('h2', {}, 'What is still open'), openList(unit.open)) : null,
      el('section', { 'aria-labelledby': 'signed' }, el('h2', { id: 'signed' }, 'Signatures'),
        signatures.length ? el('ul', {}, signatures.map((entry) => el('li', {}, `${entry.who}: ${entry.text} ${day(entry.at)} ${clock(entry.at)}`))) : el('p', {}, 'Nobody has signed.')),
      may('sign') ? signPart(unit) : null,
      may('sign') && page.who.shop ? keysPart() : null)];
}

function signPart(unit) {
  const send = async (event) => {
    event.preventDefault();
    try {
      const key = page.who.shop ? byId('field-sign-key').value : draft('sign-key');
      await post(`/api/units/${encodeURIComponent(unit.id)}/sign`, { who: page.who.shop ? me() : draft('sign-who'), role: byId('field-sign-role').value, key, passphrase: byId('field-sign-pass').value });
      forget('sign-who', 'sign-key', 'sign-role');
      const { open } = await ask('/api/keys');
      await load();
      if (open.includes(key)) notice(`Signed. But others can read ${key} too: anyone who has it can sign in your name.`, 'bad');
      else notice('Signed.');
    } catch (failure) {
      refuse(failure);
    }
    forget('sign-pass');
    later();
  };
  return el('section', { 'aria-labelledby': 'sign' }, el('h2', { id: 'sign' }, 'Sign'),
    el('form', { class: 'fields', onsubmit: send },
      page.who.shop ? ofWhom(me()) : field('sign-who', 'Name', { required: true, autocomplete: 'name' }),
      field('sign-role', 'As', { options: ROLES.filter(([value]) => !page.who.shop || page.who.roles.includes(value)).map(([value, label]) => el('option', { value }, label)) }, 'select'),
      page.who.shop
        ? field('sign-key', 'Your key', { required: true, options: usableKeys().map((key) => el('option', { value: key.name }, key.fingerprint)), help: usableKeys().length ? null : 'None of yours lies on this bench. Make one under Your keys.' }, 'select')
        : field('sign-key', 'Key file on the bench', { required: true, autocapitalize: 'off', spellcheck: 'false' }),
      field('sign-pass', 'Its passphrase', { type: 'password', autocomplete: 'off' }),
      el('button', { class: 'wide', key: 'sign' }, 'Sign this record')));
}

/** Keys of who is signed in that lie on this bench and count still. */
const usableKeys = () => (page.docs.keys?.own ?? []).filter((key) => key.name && !key.withdrawn);

function keysPart() {
  const make = async (event) => {
    event.preventDefault();
    const passphrase = byId('field-key-pass').value;
    const again = byId('field-key-again').value;
    forget('key-pass', 'key-again');
    if (passphrase !== again) { notice('The two passphrases differ.', 'bad'); later(); return; }
    if (await ofKeys('/api/keys', { passphrase, until: draft('key-until') }, 'Your key is made. Take a copy of it along.')) forget('key-until');
  };
  return el('section', { 'aria-labelledby': 'own-keys' }, el('h2', { id: 'own-keys' }, 'Your keys'),
    el('ul', { class: 'people' }, (page.docs.keys?.own ?? []).map(keyRow)),
    el('p', {}, el('a', { class: 'button', href: '/api/key-list', download: 'keys.txt' }, 'The list of keys of the shop')),
    fold('key-new', 'Make a key', el('form', { class: 'fields', onsubmit: make }, ofWhom(page.who.name),
      field('key-pass', 'A passphrase of its own', { type: 'password', required: true, autocomplete: 'new-password', minlength: 12, help: 'Not the one you sign in with. 12 letters or more, without accents: a few words will do. Nobody can find it again.' }),
      field('key-again', 'The same once more', { type: 'password', required: true, autocomplete: 'new-password' }),
      field('key-until', 'Its last day', { type: 'date', help: 'Empty: until it is withdrawn.' }),
      el('button', { class: 'wide', key: 'key-make' }, 'Make it'))));
}

function keyRow(key) {
  const lasts = key.withdrawn ? `withdrawn ${day(key.withdrawn)}: ${key.why}` : `from ${day(key.from)}${key.until ? ` until ${key.until}` : ''}${key.name ? '' : ', not on this bench'}`;
  return el('li', { key: `key-${key.fingerprint}` }, el('p', {}, el('b', {}, key.fingerprint), el('span', { class: 'place' }, lasts)),
    el('div', { class: 'row' },
      key.name ? el('a', { class: 'button', href: `/api/keys/${encodeURIComponent(key.name)}`, download: key.name, 'aria-label': `Take along key ${key.fingerprint}` }, 'Take it along') : null,
      key.withdrawn ? null : press('Withdraw', () => textDialog('Withdraw this key', 'key-why', 'Why', 'Withdraw', (why) => ofKeys('/api/keys/withdraw', { fingerprint: key.fingerprint, why }, 'The key counts no more. Give out the list of keys anew.')),
        { class: 'second', key: `key-withdraw-${key.fingerprint}`, 'aria-label': `Withdraw key ${key.fingerprint}` })));
}

/** Says something of one's keys; what comes back is all of them. */
async function ofKeys(path, body, done) {
  try {
    page.docs.keys = await post(path, body);
    notice(done);
    later();
    return true;
  } catch (failure) {
    refuse(failure);
    later();
    return false;
  }
}

// ---------------------------------------------------------------- keys, scanner, files

const BIG_KEYS = new Set([' ', 'Enter', 'PageDown', 'Backspace', 'Escape']);

/** Keys that arrive faster than a person types, ended by Enter, are a scan; any others are done one by one, a moment later. */
const scanner = { waiting: [], run: [], at: 0, timer: 0, oddAt: -ODD_KEY_MS };

function isTextField(node) {
  return node instanceof HTMLElement && !node.readOnly
    && (node.tagName === 'TEXTAREA' || node.tagName === 'SELECT' || (node.tagName === 'INPUT' && !['radio', 'checkbox', 'button', 'file'].includes(node.type)));
}

function onKey(event) {
  tones.start();
  if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing || isTextField(event.target)) return;
  const gap = event.timeStamp - scanner.at;
  if (event.key.length === 1 && (event.key !== ' ' || (scanner.waiting.length > 0 && gap < SCAN_GAP_MS))) {
    stop(event);
    if (!event.repeat) waitKey(event, gap);
    return;
  }
  // Shift comes before each large letter of a scan and is no key of its own.
  if (!BIG_KEYS.has(event.key)) return;
  const scan = event.key === 'Enter' && gap < SLOW_SCAN_GAP_MS
    && (scanner.run.length >= SLOW_SCAN_SHORTEST || VALUE.test(scanner.run.join('')) || (gap < SCAN_GAP_MS && scanner.waiting.length >= SCAN_SHORTEST));
  if (scan) {
    stop(event);
    endScan(gap);
    return;
  }
  doKeys();
  if (bigKey(event)) stop(event);
}

function waitKey(event, gap) {
  if (gap >= SCAN_GAP_MS) doKeys();
  if (gap >= SLOW_SCAN_GAP_MS) scanner.run = [];
  scanner.waiting.push(event.key);
  scanner.run.push(event.key);
  scanner.at = event.timeStamp;
  clearTimeout(scanner.timer);
  scanner.timer = setTimeout(doKeys, SCAN_GAP_MS);
}

function endScan(gap) {
  const text = scanner.run.join('').trim();
  const fast = scanner.waiting.length > 1 || gap < SCAN_GAP_MS;
  clearTimeout(scanner.timer);
  const step = page.route.screen === 'bench' && !byId('dialog').open && page.state?.session?.step;
  if (step && VALUE.test(text)) {
    if (!fast) doKeys();
    Object.assign(scanner, { waiting: [], run: [] });
    valueOrName(text, fast);
    return;
  }
  Object.assign(scanner, { waiting: [], run: [] });
  takeName(text);
}

/** What came is no value, whatever of it stands there already. */
function takeName(text) {
  Object.assign(page.entry, { digits: '', over: false });
  closeDialog();
  later();
  scanned(text);
}

const VALUE = /^[<>−-]?(\d+[.,]?\d*|[.,]\d+)[mkMGrR]?$/;

/** Digits come from a quick hand, or from a scanner at a numbered sleeve: where they may be both, that is asked. */
async function valueOrName(text, fast) {
  let named;
  try {
    ({ named } = await ask(`/api/session/named?text=${encodeURIComponent(text)}`));
  } catch (failure) {
    refuse(failure);
    return;
  }
  if (!named) {
    if (!fast && !/^\d+$/.test(text)) { takeNow(); return; }
    if (!fast) {
      // No sleeve has a point or a unit; a number alone may be one that the list does not know.
      Object.assign(page.entry, { digits: text, over: false });
      later();
      notice(`${text} came nearly as fast as from a scanner, and is not a name here: nothing is taken yet. If you typed it, press Enter once more.`, 'bad');
      return;
    }
    // The first of its keys may have come alone: what stands there is not a value.
    Object.assign(page.entry, { digits: '', over: false });
    later();
    notice(`${text} came as fast as from a scanner, and is not a name here: nothing is taken. Type it once more.`, 'bad');
    return;
  }
  dialog('A value or a name?', el('div', { class: 'choices' },
    press([`The value ${text}`, hint('1')], () => { closeDialog(); if (fast) [...text].forEach(letterKey); takeNow(); }, { class: 'wide', key: 'is-value', 'data-choice': 1 }),
    press([`The name ${text}`, hint('2')], () => takeName(text), { class: 'wide second', key: 'is-name', 'data-choice': 2 })), 'Neither');
}

function stop(event) { event.preventDefault(); event.stopPropagation(); }

function doKeys() {
  const keys = scanner.waiting;
  clearTimeout(scanner.timer);
  scanner.waiting = [];
  keys.forEach(letterKey);
}

/** Space, Page Down and Enter take, unless the keyboard stands on a button; Page Down always does. */
function bigKey(event) {
  if (looksOnOnly()) return false;
  if (byId('dialog').open || page.route.screen !== 'bench' || !page.state?.session) return false;
  const onButton = event.target instanceof Element && event.target.matches('button:focus-visible, a:focus-visible, summary:focus-visible');
  if (event.key === 'PageDown' || ((event.key === ' ' || event.key === 'Enter') && !onButton)) {
    if (event.key === 'Enter' && performance.now() - scanner.oddAt < ODD_KEY_MS) notice('That was not a value: nothing is taken. Press Take if it was one.', 'bad');
    else if (!event.repeat) takeNow();
    return true;
  }
  if (event.key === 'Backspace') {
    if (event.repeat) return true;
    if (page.entry.digits || page.entry.over) rubOut();
    else backDialog();
    return true;
  }
  if (event.key === 'Escape' && page.entry.open) { Object.assign(page.entry, { digits: '', over: false, open: false }); later(); return true; }
  return false;
}

const UNIT_KEYS = { m: 'mΩ', k: 'kΩ', M: 'MΩ', G: 'GΩ', r: 'Ω', R: 'Ω' };
const looksOnOnly = () => page.out || (page.route.screen === 'bench' && ledByAnother());
const LETTERS = { s: skipDialog, n: noteDialog, p: photoDialog, '/': jumpDialog, '?': whyDialog, '+': moreDialog, c: confirmCautions };

function letterKey(key) {
  if (looksOnOnly()) return;
  const box = byId('dialog');
  if (box.open) {
    if (performance.now() - page.shown.dialog > TOO_SOON_MS) box.querySelector(`[data-choice="${CSS.escape(key)}"]`)?.click();
    return;
  }
  const session = page.state?.session;
  if (page.route.screen !== 'bench' || !session) { if (key === '/') byId('field-search')?.focus(); return; }
  if (session.offer) { if (/^[fg]$/i.test(key) && isRead()) act('lead', { follow: key.toLowerCase() === 'f' }); return; }
  const step = session.step;
  if (step && (/[0-9.,>-]/.test(key))) { typeIn(key.replace(',', '.').replace('-', '−')); return; }
  const unit = UNIT_KEYS[key];
  if (step && page.entry.digits && unit && step.units.includes(unit)) { chooseUnit(unit); return; }
  if (step && key.toLowerCase() === 'o') { typeOver(); return; }
  const does = LETTERS[key.toLowerCase()];
  if (does) does();
  else scanner.oddAt = performance.now();
}

function onDrop(event) {
  const [file] = event.dataTransfer?.files ?? [];
  if (!file && event.type === 'drop') return;
  event.preventDefault();
  if (page.out || !may('list')) return;
  document.documentElement.classList.toggle('over', event.type === 'dragover');
  if (event.type === 'drop') sendList(file);
}

// ---------------------------------------------------------------- who signed in

/** Asked once at the beginning, and whenever a visit may have ended. */
async function askWho() {
  try {
    page.who = await ask('/api/who');
    if (page.who.shop && !page.who.name) signedOut();
  } catch (failure) {
    refuse(failure);
  }
}

/** Nothing of the shop stays on a tablet that nobody is signed in at. */
function signedOut() {
  if (page.out) return;
  const name = page.who.name;
  page.events?.close();
  Object.assign(page, { out: true, before: name, events: null, state: null, docs: noDocs(), notice: null, lastUnit: '', search: '', link: 'here',
    who: { shop: true, name: '', roles: [], may: [] } });
  page.faces.clear();
  page.drafts.clear();
  page.drafts.set('sign-in-name', name);
  closeDialog();
  if (name) tell('You are signed out.');
  later();
}

function renderSignIn() {
  document.documentElement.dataset.screen = 'sign-in';
  document.title = 'Sign in: ringout bench';
  byId('skip').textContent = 'To the content';
  put(byId('top'), el('p', { class: 'station' }, 'ringout bench'));
  put(byId('banners'), noticeBanner());
  put(byId('main'), [el('h1', {}, 'Sign in'),
    el('form', { class: 'fields', onsubmit: (event) => { event.preventDefault(); signIn(); } },
      field('sign-in-name', 'Name', { required: true, autocomplete: 'username', autocapitalize: 'words', spellcheck: 'false' }),
      field('sign-in-pass', 'Passphrase', { type: 'password', required: true, autocomplete: 'current-password' }),
      el('button', { class: 'wide', key: 'sign-in' }, 'Sign in')),
    el('p', { class: 'quiet' }, 'An administrator can give you another passphrase.')]);
  arrive('sign-in//');
}

async function signIn() {
  if (page.busy) return;
  page.busy = true;
  try {
    const who = await post('/api/sign-in', { name: draft('sign-in-name'), passphrase: byId('field-sign-in-pass').value });
    Object.assign(page, { who, out: false, stale: true, notice: null });
    page.drafts.clear();
    // The same person goes on where he was; another begins at the beginning.
    if (page.before && page.before !== who.name) history.replaceState(null, '', '#/units');
    listen();
    routed();
  } catch (failure) {
    refuse(failure);
    forget('sign-in-pass');
    later();
  } finally {
    page.busy = false;
  }
}

async function signOut(everywhere) {
  try {
    await post('/api/sign-out', { everywhere });
    signedOut();
  } catch (failure) {
    refuse(failure);
  }
}

/** Whose passphrase a form is about: a browser that keeps passphrases asks for it. */
const ofWhom = (name) => el('input', { type: 'text', autocomplete: 'username', value: name, hidden: true, readonly: true });

function signedInPart() {
  const change = async (event) => {
    event.preventDefault();
    try {
      page.who = await post('/api/passphrase', { now: byId('field-pass-now').value, next: byId('field-pass-next').value });
      closeDialog();
      notice('Your passphrase is changed. You are signed out everywhere else.');
    } catch (failure) {
      closeDialog();
      refuse(failure);
    }
    forget('pass-now', 'pass-next');
  };
  return el('section', { 'aria-labelledby': 'signed-in' }, el('h3', { id: 'signed-in' }, `Signed in: ${page.who.name}`),
    el('p', { class: 'quiet' }, page.who.roles.map(roleName).join(', ')),
    el('div', { class: 'row' }, press('Sign out', () => signOut(false), { class: 'second', key: 'sign-out' }),
      press('Sign out everywhere', () => signOut(true), { class: 'second', key: 'sign-out-everywhere' })),
    fold('passphrase', 'Another passphrase', el('form', { class: 'fields', onsubmit: change }, ofWhom(page.who.name),
      field('pass-now', 'As it is now', { type: 'password', required: true, autocomplete: 'current-password' }),
      field('pass-next', 'The new one', { type: 'password', required: true, autocomplete: 'new-password', minlength: 12, help: '12 letters or more: some words do.' }),
      el('button', { class: 'wide', key: 'change-pass' }, 'Change it'))));
}

// ---------------------------------------------------------------- people of the shop

const ROLE_NAMES = { tester: 'Tester', inspector: 'Inspector', engineer: 'Engineer', lead: 'Lead hand', administrator: 'Administrator' };
const roleName = (role) => ROLE_NAMES[role] ?? role;

const COMINGS = {
  added: 'came to the shop', roles: 'works as', passphrase: 'has a new passphrase', withdrawn: 'was withdrawn', 'out-everywhere': 'was signed out everywhere',
  'signed-in': 'signed in', 'signed-out': 'signed out', 'turned-away': 'was turned away', 'key-added': 'has another key to sign with', 'key-withdrawn': 'signs no more with a key',
};

function roleTicks(key, chosen) {
  return el('fieldset', {}, el('legend', {}, 'Works as'), Object.entries(ROLE_NAMES).map(([role, label]) => el('label', { class: 'choice' },
    el('input', { type: 'checkbox', name: key, value: role, key: `${key}-${role}`, checked: chosen.includes(role) }), el('span', {}, label))));
}

const rolesTicked = (key) => [...document.querySelectorAll(`input[name="${key}"]:checked`)].map((box) => box.value);

/** Says something of people; what comes back is all of them. */
async function ofPeople(path, body, done) {
  try {
    page.docs.people = await post(`${path}?history`, body);
    closeDialog();
    notice(done);
    later();
    return true;
  } catch (failure) {
    closeDialog();
    refuse(failure);
    return false;
  }
}

function peopleScreen() {
  const doc = page.docs.people;
  if (!doc) return [el('h1', {}, 'People'), waiting()];
  const add = async (event) => {
    event.preventDefault();
    const name = draft('person-name');
    if (await ofPeople('/api/people', { name, roles: rolesTicked('person-roles'), passphrase: byId('field-person-pass').value }, `${name} can sign in.`)) forget('person-name');
    forget('person-pass');
  };
  return [el('h1', {}, 'People'),
    el('ul', { class: 'people', 'aria-label': 'People' }, doc.people.map(personRow)),
    el('section', { 'aria-labelledby': 'person-new' }, el('h2', { id: 'person-new' }, 'Somebody new'),
      el('form', { class: 'fields', onsubmit: add },
        field('person-name', 'Name, in full', { required: true, autocomplete: 'off', spellcheck: 'false', help: 'It is kept with everything that the person does.' }),
        roleTicks('person-roles', []),
        field('person-pass', 'First passphrase', { type: 'password', required: true, autocomplete: 'new-password', help: '12 letters or more. The person changes it under Set up.' }),
        el('button', { class: 'wide', key: 'person-add' }, 'Let this person sign in'))),
    el('section', { 'aria-labelledby': 'comings' }, el('h2', { id: 'comings' }, 'Who came in'),
      el('ol', { class: 'history' }, [...doc.history].reverse().slice(0, 100).map((entry) => el('li', {},
        el('p', { class: 'place' }, `${day(entry.at)} ${clock(entry.at)}`),
        el('p', {}, [`${entry.name || 'Somebody'} ${COMINGS[entry.what] ?? entry.what}`, ...entry.more.filter(Boolean), entry.who && entry.who !== entry.name ? `says ${entry.who}` : ''].filter(Boolean).join(', '))))))];
}

function personRow(person) {
  const path = `/api/people/${encodeURIComponent(person.name)}`;
  return el('li', { key: `person-${person.name}` },
    el('p', {}, el('b', {}, person.name), el('span', { class: 'place' }, person.signsIn ? person.roles.map(roleName).join(', ') : `withdrawn: ${person.withdrawn}`)),
    person.signsIn ? el('div', { class: 'row' },
      press('Roles', () => rolesDialog(person, path), { class: 'second', key: `roles-${person.name}`, 'aria-label': `Roles of ${person.name}` }),
      press('New passphrase', () => passphraseDialog(person, path), { class: 'second', key: `pass-${person.name}`, 'aria-label': `New passphrase for ${person.name}` }),
      press('Withdraw', () => textDialog(`Withdraw ${person.name}`, 'withdraw-why', 'Why', 'Withdraw', (why) => ofPeople(`${path}/withdraw`, { why }, `${person.name} can no longer sign in.`)),
        { class: 'second', key: `withdraw-${person.name}`, 'aria-label': `Withdraw ${person.name}` })) : null);
}

function rolesDialog(person, path) {
  dialog(`Roles of ${person.name}`, el('form', { onsubmit: (event) => {
    event.preventDefault();
    ofPeople(`${path}/roles`, { roles: rolesTicked('roles-of') }, `${person.name} works as said from now on.`);
  } }, roleTicks('roles-of', person.roles), el('button', { class: 'wide', key: 'roles-keep' }, 'Keep')), 'Cancel');
}

function passphraseDialog(person, path) {
  dialog(`New passphrase for ${person.name}`, el('form', { class: 'fields', onsubmit: (event) => {
    event.preventDefault();
    const passphrase = byId('field-pass-of').value;
    forget('pass-of');
    ofPeople(`${path}/passphrase`, { passphrase }, `${person.name} has a new passphrase, and is signed out everywhere.`);
  } }, ofWhom(person.name), field('pass-of', 'Passphrase', { type: 'password', required: true, autocomplete: 'new-password', help: '12 letters or more.' }),
  el('button', { class: 'wide', key: 'pass-keep' }, 'Keep')), 'Cancel');
}

// ---------------------------------------------------------------- what goes on in the shop

const cells = (tag, ...texts) => texts.map((text, at) => (at === 0 && tag === 'td' ? el('th', { scope: 'row' }, text) : el(tag, tag === 'th' ? { scope: 'col' } : {}, text)));

const sheet = (heads, rows) => el('div', { class: 'wide-table', tabindex: '0', role: 'region', 'aria-label': heads[0] }, el('table', { class: 'proof' },
  el('thead', {}, el('tr', {}, cells('th', ...heads))), el('tbody', {}, rows.map((row) => el('tr', {}, cells('td', ...row))))));

/** Screens that are asked for again by themselves. */
const RENEWED = new Set(['shop', 'lot']);

const partOf = (id, title, rows, none, shown) => el('section', { 'aria-labelledby': id }, el('h2', { id }, title), rows.length ? shown() : el('p', { class: 'quiet' }, none));

const said = (outcome, ...text) => el('p', { class: `said ${outcome}` }, outcome === 'quiet' ? null : sign(outcome), el('span', {}, text));

/** Seconds as a lead hand says them. */
function lasting(seconds) {
  if (seconds < 60) return `${seconds} s`;
  const minutes = Math.floor(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

const before = (at, seconds) => new Date(Date.parse(at) - seconds * 1000).toISOString();

const dayAndClock = (at, now) => (day(at) === day(now) ? clock(at) : `${day(at)} ${clock(at)}`);

function shopScreen() {
  const doc = page.docs.shop;
  if (!doc) return [el('h1', {}, 'Shop'), waiting()];
  const unit = (one) => el('a', { href: link('unit', one.id), key: `shop-${one.id}` }, one.serial);
  return [el('h1', {}, 'Shop'), renewed(doc),
    partOf('under-way', 'At the benches', doc.underWay, 'No test is under way.', () => el('ul', { class: 'floor' }, doc.underWay.map((one) => benchCard(one, doc.at)))),
    partOf('waiting', 'Waits for an inspector', doc.waiting, 'Nothing waits.', () => sheet(['Unit', 'Drawing', 'Tested', 'By'],
      doc.waiting.map((one) => [unit(one.unit), `${one.unit.drawing} ${one.unit.revision}`, one.day, one.who]))),
    partOf('lots', 'Lots', doc.lots, 'No unit is in the store yet.', () => sheet(['List', 'Conform', 'Faulty', 'Not all proven', 'Under way'],
      doc.lots.map((lot) => [el('a', { href: link('lot', lot.id), key: `lot-${lot.id}` }, nameOfList(lot)), String(lot.conform), String(lot.faulty), String(lot.open), String(lot.underWay)]))),
    el('div', { class: 'columns' }, oftenPart('places', 'Faults by place', doc), oftenPart('kinds', 'Faults by kind', doc)),
    doc.more ? el('p', { class: 'quiet' }, `${many(doc.more, 'unit', 'units')} with faults more since ${doc.since}: not counted here.`) : null];
}

const renewed = (doc) => el('p', { class: 'quiet' }, `As it was at ${clock(doc.at)}. Shown anew by itself.`);

const nameOfList = (list) => [[list.drawing, list.revision].filter(Boolean).join(' '), list.title].filter(Boolean).join(': ');

/** One bench: who is at which unit, where it stands, and whether its meters may be believed. */
function benchCard(one, now) {
  return el('li', { key: `at-${one.station}-${one.unit.id}` },
    el('h3', {}, one.station || 'A bench without a name'),
    el('p', {}, `${one.who}, unit `, el('a', { href: link('unit', one.unit.id), key: `at-unit-${one.station}-${one.unit.id}` }, one.unit.serial)),
    one.leads === 'left' ? said('unsure', 'Left in the middle: nobody is at it.') : null,
    one.leads === 'silent' ? said('unsure', `Nothing was heard of this bench for ${lasting(one.silentSeconds)}.`) : null,
    one.leads !== 'left' ? el('p', { class: 'asked' }, one.asked ? [el('b', {}, one.asked), ` asked since ${dayAndClock(before(now, one.askedSeconds), now)} (${lasting(one.askedSeconds)})`] : 'No step is asked.') : null,
    el('p', { class: 'quiet' }, [`Begun ${dayAndClock(one.since, now)}`, many(one.readings, 'reading', 'readings'), one.last && `last ${one.last}`, one.at && dayAndClock(one.at, now)].filter(Boolean).join(', ')),
    one.meters.map(meterSaid));
}

/** A day is not parted at its hyphens. */
const whole = (text) => el('span', { class: 'whole' }, text);

const LEAVES_SOON_DAYS = 14;
const METER_OF = { continuity: 'Continuity meter', insulation: 'Insulation meter' };

function meterSaid(meter) {
  const of = [METER_OF[meter.use], meter.name].filter(Boolean).join(' ') || 'Meter';
  const left = meter.daysLeft;
  if (!meter.due) return said('unsure', `${of}: nobody said until when its calibration lasts.`);
  if (left === null) return said('unsure', `${of}: calibration due "${meter.due}" is no day.`);
  if (left < 0) return said('bad', el('b', {}, `${of}: calibration RAN OUT `, whole(meter.due), `, ${many(-left, 'day', 'days')} ago.`));
  if (left === 0) return said('unsure', `${of}: calibration lasts until today.`);
  return said(left <= LEAVES_SOON_DAYS ? 'unsure' : 'quiet', `${of}: calibration until `, whole(meter.due), `, ${many(left, 'day', 'days')} left.`);
}

const STANDS = { conforms: 'good', faults: 'bad', incomplete: 'unsure' };

function lotScreen() {
  const doc = page.docs.lot;
  if (!doc) return [el('h1', {}, 'Lot'), waiting()];
  const verdict = (unit) => el('span', { class: `verdict ${STANDS[unit.stands]}` }, sign(STANDS[unit.stands]), unit.verdict);
  const serial = (unit) => (unit.id ? el('a', { href: link('unit', unit.id), key: `lot-unit-${unit.id}` }, unit.serial) : unit.serial);
  return [el('h1', {}, `Lot ${nameOfList(doc)}`), renewed(doc),
    el('p', {}, el('b', {}, doc.verdict)), el('p', {}, `${doc.passedAtOnce}.`),
    doc.limits.map((text) => el('p', { class: 'quiet' }, text)),
    doc.copied.map((text) => said('bad', text)),
    partOf('shared', 'What several units share', doc.shared, 'Nothing.', () => doc.shared.map((one) => said('bad', `${one.text} ${one.suspect}`))),
    partOf('outstanding', 'Joins that stand out', doc.outstanding, 'None.', () => doc.outstanding.map((text) => said('unsure', text))),
    partOf('lot-units', 'Units', doc.units, 'None.', () => sheet(['Unit', 'Verdict', 'What', 'Tested', 'Bench', 'By'],
      doc.units.map((unit) => [serial(unit), verdict(unit), el('span', { class: 'what' }, unit.what), whole(unit.day), unit.station, unit.who]))),
    el('div', { class: 'columns' }, countedPart('lot-places', 'Faults by place', doc.places), countedPart('lot-kinds', 'Faults by kind', doc.kinds)),
    el('p', {}, el('a', { class: 'button', href: `/api/lots/${encodeURIComponent(doc.id)}/lot.html`, target: '_blank', rel: 'noopener', key: 'lot-paper' }, 'All of it, to print'))];
}

const countedPart = (id, title, rows) => partOf(id, title, rows, 'None.', () => bars(rows.slice(0, MOST_BARS), title));

const MOST_BARS = 12;

const oftenPart = (which, title, doc) => el('section', { 'aria-labelledby': which }, el('h2', { id: which }, title),
  el('p', { class: 'quiet' }, `Units tested since ${doc.since} that have faults now.`),
  doc[which].length ? bars(doc[which].slice(0, MOST_BARS), title) : el('p', {}, 'None.'));

/** Bars with an axis: how many units. The numbers stand beside them, too. */
function bars(rows, title) {
  const most = Math.max(...rows.map((row) => row.units));
  const step = Math.max(1, Math.ceil(most / 5));
  const end = Math.ceil(most / step) * step;
  const [left, width, line] = [Math.max(40, ...rows.map((row) => row.what.length * 9 + 12)), 200, 30];
  const x = (units) => left + (units / end) * width;
  const bottom = rows.length * line + 4;
  const marks = Array.from({ length: end / step + 1 }, (nothing, at) => at * step);
  return draw('svg', { class: 'bars', viewBox: `0 0 ${left + width + 40} ${bottom + 48}`, role: 'img', 'aria-label': `${title}: ${rows.map((row) => `${row.what} ${many(row.units, 'unit', 'units')}`).join(', ')}` },
    marks.map((mark) => [draw('path', { class: 'grid', d: `M${x(mark)} 0 V${bottom}` }), draw('text', { class: 'mark', x: x(mark), y: bottom + 18 }, String(mark))]),
    draw('text', { class: 'mark', x: left + width / 2, y: bottom + 40 }, 'number of units'),
    rows.map((row, at) => [
      draw('text', { class: 'of', x: left - 8, y: at * line + 20 }, row.what),
      draw('rect', { class: 'many', x: left, y: at * line + 5, width: x(row.units) - left, height: line - 10 }),
      draw('text', { class: 'count', x: x(row.units) + 6, y: at * line + 20 }, String(row.units))]));
}

// ---------------------------------------------------------------- start

async function start() {
  applyLook();
  for (const query of ['(prefers-color-scheme: dark)', '(prefers-contrast: more)']) matchMedia(query).addEventListener('change', applyLook);
  addEventListener('keydown', onKey, { capture: true });
  addEventListener('pointerdown', () => tones.start(), { capture: true });
  addEventListener('hashchange', routed);
  for (const kind of ['dragover', 'dragleave', 'drop']) addEventListener(kind, onDrop);
  byId('skip').addEventListener('click', (event) => { event.preventDefault(); byId('main').focus(); });
  byId('dialog').addEventListener('close', () => byId('main').focus({ preventScroll: true }));
  addEventListener('pageshow', (event) => { if (event.persisted && !page.out) listen(); });
  setInterval(watch, 1000);
  setInterval(() => { if (RENEWED.has(page.route.screen) && !page.out && !document.hidden && page.link === 'here') load(); }, SHOP_MS);
  await askWho();
  if (!page.out) listen();
  routed();
}

start();
