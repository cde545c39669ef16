import { base, meaning } from '../reading/meaning.ts';

/** Words of general English of which one undoes or denies the other. A text written anew may exchange any others. */
const PAIRS = `above below|above under|over under|over below|before after|inside outside|in out|inner outer|up down|upper lower|top bottom|
left right|front back|front rear|front behind|ahead behind|near far|toward away|into out|onto off|on off|with without|open close|open shut|
raise lower|lift lower|lift drop|lift sink|rise fall|rise sink|increase reduce|increase decrease|add remove|add omit|attach remove|fit remove|
install remove|insert remove|insert withdraw|put remove|start stop|begin end|begin stop|begin finish|fill empty|fill drain|tighten loosen|
lock unlock|fasten release|hold release|keep discard|keep remove|keep drop|load unload|pack unpack|cover expose|cover uncover|show hide|
allow prevent|allow prohibit|permit prohibit|accept reject|accept refuse|admit exclude|include exclude|include omit|push pull|heat cool|
wet dry|warm cool|hot cold|freeze thaw|freeze heat|clean soil|save delete|create delete|create destroy|make destroy|build demolish|
join separate|join part|join cut|send receive|give take|lend borrow|buy sell|enter leave|arrive leave|come go|pass fail|
long short|high low|wide narrow|thick thin|deep shallow|big small|more less|maximum minimum|most least|early late|first last|next previous|
full empty|hard soft|rough smooth|light dark|light heavy|strong weak|fast slow|new old|same different|whole part|all none|always never|
horizontal vertical|parallel perpendicular|upstream downstream|upward downward|inward outward|forward backward|clockwise anticlockwise|
manual automatic|public private|internal external|indoor outdoor|day night|during outside|until from|extend shorten|expand shrink|
stretch shrink|widen narrow|enlarge reduce|strengthen weaken|dilute concentrate|dissolve precipitate|energize isolate|supply extract|blow suck`;

const CONTRARY = new Map<string, Set<string>>();
for (const pair of PAIRS.replaceAll('\n', '').split('|')) {
  const [a, b] = pair.split(' ').map(meaning);
  CONTRARY.set(a!, (CONTRARY.get(a!) ?? new Set()).add(b!));
  CONTRARY.set(b!, (CONTRARY.get(b!) ?? new Set()).add(a!));
}

/** Whether two meanings are opposites: above and below, attach and remove, connect and disconnect. */
export function isContrary(a: string, b: string): boolean {
  return CONTRARY.get(a)?.has(b) === true || denies(a, b) || denies(b, a);
}

/** "disconnect" of "connect", whichever word stands for "connect". */
function denies(long: string, short: string): boolean {
  const rest = /^(?:un|dis|de|non|in|im|ir)(\p{L}{3,})$/u.exec(long)?.[1];
  return rest !== undefined && (rest === short || meaning(rest) === short || base(rest) === short);
}
