// The drafting rules on 3,000 texts, and on a text made to hurt against one four times as long: work that grows with
// the square would show as 16, linear work as 4.
export async function run() {
  const { checkDrafts } = await import('../../dist/drafting/check-drafts.js');
  const { loadLanguage } = await import('../../dist/drafting/language.js');
  const language = await loadLanguage();
  const timed = drafts => {
    const start = performance.now();
    checkDrafts(drafts, language);
    return (performance.now() - start) / 1000;
  };
  const plain = 'Fix the gutter with brackets at no more than 600 mm, and test it as required before it is covered.';
  const texts = Array.from({ length: 3000 }, (_, i) => ({ id: `${i}`, text: `${plain} ${plain} Run ${i}.` }));
  const hostile = 'in accordance with the the the if the where the '.repeat(400);
  timed([{ id: 'warm', text: hostile }]);
  const once = timed([{ id: 'x', text: hostile }]);
  const four = timed([{ id: 'x', text: hostile.repeat(4) }]);
  return [
    { name: 'drafting rules, 3,000 texts', ours: timed(texts), note: 'aim: under 5 s' },
    {
      name: 'drafting rules, hostile text × 4',
      ours: four,
      rival: once,
      ratio: four / once,
      note: 'rival: the text once; 4 is linear, 16 the square',
    },
  ];
}
