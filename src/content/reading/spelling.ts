/** Pairs of spellings of one word, British or older first. Endings that follow a rule are below. */
const PAIRS = new Map(
  `metre meter|metres meters|litre liter|litres liters|centre center|centres centers|centred centered|fibre fiber|fibres fibers|
theatre theater|calibre caliber|sombre somber|grey gray|aluminium aluminum|tyre tire|tyres tires|kerb curb|kerbs curbs|
gage gauge|gages gauges|programme program|programmes programs|storey story|storeys stories|sulphur sulfur|sulphate sulfate|
artefact artifact|artefacts artifacts|plough plow|draught draft|mould mold|moulds molds|moulded molded|moulding molding|
smoulder smolder|judgement judgment|ageing aging|enquiry inquiry|enquiries inquiries|adaptor adapter|adaptors adapters|disc disk|
discs disks|whilst while|amongst among|towards toward|afterwards afterward|upwards upward|downwards downward|inwards inward|
outwards outward|backwards backward|forwards forward|learnt learned|burnt burned|spilt spilled|defence defense|offence offense|
licence license|licences licenses|practise practice|practised practiced|catalogue catalog|catalogues catalogs|dialogue dialog|
analogue analog|analyse analyze|analysed analyzed|analysing analyzing|fulfil fulfill|instal install|skilful skillful|
manoeuvre maneuver|cheque check|jewellery jewelry|aeroplane airplane|cosy cozy|sceptical skeptical|vice vise|acknowledgement acknowledgment|
haemorrhage hemorrhage|anaesthetic anesthetic|paediatric pediatric|foetus fetus|encyclopaedia encyclopedia|orientated oriented|
proofed proof|waggon wagon|gaol jail|pyjamas pajamas|connexion connection|premisses premises|per-cent percent|
labelled labeled|labelling labeling|travelled traveled|travelling traveling|cancelled canceled|cancelling canceling|
levelled leveled|levelling leveling|channelled channeled|panelled paneled|panelling paneling|signalled signaled|
signalling signaling|modelled modeled|modelling modeling|tunnelled tunneled|tunnelling tunneling|fuelled fueled|fuelling fueling|
dialled dialed|marshalled marshaled|bevelled beveled|chiselled chiseled|totalled totaled|equalled equaled|metalled metaled|
focussed focused|focussing focusing|benefitted benefited|woollen woolen|enrol enroll|fulfilment fulfillment|instalment installment|
max maximum|min minimum|approx approximately|incl including|dia diameter|temp temperature|qty quantity|info information|
cannot can-not|ok okay|thru through|&amp and|& and|w/ with`
    .replaceAll('\n', '')
    .split('|')
    .map(pair => pair.split(' ') as [string, string]),
);

const NO_OUR = new Set('hour four pour tour your our sour flour contour detour devour scour dour'.split(' '));
const NO_ISE = new Set(
  'rise arise wise raise praise noise poise advise supervise revise exercise otherwise likewise precise concise promise premise compromise expertise franchise merchandise devise improvise televise comprise disguise surprise enterprise cruise bruise paradise demise excise treatise anise disease lease'.split(
    ' ',
  ),
);

/** One spelling for a folded word: colour = color, galvanised = galvanized, 5 metres = 5 meters, max = maximum. */
export function spelled(word: string): string {
  // No English word is as long; what is comes from a machine and has one spelling.
  if (word.length > 40) return word;
  const pair = PAIRS.get(word);
  if (pair) return pair;
  const our = /^(\p{L}{2,})our(s|ed|ing|ings|less|ful|able|ably|ably|hood|hoods|ite|er|ers)?$/u.exec(word);
  if (our && !NO_OUR.has(`${our[1]}our`)) return `${our[1]}or${our[2] ?? ''}`;
  const yse = /^(\p{L}{2,}ly)s(e|es|ed|er|ers|ing)$/u.exec(word);
  if (yse) return `${yse[1]}z${yse[2]}`;
  const re = /^(\p{L}{2,}[bt])re(s|d)?$/u.exec(word);
  if (re && !word.startsWith('timbre')) return `${re[1]}er${re[2] === 'd' ? 'ed' : (re[2] ?? '')}`;
  // travelled, but not filled: only behind another syllable.
  const doubled = /^(\p{L}*[aeiou][^aeiou]{1,3}[aeu]l)l(ed|ing|er|ers)$/u.exec(word);
  if (doubled) return `${doubled[1]}${doubled[2]}`;
  if (/ae(?!r)/.test(word) && word.length > 5) return spelled(word.replace(/ae(?!r)/g, 'e'));
  const ise = /^(\p{L}{3,}i)s(e|es|ed|ing|er|ers|ation|ations|able)$/u.exec(word);
  if (ise && !NO_ISE.has(`${ise[1]}se`) && !/(?:[aeo]i)$/.test(ise[1]!)) return `${ise[1]}z${ise[2]}`;
  return word;
}

const CONTRACTIONS: Readonly<Record<string, string>> = {
  "won't": 'will not',
  "shan't": 'shall not',
  "can't": 'can not',
  cannot: 'can not',
  "it's": 'it is',
  "that's": 'that is',
  "there's": 'there is',
};

/** The words of a contraction or abbreviation written out: don't = do not; otherwise the word itself. */
export function writtenOut(word: string): readonly string[] {
  const known = Object.hasOwn(CONTRACTIONS, word) ? CONTRACTIONS[word] : undefined;
  if (known) return known.split(' ');
  if (word.endsWith("n't")) return [word.slice(0, -3), 'not'];
  if (word.endsWith("'re")) return [word.slice(0, -3), 'are'];
  if (word.endsWith("'ll")) return [word.slice(0, -3), 'will'];
  return [word];
}
