// The theme belongs to the document, which the server writes only once.
export function wear(theme) {
  document.documentElement.dataset.theme = theme;
}
