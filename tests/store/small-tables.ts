import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

const WORK_ITEMS = 20;

/**
 * Writes two editions as tables with ids (old.csv, new.csv), what became of the old items (became.csv), and a correction
 * of that (erratum.csv) into a folder, and gives the folder back.
 */
export function smallTables(folder: string): string {
  const table = (edition: string, steps: readonly number[]) => {
    const lines = ['number,level,parent,title,text,id', '1,Part,,Storage,,part'];
    for (let work = 1; work <= WORK_ITEMS; work++) {
      lines.push(`1.${work},Work item,1,Work ${work},,w${work}`);
      for (const step of steps) {
        const text = `Text of ${edition} for ${work}.${step}.`;
        lines.push(`1.${work}.${step},Requirement,1.${work},Step ${step},${text},w${work}r${step}`);
      }
    }
    return `${lines.join('\n')}\n`;
  };
  const gone = Array.from({ length: WORK_ITEMS }, (_, at) => `1.${at + 1}.3,,obsolete,`);
  writeFileSync(join(folder, 'old.csv'), table('2018', [1, 2, 3]));
  writeFileSync(join(folder, 'new.csv'), table('2024', [1, 2]));
  writeFileSync(join(folder, 'became.csv'), `from,to,reason,note\n${gone.join('\n')}\n`);
  writeFileSync(join(folder, 'erratum.csv'), 'from,to,reason,note\n1.1.3,,covered-elsewhere,Corrected.\n');
  return folder;
}
