// Enter goes on to the next field, as "next" on a phone's number pad does, and Shift+Enter back. In the browser, since
// what is typed meanwhile must not land in the field before. Heard at the window, after everybody else: a list that is
// open takes its choice first. What is folded away is passed over. When the page is left its form goes; the listener sees that and goes too.
export function enter(form) {
  const onKey = event => {
    if (!form.isConnected) {
      window.removeEventListener('keydown', onKey);
      return;
    }
    const fields = [...form.querySelectorAll('input:not([type=radio]), textarea')].filter(field => !field.closest('details:not([open])'));
    const at = fields.indexOf(event.target);
    if (event.key !== 'Enter' || event.isComposing || at < 0) {
      return;
    }
    event.preventDefault();
    const next = fields[at + (event.shiftKey ? -1 : 1)];
    if (next) {
      next.focus();
      next.select();
    } else {
      event.target.blur();
    }
  };
  window.addEventListener('keydown', onKey);
  form.dataset.keys = 'next';
}
