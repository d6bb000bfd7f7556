// Which picture fits the window, and the way to the run and back on a phone. When the page is left its element goes; the
// listeners see that and go too, so nobody has to call them off.
const narrow = matchMedia('(max-width: 48rem)');

export function enter(root, page) {
  const onWidth = () => {
    if (root.isConnected) {
      page.invokeMethodAsync('Narrow', narrow.matches);
    } else {
      narrow.removeEventListener('change', onWidth);
    }
  };
  narrow.addEventListener('change', onWidth);
  if (narrow.matches) {
    onWidth();
  }
  toAndFro(root);

  // The weight of a new line is a guess: what is typed takes its place.
  root.addEventListener('focusin', event => event.target.matches('[data-fresh]') && event.target.select());
}

// Where there is room for one column, the page shows its fields or its run. The strip at the foot turns from the one to the
// other and back to where one came from; a stage of the run turns to its fields.
function toAndFro(root) {
  let from = null;
  const show = atRun => root.toggleAttribute('data-at-run', atRun);
  show(location.hash === '#run');
  root.addEventListener('click', event => {
    const link = event.target.closest?.('a');
    if (link?.matches('.strip')) {
      event.preventDefault();
      if (root.hasAttribute('data-at-run')) {
        show(false);
        backTo(from);
      } else {
        from = inView(root);
        show(true);
        root.querySelector('#run')?.scrollIntoView();
      }
    } else if (link?.closest('#run')) {
      show(false);
    }
  });
}

// What one reads, and how far down the window it stands. A number of pixels would not do: bands arrive meanwhile, and make the
// page above it longer.
function inView(root) {
  const read = [...root.querySelectorAll('[id^="stage-"]')].find(stage => stage.getBoundingClientRect().bottom > 0);
  return read && { read, top: read.getBoundingClientRect().top };
}

function backTo(place) {
  if (place?.read.isConnected) {
    scrollBy({ top: place.read.getBoundingClientRect().top - place.top, behavior: 'instant' });
  }
}
