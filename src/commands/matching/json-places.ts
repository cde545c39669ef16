/**
 * The line of the file on which each object of a list begins, for the lists of a JSON text by their name; the list that
 * is the text itself has the name ''. What a parser gives has no places, and a number counted along the list is none
 * that an editor goes to.
 */
export function linesOfObjects(text: string): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  const outer = text.trimStart().startsWith('[') ? 1 : 2;
  let [depth, line, name] = [0, 1, ''];
  // Braces inside strings are none; everything else of JSON may be skipped.
  for (const [token] of text.matchAll(/"(?:[^"\\]|\\.)*"|[[\]{}\n]/g)) {
    if (token === '\n') line++;
    else if (token === ']' || token === '}') depth--;
    else if (token === '[' || token === '{') {
      if (token === '{' && depth === outer) {
        const known = places.get(name);
        if (known) known.push(line);
        else places.set(name, [line]);
      }
      depth++;
    } else if (depth === 1 && outer === 2) name = JSON.parse(token) as string;
  }
  return places;
}
