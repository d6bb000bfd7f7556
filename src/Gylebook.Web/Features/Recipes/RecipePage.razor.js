// Undo and redo by key, outside of fields: inside one, the browser's own undo works. And which picture fits the window.
// When the page is left its element goes; the listeners see that and go too, so nobody has to call them off.
const narrow = matchMedia('(max-width: 48rem)');
const isField = target => target instanceof HTMLElement && target.closest('input:not([type=checkbox]):not([type=radio]), textarea, select, [contenteditable]') !== null;

export function enter(root, page) {
  const onKey = event => {
    if (!root.isConnected) {
      leave();
      return;
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isField(event.target)) {
      return;
    }
    const key = event.key.toLowerCase();
    if (key === 'z' || key === 'y') {
      event.preventDefault();
      page.invokeMethodAsync(key === 'y' || event.shiftKey ? 'RedoKeyAsync' : 'UndoKeyAsync');
    }
  };
  const onWidth = () => {
    if (root.isConnected) {
      page.invokeMethodAsync('Narrow', narrow.matches);
    } else {
      leave();
    }
  };
  const leave = () => {
    document.removeEventListener('keydown', onKey);
    narrow.removeEventListener('change', onWidth);
  };
  document.addEventListener('keydown', onKey);
  narrow.addEventListener('change', onWidth);
  if (narrow.matches) {
    onWidth();
  }
}
