import type { ItemColumn } from './columns.ts';

/** What a head that is no name of ours stands for. */
export interface HeadWord {
  /** One role, or number where the cells are numbers and else another. */
  readonly role: ItemColumn | { readonly words: ItemColumn };
  /** Lower is surer. */
  readonly rank: number;
}

/** Words that mean one role, surest first: English, German, French, Spanish. */
const SURE: Partial<Record<ItemColumn, string>> = {
  number:
    'no|nr|num|numero|nummer|clause no|clause number|item no|item number|requirement no|requirement number|req no|paragraph no|paragraph number|section no|section number|article no|ziff|klausel nr|klauselnummer|abschnittsnummer|gliederungsnummer|nummer der klausel|ziffer|pos nr|numero de clause|numero d article|numero de clausula|n|#|ref no|reference no|reference number|ref|req id|requirement id|code',
  title:
    'heading|headline|name|subject|caption|clause title|item title|requirement title|section title|uberschrift|titel|bezeichnung|benennung|betreff|titre|intitule|designation|titulo|encabezado|denominacion|nombre',
  text: 'wording|requirement text|clause text|item text|full text|body|statement|provision|requirement wording|wortlaut|anforderungstext|klauseltext|texte|enonce|libelle|texto|redaccion|enunciado|description|beschreibung|descripcion|content|inhalt|contenu|contenido',
  level: 'depth|tier|outline level|stufe|ebene|gliederungsebene|niveau|nivel',
  parent: 'parent no|parent number|parent id|ubergeordnet|ubergeordnete nummer|superieur|superior',
  applies_to: 'applicable to|installation type|installation types|gilt fur|s applique a|se aplica a',
};

/** Words that head numbers here and words there. */
const EITHER: Partial<Record<ItemColumn, string>> = {
  text: 'requirement|requirements|clause|paragraph|para|article|rule|klausel|absatz|anforderung|artikel|punkt|exigence|paragraphe|regle|requisito|clausula|articulo|parrafo|apartado',
  title: 'item|section|point|position|pos|abschnitt|poste|punto|partida',
};

const WORDS: ReadonlyMap<string, HeadWord> = new Map<string, HeadWord>([
  ...(['text', 'title'] as const).flatMap(words =>
    EITHER[words]!.split('|').map((word, at) => [word, { role: { words }, rank: 1000 + at }] as const),
  ),
  ...Object.entries(SURE).flatMap(([role, words]) =>
    words.split('|').map((word, at) => [word, { role: role as ItemColumn, rank: at }] as const),
  ),
]);

/** The meaning of a head such as `No.`, `Überschrift`, `clause_no`; undefined where it has none for us. */
export function headWord(header: string): HeadWord | undefined {
  return WORDS.get(
    header
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .replace(/([a-z])([A-Z])/g, '$1 $2')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}#]+/gu, ' ')
      .trim(),
  );
}
