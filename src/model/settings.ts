import type { TypeId } from './item.ts';

export const NUMBER_STYLES = ['decimal', 'alpha', 'roman', 'printed', 'none'] as const;
export type NumberStyle = (typeof NUMBER_STYLES)[number];

/** How the items of one level are numbered. `printed` keeps the number that the item brings along. */
export interface LevelNumbering {
  readonly style: NumberStyle;
  /** Text before the level's own counter. */
  readonly prefix?: string;
  /** Text between the parent's number and this level's; only where a parent's number goes before. */
  readonly separator?: string;
  readonly suffix?: string;
  /** Least number of digits of a decimal counter: 2 prints 03. */
  readonly pad?: number;
}

export interface Level {
  readonly name: string;
  /** Whether items of this level oblige. Absent: those that have a text do. */
  readonly obliges?: boolean;
}

export interface InstallationType {
  readonly id: TypeId;
  readonly name: string;
}

export interface WithdrawalReason {
  readonly code: string;
  readonly meaning: string;
  /** Whoever gives this reason has to say what governs instead, and when that was read. */
  readonly governedElsewhere?: true;
}

/** What a catalog says about itself; it travels with every edition, since levels and types change as well. */
export interface Settings {
  readonly title: string;
  readonly publisher?: string;
  readonly language: string;
  readonly levels: readonly Level[];
  /** Items of levels 1 to fileLevel have a file each; deeper ones nest in the file of their ancestor there. */
  readonly fileLevel: number;
  readonly numbering: { readonly levels: readonly LevelNumbering[]; readonly numbersUnique: boolean };
  readonly installationTypes: readonly InstallationType[];
  readonly withdrawalReasons: readonly WithdrawalReason[];
  /** A sentence that every page and report of the catalog repeats, e.g. where hazards are met. */
  readonly caution?: string;
}

/** The name of level `level` (from 1), e.g. `Work item`. */
export function levelName(settings: Settings, level: number): string {
  return settings.levels[level - 1]?.name ?? `Level ${level}`;
}

/** The name of an installation type, or its code where the settings do not list it. */
export function typeName(settings: Settings, type: TypeId): string {
  return settings.installationTypes.find(t => t.id === type)?.name ?? type;
}
