// Shows only the numbers that begin as typed. The answers stand in the page itself, so it works without this as well.
(() => {
  const form = document.getElementById('ask');
  const input = document.getElementById('q');
  const state = document.getElementById('state');
  const sections = [...document.querySelectorAll('section')].map(section => ({
    section,
    answers: [...section.querySelectorAll('.a')].map(place => ({
      place,
      number: place.querySelector('b').textContent.toLowerCase(),
    })),
  }));
  const dashes = /[\u2010-\u2015\u2212]/g;
  const show = () => {
    const typed = input.value.trim().toLowerCase().replace(dashes, '-').replace(/[.\s]+$/, '');
    let [exact, begin] = [0, 0];
    for (const { section, answers } of sections) {
      let shown = 0;
      const same = answers.some(a => a.number === typed);
      for (const { place, number } of answers) {
        const hit = typed !== '' && (same ? number === typed : number.startsWith(typed));
        place.hidden = !hit;
        if (hit) shown++;
        if (number === typed) exact++;
      }
      begin += shown;
      section.hidden = shown === 0;
    }
    state.textContent =
      typed === '' ? '' : exact > 0 ? `${exact} found, by edition` : begin > 0 ? `${begin} begin so` : `No edition has ${typed}.`;
  };
  form.hidden = false;
  form.addEventListener('submit', event => event.preventDefault());
  input.addEventListener('input', show);
  show();
})();
