// Keeps trying quietly. When the server no longer knows this page, the page is loaded afresh, at the same address:
// what was committed is in the book.
const bar = document.getElementById('components-reconnect-modal');
const pauseMs = 3000;
let waiting = 0;

async function again() {
  waiting = 0;
  try {
    if (await Blazor.reconnect() || await Blazor.resumeCircuit()) {
      bar.className = '';
    } else {
      location.reload();
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
    case 'failed':
      later();
      break;
    case 'rejected':
    case 'resume-failed':
      location.reload();
      break;
  }
});
document.addEventListener('visibilitychange', now);
