import { type CsvRecord, readCsv } from '../../tables/read-csv.ts';
import type { Files } from '../ports/ports.ts';
import { sha256 } from '../ports/sha256.ts';
import { csvHead } from './csv-head.ts';
import { hashing, type JobSource, NOT_NUMERIC, SAMPLE } from './job-source.ts';
import { JobTable } from './job-table.ts';

/** A csv table, read as a stream as often as it is asked for. */
export async function csvJobs(files: Files, input: string): Promise<JobSource | undefined> {
  const first = await firstRecords(files, input);
  if (first.length === 0) return undefined;
  const head = csvHead(first.map(r => r.cells));
  return {
    header: head.names,
    sample: first.slice(head.records).map(r => r.cells),
    textOnly: true,
    lines: async function* () {
      const { batches } = await readCsv(files.stream(input));
      let ofHead: number = head.records;
      for await (const { records } of batches) {
        for (const { cells, line } of records) if (--ofHead < 0) yield { cells, line, numeric: NOT_NUMERIC };
      }
    },
    carry: async ({ carrier, columns, governed, write, done }) => {
      const table = new JobTable(carrier, columns, head, governed);
      const hash = sha256();
      const { dialect, batches } = await readCsv(hashing(files.stream(input), hash));
      table.start(dialect);
      for await (const batch of batches) {
        await write(table.carry(batch));
        done(table.records);
      }
      await write(table.finish());
      return { input: hash.digest(), findings: table.findings(input) };
    },
  };
}

async function firstRecords(files: Files, input: string): Promise<readonly CsvRecord[]> {
  const { batches } = await readCsv(files.stream(input));
  const records: CsvRecord[] = [];
  for await (const batch of batches) {
    records.push(...batch.records.slice(0, SAMPLE + 2 - records.length));
    if (records.length > SAMPLE + 1) break;
  }
  return records;
}
