// Undo and redo by key. While a field holds what was typed since it was entered, they are the browser's own and go back
// as far as that. Beyond it they are the draft's: the browser remembers what was typed into fields that were left, and would
// type 5 again over a 5.5 that is in the book.
// When the page is left its element goes; the listeners see that and go too, so nobody has to call them off.
const fields = 'input:not([type=checkbox]):not([type=radio]), textarea, select, [contenteditable]';
const fieldOf = target => target instanceof HTMLElement ? target.closest(fields) : null;

export function enter(root, page) {
  let entered = { field: null, text: '', undone: 0 };
  const isAtStart = field => field.matches('select') || field !== entered.field || field.value === entered.text;

  const walk = async (field, isRedo) => {
    // Left, a field shows the draft again; it is the one the brewer looks at, so the focus comes back.
    field?.blur();
    await page.invokeMethodAsync(isRedo ? 'RedoKeyAsync' : 'UndoKeyAsync');
    if (field?.isConnected) {
      field.focus({ preventScroll: true });
    }
  };

  // What the browser may not take back, or bring back, goes to the draft.
  const take = (event, isRedo) => {
    const field = fieldOf(event.target);
    if (field === null || (isRedo ? entered.undone === 0 : isAtStart(field))) {
      event.preventDefault();
      walk(field, isRedo);
    }
  };

  const listeners = {
    focusin: event => entered = { field: fieldOf(event.target), text: event.target.value, undone: 0 },
    input: event => {
      if (event.target === entered.field) {
        entered.undone = event.inputType === 'historyUndo' ? entered.undone + 1 : event.inputType === 'historyRedo' ? entered.undone - 1 : 0;
      }
    },
    // By menu; a key is taken before.
    beforeinput: event => {
      if (event.inputType === 'historyUndo' || event.inputType === 'historyRedo') {
        take(event, event.inputType === 'historyRedo');
      }
    },
    keydown: event => {
      const key = event.key.toLowerCase();
      if ((event.ctrlKey || event.metaKey) && !event.altKey && (key === 'z' || key === 'y')) {
        take(event, key === 'y' || event.shiftKey);
      }
    },
  };
  for (const [name, listen] of Object.entries(listeners)) {
    const listener = event => root.isConnected ? listen(event) : document.removeEventListener(name, listener, true);
    document.addEventListener(name, listener, true);
  }
}
