export { ITEM_COLUMNS } from '../../editing/columns.ts';
