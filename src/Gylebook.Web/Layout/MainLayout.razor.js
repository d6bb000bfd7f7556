// What a reader chose belongs to their browser. A cookie, so that the server writes the next page right at once; its
// other tabs are called to look at it. See docs/decisions/0008-pages-and-rendering.md.
import '../Widgets/SearchBox.razor.js';

const yearS = 31536000;
const tabs = new BroadcastChannel('gylebook-reader');
const settledMs = 1000;
let look = () => {};
let shown = null;

// What was chosen comes with the call: another process may see the new cookie only later. Should two tabs have chosen at
// once, both look at the cookie again.
tabs.onmessage = event => {
  look(event.data);
  setTimeout(look, settledMs);
};

function kept(name) {
  const pair = document.cookie.split('; ').find(cookie => cookie.startsWith(name + '='));
  try {
    return pair ? decodeURIComponent(pair.slice(name.length + 1)) : null;
  } catch {
    return null;
  }
}

// Another tab may have chosen between the writing of this page and its connection.
export function enter(layout, name, written) {
  const ways = document.getElementById('ways');
  ways?.addEventListener('click', event => {
    if (event.target.closest('a') && ways.matches(':popover-open')) {
      ways.hidePopover();
    }
  });
  shown = written;
  look = told => {
    const words = told ?? kept(name);
    if (words !== null && words !== shown) {
      shown = words;
      layout.invokeMethodAsync('RecallAsync', words).catch(() => { /* The page is gone, or is written anew. */ });
    }
  };
  look();
}

export function keep(name, words) {
  const secure = location.protocol === 'https:' ? '; Secure' : '';
  document.cookie = `${name}=${encodeURIComponent(words)}; Path=/; Max-Age=${yearS}; SameSite=Lax${secure}`;

  // The page knows what it chose: told again, late, it would take back what was chosen meanwhile.
  shown = words;
  tabs.postMessage(words);
  return kept(name) === words;
}

// The theme belongs to the document, which the server writes only once.
export function wear(theme) {
  document.documentElement.dataset.theme = theme;
}
