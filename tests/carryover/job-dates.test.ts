import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DateOrder, DateOrderEvidence, possibleOrders, readDate } from '../../src/carryover/jobs/calendar-date.ts';

const orderOf = (...cells: string[]) => {
  const evidence = new DateOrderEvidence();
  cells.forEach((cell, at) => {
    evidence.add(cell, at + 1);
  });
  return evidence.order();
};

describe('a day as people write it', () => {
  it.each([
    ['2024-05-03', 'mdy', '2024-05-03'],
    ['2024/5/3', 'dmy', '2024-05-03'],
    ['03.05.2024', 'dmy', '2024-05-03'],
    ['03/05/2024', 'mdy', '2024-03-05'],
    ['3-5-24', 'dmy', '2024-05-03'],
    ['24/05/03', 'ymd', '2024-05-03'],
    ['3 May 2024', 'ymd', '2024-05-03'],
    ['3-Sept-24', 'mdy', '2024-09-03'],
    ['May 3rd, 2024', 'dmy', '2024-05-03'],
    ['29.02.2024', 'dmy', '2024-02-29'],
    ['2024-05-03T23:30', 'ymd', '2024-05-03'],
    ['03/05/2024 9:30 pm', 'dmy', '2024-05-03'],
  ] as const)('%s, read as %s, is %s', (cell, order, day) => {
    expect(readDate(cell, order)).toBe(day);
  });

  it.each(['29.02.2023', '31.04.2024', '3.1.1', '3.13.2024x', 'soon', '', '2024-05', '0.5.2024', '2024-13-01 late'])(
    '%s is none',
    cell => {
      expect(possibleOrders(cell)).toEqual([]);
    },
  );

  it('is the day there, where a moment has a zone and the agency one of its own', () => {
    expect(readDate('2024-06-30T23:30:00Z', 'ymd')).toBe('2024-06-30');
    expect(readDate('2024-06-30T23:30:00Z', 'ymd', 'Europe/Vienna')).toBe('2024-07-01');
    expect(readDate('2024-07-01T00:30+02:00', 'ymd', 'America/Denver')).toBe('2024-06-30');
    expect(readDate('01.07.2024 00:30 +0200', 'dmy', 'America/Denver')).toBe('2024-06-30');
    expect(readDate('2024-06-30 23:30', 'ymd', 'Europe/Vienna')).toBe('2024-06-30');
  });

  it('comes back from every way of writing it', () => {
    const day = fc.date({ min: new Date('2001-01-01'), max: new Date('2068-12-31'), noInvalidDate: true });
    fc.assert(
      fc.property(
        day,
        fc.constantFrom<DateOrder>('dmy', 'mdy', 'ymd'),
        fc.constantFrom('-', '/', '.'),
        (date, order, by) => {
          const iso = date.toISOString().slice(0, 10);
          const [y, m, d] = iso.split('-') as [string, string, string];
          const written = { dmy: [d, m, y], mdy: [m, d, y], ymd: [y.slice(2), m, d] }[order].join(by);
          expect(readDate(written, order)).toBe(iso);
        },
      ),
    );
  });
});

describe('the order of a whole column', () => {
  it('is proven by one cell that allows one order only', () => {
    expect(orderOf('03/04/2024', '', '25/04/2024')).toEqual({ order: 'dmy', proof: '25/04/2024 in record 3' });
    expect(orderOf('03/04/2024', '04/25/2024')).toEqual({ order: 'mdy', proof: '04/25/2024 in record 2' });
  });

  it('needs no proof where every date means the same in any order', () => {
    const cells = ['2024-05-03', '3 May 2024', '05/05/2024'];
    expect(orderOf(...cells)).toEqual({ order: 'dmy' });
    expect(cells.map(cell => readDate(cell, 'dmy'))).toEqual(['2024-05-03', '2024-05-03', '2024-05-05']);
  });

  it('cannot be told where nothing proves it, or cells prove different ones', () => {
    expect(orderOf('05/05/2024', '03/04/2024')).toEqual({
      doubt: 'nothing in it tells whether 03/04/2024 in record 2 begins with the day or the month',
    });
    expect(orderOf('25/04/2024', '04/25/2024')).toMatchObject({ doubt: expect.stringContaining('record 1') });
  });
});
