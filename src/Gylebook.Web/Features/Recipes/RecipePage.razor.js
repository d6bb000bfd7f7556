// Undo and redo by key, outside of fields: inside one, the browser's own undo works. And which picture fits the window.
const pages = new WeakMap();
const narrow = matchMedia('(max-width: 48rem)');
const isField = target => target instanceof HTMLElement && target.closest('input:not([type=checkbox]):not([type=radio]), textarea, select, [contenteditable]') !== null;

export function enter(root, page) {
  const onKey = event => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || isField(event.target)) {
      return;
    }
    const key = event.key.toLowerCase();
    if (key === 'z' || key === 'y') {
      event.preventDefault();
      page.invokeMethodAsync(key === 'y' || event.shiftKey ? 'RedoKeyAsync' : 'UndoKeyAsync');
    }
  };
  const onWidth = () => page.invokeMethodAsync('Narrow', narrow.matches);
  document.addEventListener('keydown', onKey);
  narrow.addEventListener('change', onWidth);
  pages.set(root, () => {
    document.removeEventListener('keydown', onKey);
    narrow.removeEventListener('change', onWidth);
  });
  if (narrow.matches) {
    onWidth();
  }
}

export function leave(root) {
  pages.get(root)?.();
  pages.delete(root);
}
