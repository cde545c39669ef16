// Single keys for the review. Every one of them presses a button, follows a link or enters a field of the page, so that
// the page does the same without this script.
const keys = document.getElementById('keys');
const KEPT = 'fishplate-review-keys';

const isWriting = element =>
  element instanceof HTMLInputElement ? !['radio', 'checkbox'].includes(element.type) : element instanceof HTMLTextAreaElement;

if (keys) {
  keys.closest('.keys').hidden = false;
  keys.checked = localStorage.getItem(KEPT) !== 'off';
  keys.addEventListener('change', () => localStorage.setItem(KEPT, keys.checked ? 'on' : 'off'));
}

document.addEventListener('keydown', event => {
  if (event.key === 'Escape' && isWriting(document.activeElement)) document.activeElement.blur();
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || event.repeat) return;
  if (keys?.checked === false || isWriting(document.activeElement)) return;
  // Arrows move among the choices of a list that has the focus.
  if (event.key.startsWith('Arrow') && document.activeElement?.matches('[type=radio]')) return;
  const target = [...document.querySelectorAll('[data-key]')].find(e => e.dataset.key.split(' ').includes(event.key));
  if (!target) return;
  event.preventDefault();
  if (isWriting(target)) target.focus();
  else if (target.matches('[type=radio]')) {
    target.checked = true;
    target.focus();
  } else target.click();
});

// A page that waits for a matching looks again by itself; without this script the reader does.
if (document.querySelector('[data-wait]')) setTimeout(() => location.reload(), 2000);
