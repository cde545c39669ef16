import type { XmlElement } from '../../office/read-xml.ts';

/** A child of a run that shows something, and where that stands in its paragraph's text. */
export interface Piece {
  readonly at: number;
  readonly text: string;
  readonly child: XmlElement;
  readonly run: XmlElement;
  /** Why it cannot be changed, where it cannot. */
  readonly fixed?: string;
}

/** A paragraph that shows text, wherever in the document it stands. */
export interface Paragraph {
  readonly part: string;
  readonly element: XmlElement;
  readonly text: string;
  readonly pieces: readonly Piece[];
  readonly place: string;
  readonly heading?: string;
  /** Of a heading itself: how deep it stands. */
  readonly level?: number;
  /** The table row that it stands in. */
  readonly row?: XmlElement;
  /** Of a table's cell: what stands at the head of its column. */
  readonly columnHead?: string;
  /**
   * What the paragraph is a note or a box of, where a comment cannot stand in it itself: the footnote's mark or the run
   * with the text box. `null` where nothing in the document's body leads to it.
   */
  readonly heldBy?: { readonly child: XmlElement } | null;
  /** The same paragraph once more, for programs that do not know the newer form of text boxes. */
  readonly twin?: Paragraph;
}
