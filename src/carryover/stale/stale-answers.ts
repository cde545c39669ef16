import type { Passage } from '../../model/document.ts';

/** A stretch of a document that is read by itself; offsets are those of the document. */
export interface Piece {
  readonly start: number;
  readonly text: string;
  readonly passage: Passage;
  /** Of an answer: its question, without which it does not say what it is about. */
  readonly question?: string;
  /** Of an answer: the passage of its question, where its number may be cited. */
  readonly beside?: Passage;
}

const ANSWERS = /\b(answers?|answer key|key|solutions?)\b/i;
const NUMBERED = /^[ \t]*(\d{1,3})[.)][ \t]+/;

/**
 * The passages of a document, numbered lines of plain text apart from each other, and each answer of a quiz with its
 * question: by their numbers where they bear any, else by their order, if there are as many of the one as of the other.
 */
export function piecesOf(passages: readonly Passage[]): readonly Piece[] {
  const out: Piece[] = [];
  let questions: readonly Piece[] = [];
  for (const group of underHeadings(passages.filter(p => p.text.trim() !== ''))) {
    const { heading } = group;
    const pieces = group.passages.flatMap(numberedLines);
    if (!ANSWERS.test(heading ?? '')) {
      if (pieces.some(p => p.text.includes('?'))) questions = pieces;
      out.push(...pieces);
      continue;
    }
    const asked = questions.length === pieces.length ? questions : questions.filter(q => q.text.includes('?'));
    out.push(
      ...pieces.map((piece, at) => {
        const number = NUMBERED.exec(piece.text)?.[1];
        const question =
          number === undefined
            ? asked.length === pieces.length
              ? asked[at]
              : undefined
            : questions.find(q => NUMBERED.exec(q.text)?.[1] === number);
        return question ? { ...piece, question: question.text, beside: question.passage } : piece;
      }),
    );
  }
  return out;
}

export function isHeading({ text, heading }: Passage): boolean {
  return text.replace(/^#+|#+\s*$/g, '').trim() === heading;
}

/** Whether a passage stands under a heading that announces answers. */
export function isKey({ heading }: Passage): boolean {
  return ANSWERS.test(heading ?? '');
}

/** Passages in a row under one heading; the heading itself comes by itself, before them. */
function underHeadings(passages: readonly Passage[]): { heading: string | undefined; passages: Passage[] }[] {
  const groups: { heading: string | undefined; passages: Passage[] }[] = [];
  for (const passage of passages) {
    const last = groups.at(-1);
    if (isHeading(passage)) groups.push({ heading: undefined, passages: [passage] });
    else if (last && last.heading === passage.heading && last.passages.length > 0 && !isOwn(last)) {
      last.passages.push(passage);
    } else groups.push({ heading: passage.heading, passages: [passage] });
  }
  return groups;
}

const isOwn = (group: { heading: string | undefined; passages: Passage[] }) =>
  group.heading === undefined && group.passages[0]!.heading !== undefined;

function numberedLines(passage: Passage): readonly Piece[] {
  const lines = passage.text.split(/(?<=\n)(?=[ \t]*\d{1,3}[.)][ \t])/);
  let at = passage.start;
  return lines.map(text => {
    const piece = { start: at, text, passage };
    at += text.length;
    return piece;
  });
}
