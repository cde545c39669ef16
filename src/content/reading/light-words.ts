import { meaning } from './meaning.ts';

/** Nouns of part, place and measure, and adjectives that compare, which a shorter text does without. */
export const LIGHT = new Set(
  `depth height width length thickness size weight load side part end point piece area level gap first second coat type kind way
ground free top case time number amount unit use work position start begin surface purpose manner member element item value
diameter tolerance spacing scale centre interval rate distance further smaller larger greater lesser additional other such own same new
present available necessary suitable appropriate adequate possible respective relevant applicable mean method detail accordance
resistance place run form matter order colour task visit able due effect sample entry edge
capable good nearest equal material difference word whole several person concerned organizational
staff operator worker employee personnel user organization contractor operative basis course condition requirement period reason`
    .split(/\s+/)
    .map(meaning),
);
