// The list of a search stays in the window: under its field or above it, whichever has more room, and no taller than that.
const gapPx = 12;
const enoughPx = 240;
let box = null;

// Strips at the foot of the window hide what is under them.
function foot() {
  const shown = [...document.querySelectorAll('.strip, .feet > *')].map(strip => strip.getBoundingClientRect());
  const ends = shown.filter(strip => strip.height > 0 && strip.bottom >= innerHeight - 1).map(strip => strip.top);
  return Math.min(visualViewport?.height ?? innerHeight, innerHeight, ...ends);
}

function place() {
  if (!box?.isConnected) {
    return;
  }
  const field = box.querySelector('[role=combobox]').getBoundingClientRect();
  const under = foot() - field.bottom - gapPx;
  const above = field.top - gapPx;
  const isAbove = under < enoughPx && above > under;
  box.toggleAttribute('data-above', isAbove);
  box.style.setProperty('--room', `${Math.max(0, Math.floor(isAbove ? above : under))}px`);
}

addEventListener('focusin', event => {
  box = event.target.matches?.('[role=combobox]') ? event.target.closest('.search') : null;
  place();
}, true);

// A list that is walked by keys shows the row one is at.
addEventListener('keyup', () => box?.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' }));
addEventListener('scroll', place, { passive: true, capture: true });
addEventListener('resize', place);
// What comes later (bands, findings) moves the field without a scroll.
new ResizeObserver(place).observe(document.body);
visualViewport?.addEventListener('resize', place);
