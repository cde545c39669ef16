// Slides for the arrow keys. Without this script the page shows all of them, one under the other.
(() => {
  const slides = [...document.querySelectorAll('.slide')];
  const keys = document.querySelector('.keys');
  let at = Math.max(0, slides.findIndex(s => `#${s.id}` === location.hash));
  const turning = () => document.body.classList.contains('turning');
  function show(to) {
    at = Math.min(slides.length - 1, Math.max(0, to));
    document.body.classList.add('turning');
    slides.forEach((s, i) => {
      s.classList.toggle('shown', i === at);
    });
    document.getElementById('at').textContent = `${at + 1} of ${slides.length}`;
    keys.hidden = false;
    history.replaceState(null, '', `#${slides[at].id}`);
    scrollTo(0, 0);
  }
  document.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const target = event.target instanceof Element && event.target.closest('summary');
    if (target && (event.key === ' ' || event.key === 'Enter')) return;
    if (['ArrowRight', 'PageDown', ' '].includes(event.key)) show(turning() ? at + 1 : at);
    else if (['ArrowLeft', 'PageUp'].includes(event.key)) show(turning() ? at - 1 : at);
    else if (event.key === 'Home') show(0);
    else if (event.key === 'End') show(slides.length - 1);
    else if (event.key === 'n' || event.key === 'N') {
      const notes = slides[at].querySelector('details');
      if (notes) notes.open = !notes.open;
    } else if (event.key === 'Escape') {
      document.body.classList.remove('turning');
      slides[at].scrollIntoView();
    } else return;
    event.preventDefault();
  });
  keys.hidden = false;
})();
