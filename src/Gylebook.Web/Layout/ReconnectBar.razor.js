// Keeps trying quietly. When the server no longer knows this page, the page is loaded afresh, at the same address:
// what was saved is in the book, and what was not is kept by UnsentBar.razor.js.
const bar = document.getElementById('components-reconnect-modal');
const pauseMs = 2000;
let waiting = 0;

// What the framework complains of while nobody answers is no fault of the page; the bar has said it.
function back() {
  bar.querySelector('.lost').textContent = '';
  document.getElementById('blazor-error-ui').style.display = '';
}

// A server that is just closing forgets its pages too. Reloading then would only show the browser's own error.
async function afresh() {
  try {
    const answer = await fetch(location.href, { method: 'HEAD', cache: 'no-store' });
    if (answer.status < 500) {
      location.reload();
      return;
    }
  } catch {
    // Not back yet.
  }
  setTimeout(afresh, pauseMs);
}

async function again() {
  waiting = 0;
  try {
    if (await Blazor.reconnect() || await Blazor.resumeCircuit()) {
      bar.className = '';
      back();
      document.dispatchEvent(new Event('gylebook-connected'));
    } else {
      afresh();
    }
  } catch {
    later();
  }
}

function later() {
  if (waiting === 0) {
    waiting = setTimeout(again, pauseMs);
  }
}

function now() {
  if (document.visibilityState === 'visible' && waiting !== 0) {
    clearTimeout(waiting);
    again();
  }
}

bar.addEventListener('components-reconnect-state-changed', event => {
  switch (event.detail.state) {
    case 'hide':
      back();
      break;
    case 'failed':
      later();
      break;
    case 'rejected':
    case 'resume-failed':
      setTimeout(afresh, pauseMs);
      break;
  }
});
document.addEventListener('visibilitychange', now);

// What is typed is kept; what is pressed is not: a press cannot wait, since nobody knows what it would meet by then.
document.addEventListener('click', event => {
  const pressed = event.target.closest?.('main button');
  if (pressed && getComputedStyle(bar).display !== 'none') {
    const name = (pressed.getAttribute('aria-label') || pressed.textContent).trim();
    bar.querySelector('.lost').textContent = `Not done: ${name}. Press it again when the connection is back.`;
  }
}, true);
