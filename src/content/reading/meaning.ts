import { stemmer } from 'stemmer';
import { spelled } from './spelling.ts';

/** Forms that a stemmer cannot join: irregular verbs and plurals, and nouns of measure with their adjectives. */
const IRREGULAR = new Map(
  `left leave|laid lay|laying lay|built build|held hold|kept keep|made make|fed feed|bound bind|hung hang|led lead|taken take|took take|given give|
gave give|driven drive|drove drive|shown show|worn wear|wore wear|drawn draw|drew draw|written write|wrote write|begun begin|began begin|
met meet|ran run|sent send|spent spend|wound wind|broken break|broke break|torn tear|frozen freeze|froze freeze|chosen choose|chose choose|
known know|knew know|feet foot|teeth tooth|leaves leaf|knives knife|shelves shelf|halves half|people person|persons person|men man|women woman|
children child|criteria criterion|indices index|vertices vertex|dried dry|dries dry|done do|did do|gone go|seen see|saw see|sold sell|told tell|
bought buy|brought bring|caught catch|taught teach|thought think|stood stand|stuck stick|struck strike|swept sweep|sealed seal|bent bend|lit light|
lent lend|lost lose|paid pay|fallen fall|fell fall|grown grow|grew grow|hidden hide|ridden ride|risen rise|rose rise|rung ring|shaken shake|
shut shut|slid slide|spoken speak|stolen steal|swollen swell|thrown throw|withdrawn withdraw|understood understand|
deep depth|wide width|long length|high height|tall height|added add|adding add|adds add|thick thickness|broad breadth|strong strength|heavy weight|weigh weight|weighs weight|
hot heat|warm heat|tight tightness|tightly tightness|dry dry|drying dry|has have|had have|having have|does do|is be|are be|was be|were be|been be|being be|
maintenance maintain|provision provide|prevention prevent|round around|burnt burn|dressed dress|proof prove|proven prove|fed feed|
strength strength|density dense|moisture moist|safety safe|removal remove|
extension extend|expansion expand|exposure expose|closure close|failure fail|pressure pressure|
compliance comply|compliant comply|complies comply|complied comply|conformance conform|conformity conform|entrance enter|entry enter|
encryption encrypt|decision decide|division divide|intrusion intrude|corrosive corrosion|corroded corrosion|corrode corrosion|
applied apply|applies apply|application apply|applications apply|identification identify|identified identify|identifies identify|
verified verify|verifies verify|verification verify|notification notify|notified notify|specified specify|specifies specify|specification specification|
supplied supply|supplies supply|carried carry|carries carry|certified certify|certification certify|certificate certificate|
authorization authorize|authorized authorize|classification classify|classified classify|qualification qualify|qualified qualify|
replacement replace|measurement measure|attachment attach|placement place|connection connect|connected connect|connector connector|
protection protect|inspection inspect|installation install|ventilation ventilate|insulation insulation|insulated insulated`
    .replaceAll('\n', '')
    .split('|')
    .map(pair => pair.split(' ') as [string, string]),
);

/**
 * Words of general English that say the same in a requirement, one group a line; the first stands for all. Only words
 * that can replace each other without asking for more or less: "near" is not "at", "check" is "inspect".
 */
const GROUPS = `
shall must
install fit mount
fasten secure fix attach affix anchor
inspect check examine
verify confirm ascertain
begin start commence initiate
end finish complete conclude
use utilize employ
provide supply furnish
prevent avoid
show display
record log document note
keep retain maintain preserve
need require
obtain get acquire
put place position locate set
permit allow authorize
prohibit forbid ban
repair mend
replace substitute
connect join link couple
cut trim
big large
small little
near close
before prior
after following
above over
below under beneath underneath
beside adjacent alongside
around surrounding
enough sufficient adequate
whole entire complete full
each every all any
employee worker staff personnel operative
hazard danger
hazardous dangerous
injury harm
dwelling house home residence
building structure
room space
opening gap aperture
damage harm impair
damaged defective faulty
notify inform tell advise
send transmit
written writing
annual yearly
quickly promptly immediately forthwith
via through
about concerning regarding
manufacturer maker producer
instruction direction guidance
level horizontal
vertical plumb upright
exterior outside external outdoor outdoors
interior inside internal indoor indoors
visible seen
conceal hide cover
accessible reachable reach
adjoining neighboring
purchase buy
assist help
attempt try
change alter modify
choose select
collect gather
consume eat
construct build erect
correct rectify
dispose discard
happen occur
lift raise
reduce decrease lessen lower
increase raise
stop cease halt
continuous uninterrupted unbroken
completely fully entirely wholly
firmly securely tightly
frequently often
approximately about roughly
if when where whenever wherever case
unless except
because since
also additionally
separate apart
fall slope gradient pitch
person individual anyone
delivery deliver
customer client
store storage
cool chill
warm heat
owner proprietor
request ask
wear don
overlap lap
edge border rim
face surface
bottom base
bond adhere glue
tear rip
crack fissure
hole perforation
joint seam
layer coat ply
protect guard shield
support carry
suitable appropriate
mark label tag identify
location place position
qualified competent
child minor
fee charge
revoke cancel
agency body
error mistake
fault defect
password passphrase
renew renovate
ball sphere
perform conduct undertake
state indicate specify
reach attain achieve
likely probable
likelihood probability
rinse swill
wipe mop
moist damp
spray squirt
stick cling
discharge empty
clog block obstruct
clogged blocked obstructed
rot decay
debris rubble
rubbish refuse garbage trash litter
soiled dirty
spillage spill
car automobile
truck lorry
stairway staircase stairs
footpath footway pathway
hallway corridor
handbook manual
daily everyday
weekday workday
photo photograph
evenly uniformly
jointly together
`;

const STEMS = new Map<string, string>();
const MEANINGS = new Map<string, string>();
for (const line of GROUPS.trim().split('\n')) {
  const [first, ...others] = line.split(' ').map(base);
  // A word keeps the first group that names it; otherwise two groups would flow into one.
  for (const word of [first!, ...others]) if (!MEANINGS.has(word)) MEANINGS.set(word, first!);
}

/** The stem of a folded word, with irregular forms and spellings brought together: laid = lay, metres = meter. */
export function base(word: string): string {
  let stem = STEMS.get(word);
  if (stem === undefined) {
    const plain = spelled(word.replace(/'s?$/, ''));
    stem = stemmer(IRREGULAR.get(plain) ?? plain);
    if (STEMS.size < 100_000) STEMS.set(word, stem);
  }
  return stem;
}

/** What a folded word means, as far as this list knows: the stem of the first word of its group, or its own stem. */
export function meaning(word: string): string {
  const stem = base(word);
  return MEANINGS.get(stem) ?? stem;
}
