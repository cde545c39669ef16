import { meaning } from './meaning.ts';

/**
 * Plain words of any requirement, one group a line: a faithful rewording may exchange those of one line, though they mean
 * the same only in some sentences ("handed back" is "returned", "handed" alone is not). So they excuse a difference that
 * nothing else speaks for, and never make two words one.
 */
const GROUPS = `
put place lay set stand position rest sit lie bear mount locate fit install arrange
leave stay remain keep let
inform tell notify communicate report announce advise pass
enter record log note write state list show say read give name mention indicate mark display contain label
return hand give send back
issue give hand supply provide deliver pass
dispose place put discard throw clear
do carry perform undertake execute make conduct run complete take place
allow permit let enable
begin start commence open
end finish complete conclude close come
prevent avoid exclude keep
check inspect examine look view
fasten secure fix tie attach hold clamp
extend reach run go carry continue project protrude overlap lap
rise exceed climb go high extend
fall drop sink decrease go
turn fold bend tuck dress
remove take free clear strip clean off away
wipe clean wash
repeat again renew anew more
replace change exchange renew swap
happen occur arise take place
get obtain receive gain
follow come after next subsequent
serve act work function operate run
contain hold include have comprise consist form make
ensure make see
store keep hold leave
wait leave allow pass
need require call demand
agree approve accept reach settle
appear show become seem
grow increase rise
reach attain achieve come
detect find discover notice show prove turn
lead run direct route convey guide
cover protect shield
move shift carry transfer transport
bring take carry move
spread lay apply coat put
raise lift hoist
stop halt cease interrupt suspend
warn alert alarm
consult ask
carry bear support rest hold
wear carry put have
gap distance clearance space clear apart
person anyone nobody someone anybody somebody people everyone individual one
site place location position spot point
time period duration interval
amount quantity number
way manner method mean
middle center
outside exterior outer
inside interior inner
state condition
part portion section piece
whole full complete entire total
same identical equal
different other another
original initial first
available ready hand
visible readable legible read see seen clear
noise sound noiseless quiet noiselessly
fault defect failure breakdown
sufficient enough
regular even uniform
once after when upon as soon follow
during in while throughout course
before until ahead advance prior first
over past beyond across
against from
up upward upwards
down downward downwards
behind back rear aft
front before fore ahead
from off away
by through via means
with using use
within inside
near close
above over high
below under low
around round
only sole alone
without free no
always constant permanent time
usual normal customary ordinary
`;

const LINES = new Map<string, Set<number>>();
for (const [line, words] of GROUPS.trim().split('\n').entries()) {
  for (const word of words.split(' ').map(meaning)) LINES.set(word, (LINES.get(word) ?? new Set()).add(line));
}

/** Least length of a word that another may have grown from: "move" and "movement", "slight" and "slightly". */
const ROOT = 4;

/** Whether a faithful rewording may have one meaning in the place of the other. */
export function isNear(a: string, b: string): boolean {
  if (a === b) return true;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length >= ROOT && long.startsWith(short) && long.length <= short.length + 5) return true;
  const lines = LINES.get(a);
  return lines !== undefined && [...(LINES.get(b) ?? [])].some(line => lines.has(line));
}

/** Words that a rewording may add or do without: they help others along and ask for nothing. */
const FREE = new Set(
  `find cause prove occur happen exist come go become appear seem involve show contain have say do conduct perform undertake carry
during upon while once also either too again soon together thereby then nobody person anyone anybody someone somebody another other
possible able available up down away off back over out along such way manner case event order question concern respective existing
present relevant mean purpose lie stand remain stay take make give keep put reach serve
process procedure act action operation work great large small less more equal exact build construct`
    .split(/\s+/)
    .map(meaning),
);

export const isFree = (word: string): boolean => FREE.has(word);

/** What of two lists of meanings is left when near ones are paired, each once; the second list without what the first used. */
export function withoutNear<T extends { readonly key: string }>(
  gone: readonly T[],
  come: readonly T[],
): readonly [T[], T[]] {
  const left = [...come];
  const unpaired = gone.filter(g => {
    const at = left.findIndex(c => isNear(g.key, c.key));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return [unpaired, left];
}
