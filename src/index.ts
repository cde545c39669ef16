/** The public API: the pure middle of the program, and the catalog that it reads from. A test pins this list. */

export { resolveCitation } from './carryover/resolve.ts';
export { carryDocs } from './commands/documents/carry-docs.ts';
export { importTables } from './commands/importing/import-tables.ts';
export { carryJobs } from './commands/jobs/carry-jobs.ts';
export { checkCatalog } from './commands/reading/check-catalog.ts';
export { readCrosswalk } from './commands/reading/read-crosswalk.ts';
export { traceNumber } from './commands/reading/trace-number.ts';
export { isPair, marksOf } from './content/links/marks.ts';
export { tellHop, tellTrace } from './content/links/tell.ts';
export { traceItem } from './content/links/trace.ts';
export { composeCrosswalks, identityCrosswalk } from './crosswalk/compose.ts';
export { checkConservation } from './crosswalk/conserve.ts';
export { invertCrosswalk } from './crosswalk/invert.ts';
export { joinEditions } from './crosswalk/joint.ts';
export { linkByLineage } from './crosswalk/lineage.ts';
export { groupIntoRows } from './crosswalk/rows.ts';
export { crosswalkStatistics } from './crosswalk/statistics.ts';
export { writeCrosswalkCsv } from './exports/crosswalk-csv.ts';
export { writeCrosswalkJson } from './exports/crosswalk-json.ts';
export { crosswalkLines } from './exports/crosswalk-lines.ts';
export { CatalogError } from './model/errors.ts';
export { listDrafts, listEditions } from './store/names.ts';
export { findCatalog, openCatalog, openForWriting } from './store/open.ts';
export { readEdition, readIndex, readLineage } from './store/read.ts';
