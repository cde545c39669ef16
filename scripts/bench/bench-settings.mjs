/** Settings of the invented catalogs that are big enough to be timed: three levels, two installation types. */
export const settings = {
  title: 'Bench',
  language: 'en',
  levels: [{ name: 'Part' }, { name: 'Work item' }, { name: 'Requirement', obliges: true }],
  fileLevel: 2,
  numbering: { levels: Array(3).fill({ style: 'decimal' }), numbersUnique: true },
  installationTypes: [
    { id: 'house', name: 'House' },
    { id: 'street', name: 'Street' },
  ],
  withdrawalReasons: [],
};
