import type { Command } from 'commander';
import type { DateOrder } from '../carryover/jobs/calendar-date.ts';
import type { ToldColumns } from '../carryover/jobs/columns.ts';
import { agencyRules } from '../commands/carrying/agency-rules.ts';
import type { JobOptions } from '../commands/jobs/job-options.ts';
import { backwardsFindings, readCrosswalk } from '../commands/reading/read-crosswalk.ts';
import { waysTo } from '../commands/reading/ways-to.ts';
import { portsOf, readingCatalog } from './context.ts';

/** The options of `carry jobs` that a file and a database have in common, as they are typed. */
export interface TypedJobOptions {
  readonly from?: string;
  readonly to?: string;
  readonly json?: boolean;
  readonly column?: ToldColumns;
  readonly policy?: string;
  readonly agency?: string;
  readonly dates?: DateOrder;
  readonly typeName?: Readonly<Record<string, string>>;
  readonly stateName?: Readonly<Record<string, string>>;
  readonly decisions?: string;
  readonly decisionsOut?: string;
  readonly keepDecisions?: boolean;
  readonly priceChanges?: string;
}

/** Reads the crosswalk and what holds for the agency, and gives what was typed as the command takes it. */
export async function readJobOptions(command: Command, typed: TypedJobOptions, from: string, to: string) {
  const catalog = await readingCatalog(command);
  const read = await readCrosswalk(catalog, from, to);
  const { joint, marks } = read;
  const ports = portsOf(command);
  const way = { from: joint.from.header.name, to: joint.to.header.name };
  const { findings, ...rules } = await agencyRules(ports, catalog, typed, way);
  const { column, dates, typeName, stateName, decisions, decisionsOut, priceChanges } = typed;
  const options: JobOptions = {
    columns: column ?? {},
    others: () => waysTo(catalog, way.to, way.from),
    ...rules,
    ...(dates === undefined ? {} : { dates }),
    ...(typeName === undefined ? {} : { typeNames: typeName }),
    ...(stateName === undefined ? {} : { stateNames: stateName }),
    ...(decisions === undefined ? {} : { decisions }),
    ...(decisionsOut === undefined ? {} : { decisionsOut }),
    ...(priceChanges === undefined ? {} : { priceChanges }),
  };
  return { catalog, ports, joint, marks, findings: [...backwardsFindings(read), ...findings], options };
}
