const NUMBERS =
  'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen'
const NUMERI =
  'uno|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|undici|dodici|tredici|quattordici|quindici|sedici|diciassette'

/** Ages of children, and those that are old enough in some countries only. */
export const AGES = {
  child: `(?:[1-9]|1[0-7]|${NUMBERS}|${NUMERI})`,
  nearly: '(?:18|19|20|eighteen|nineteen|twenty|diciotto|diciannove|venti)',
} as const

const PERSON =
  'sons?|daughters?|kids?|child|children|boys?|girls?|lads?|lass(?:es)?|bairn|nephews?|nieces?|grand ?(?:sons?|daughters?|child|children|kids?)|cousins?|brothers?|sisters?|' +
  'step ?(?:son|daughter)|god ?(?:son|daughter)|twins?|triplets|friends?|mates?|pals?|buddy|somebody|someone|anybody|anyone|people|persons?|guests?|visitors?|volunteers?|helpers?|' +
  'pupils?|students?|neighbours?|neighbors?|he|she|they|hes|shes|theyre|who|whos|youngest|eldest|middle one|boyfriend|girlfriend|scouts?|guides?|apprentice'

/** What may follow a person: never a thing, so that `my 12 year old rum` and `15 lemons` are none. */
const NO_NOUN =
  `(?=$| ?[?.!,]| (?:(?:${PERSON})|to|has|have|had|having|drinks?|drinking|try|tries|trying|tastes?|tasting|sips?|some|a|an|any|one|of|and|or|at|in|for|with|when|if|it|this|that|these|please|too|` +
  'can|could|may|might|must|should|shall|will|would|is|s|was|are|were|isnt|wants?|wanted|wanting|likes?|liked|loves?|asks?|asked|asking|begs?|begged|begging|keeps?|kept|says?|thinks?|let|gets?|allowed|' +
  'really|just|also|still|now|the|my|from|on|as|so|but|not|keen|curious|visiting|nicked|stole)(?!\\p{L}))'

const OLD = '(?:(?:years?|yrs?) (?:olds?|of age)|y ?o)'
const WHOSE = '(?:my|our|his|her|their|your|an?|any|some|every|the|to|for|let)'
const BARELY = '(?:only |just |nearly |almost |about |barely |not even )?'

/** Somebody of such an age, in English. */
export const agedIn = (age: string): string =>
  [
    `${WHOSE} (?:little |dear |eldest |youngest )?${age} ?${OLD}${NO_NOUN}`,
    `(?:${PERSON}) ?,? ?(?:(?:s|is|are|was|aged|age|of|who|whos|hes|shes|theyre|turned|turning|turns|he|she|they) ){0,3}${BARELY}${age}(?: ?${OLD}| yrs)?${NO_NOUN}`,
  ].join('|')

const FIGLI =
  'figli[oae]?|nipot[ei]|ragazz[oaie]|fratell[oi]|sorell[ae]|cugin[oaie]|amic[oaih]e?|qualcuno|person[ae]|ospit[ei]|chi|vicin[oaie]'

/** The same in Italian. */
export const anniIn = (age: string): string =>
  `(?:${FIGLI})(?: \\p{L}+){0,4} ?,? (?:di |ha |hanno |da |che ha |compie )?(?:solo |appena |quasi |circa )?${age}(?: e ${age})? anni(?! (?:fa|prima)\\b)`

/** Of no age that is said, and nobody's grown-up son. */
export const YOUNG =
  `teen(?:s|agers?|age|aged)?|tweens?|pre ?teens?|kids?|children|child|toddlers?|youngsters?|little ones?|(?:my|our|the|her|his) youngest|under ?age|under (?:18|21|eighteen|twenty one)s?|minors${NO_NOUN}|` +
  `(?<=(?:a|any|to|for|the) )minor${NO_NOUN}|grand ?(?:children|kids|child|kid)|school ?(?:kids?|children|boys?|girls?|child)|pupils?|scouts|(?:little|kid|baby) (?:sister|brother|cousin|nephew|niece|boy|girl|lad)s?`

export const GIOVANI =
  'adolescent[ei]?|minorenn[ei]|(?<=(?:un|il|i|ai|al|dei|figli[oa]) )minor[ei](?! (?:di|quantita|gradazione|dose))|bambin[oaie]|bimb[oaie]|ragazzin[oaie]|nipotin[oaie]|fratellin[oi]|sorellin[ae]|' +
  'figliolett[oa]|scolar[oi]|(?:meno di|sotto i|non ha ancora|non ha|prima dei|under) (?:18|diciotto)|(?:sett|ott|nov|dec|undic|dodic|tredic|quattordic|quindic|sedic|diciassett)enn[ei]'

const GLASS =
  '(?:sips?|tastes?|drops?|drinks?|swigs?|glass(?:es)?(?! (?:jar|bottle))|shots?|nips?|tots?|bits?|dash|spoon(?:ful)?|sample|little|small one|bottle|one)'

/** Drunk, tasted or eaten. */
const HAD =
  `(?:drink(?:s|ing)?|tast(?:e|es|ing)|sip(?:s|ping)?|sampl(?:e|ing)|swig|lick|eat(?:s|ing)?|tr(?:y|ies|ying)(?! (?:to|and|out making|making|picking|\\p{L}+ing|(?:her|his|their) hand)\\b)|` +
  `some|(?:an?|the|one) (?:\\p{L}+ ){0,2}?${GLASS}|(?:have|having|has) (?:it|one|any|this|that|(?:the |my |boozy |our )+\\p{L}+|\\p{L}*cello|liqueurs?|gin|vodka|alcohol)|gin|limoncello|liqueurs?)`

/** Whoever asks is no child. */
const THEIRS = '(?:(?! (?:i|we|you) )[^?.!])'

/** Somebody who is told of, and what is told of them: most sentences have nobody of the kind, which is soon seen. */
export interface YoungTold {
  readonly who: RegExp
  readonly whole: RegExp
}

export const isToldOfYoung = ({ who, whole }: YoungTold, text: string): boolean => who.test(text) && whole.test(text)

/** Given to them, wished or had by them, or asked whether it may be. */
export const had = (who: string): YoungTold => ({ who: new RegExp(who, 'u'), whole: hadBy(who) })

const hadBy = (who: string): RegExp =>
  new RegExp(
    [
      `\\b(?:gives?|giving|gave|offer(?:ing)?|pour(?:ing)?|serv(?:e|ing)|shar(?:e|ing)|feed|treat|let(?:ting)?|what about|how about)\\b.{0,40}\\b(?:${who})`,
      `\\b(?:tast(?:ed|ing)|tried|trying|drank|drinking|shared?|sampled) (?:[\\p{L}\\d%,]+ ){0,5}with (?:${who})`,
      `\\b(?:safe|ok|okay|fine|all ?right|allowed|legal|bad|good|suitable|harmful|dangerous|too strong|much|${GLASS}|some)(?: \\p{L}+)? (?:for|to) (?:[\\p{L},]+ ){0,4}?(?:${who})`,
      `\\bhow (?:much|many|often)\\b.{0,12}\\b(?:can|may|could|should|is|are)\\b.{0,30}\\b(?:${who})`,
      `\\b(?:can|may|could|should|let|wants?|asks?|asked)\\b[^.!]{0,40}\\b${HAD}[^.!]{0,25}\\b(?:${who})`,
      `\\b(?:hurt|harm|affect|damage)\\p{L}* (?:[\\p{L},]+ ){0,4}?(?:${who})`,
      `\\b(?:can|may|could|should|might) (?!(?:i|we|you)\\b)(?:\\p{L}+ ){1,3}?${HAD}[^.!]{0,25}?[?,;] ?(?:${who})`,
      `\\b(?:${who})${THEIRS}{0,45}?\\b${HAD}\\b`,
      `\\b(?:${who})[^.!]{0,30}[?.!,] ?(?:\\p{L}+ ){0,3}(?:they|he|she)\\b.{0,15}\\b${HAD}\\b`,
    ].join('|'),
    'u',
  )

/** The same in Italian. */
export const avuto = (chi: string): YoungTold => ({ who: new RegExp(chi, 'u'), whole: avutoDa(chi) })

const avutoDa = (chi: string): RegExp =>
  new RegExp(
    `^(?=.*(?<!\\p{L})(?:${chi})(?!\\p{L}))` +
      '(?=.*(?<!\\p{L})(?:assaggi\\p{L}*|prov(?:are|arlo|arla|arne|i|a|asse)\\b(?! a\\b)|ber(?:e|lo|la|ne|gli)|bev[ae]\\p{L}*|sors[oi]|sorsetto|gocc\\p{L}*|bicchier\\p{L}*|cucchiain\\p{L}*|un po(?! di)|ne vuole|ne vorrebbe|' +
      'dar(?:e|lo|la|ne|gli|gliene|glielo|le)|do|dia|offr\\p{L}*|far(?:gli|le)|(?:sicur[oa]|va bene|adatt[oa]|pericolos[oa]|innocu[oa]) (?:per|a)|fa(?:nno)? male|(?:una|due|tre|bottigli\\p{L}+) (?:e |sono )?(?:per|a) (?:mi[oae]i?|il|i|la|le|un|una))(?!\\p{L}))',
    'u',
  )

/** Something is asked, or wished by them. */
export const ASKED =
  /\b(?:can|may|could|should|would|is it|is an?|are|let|allowed|how much|how about|what about|ok|okay|give|asks?|asked|asking|wants?|wanted|likes?|loves?|begs?|begging|keeps?|posso|possono|puo|si puo|va bene|e sicur[oa]|quanto|da dare|do|chied\w+|chiesto|vuole|vogliono|vorrebbe)\b|\?/

/** Other drinks, which children may have. */
export const WITHOUT =
  /\b(?:alcohol ?free|non ?alcoholic|no alcohol|without (?:any )?alcohol|analcolic\p{L}*|senza alcol|0 ?%)\b/u
export const SOFT = /\b(?:juice|lemonade|water|milk|squash|syrup|succo|limonata|acqua|latte|sciroppo)\b/u
export const SPIRITED =
  /\b(?:\p{L}*cello|liqueurs?|liquor[ei]|gin|vodka|rum|brandy|spirits?|alcohol|boozy|grappa|alcol|nocino)\b|\b(?:with|in|into|con|nel|nella|nell)\b.{0,15}\b(?:juice|lemonade|water|milk|squash|succo|limonata|acqua|latte)\b/u

/** What they help with, or what it is kept for. */
export const HELPS =
  /\b(?:help(?:s|ed|ing)?|pick(?:s|ed|ing)?|forag\p{L}*|gather\p{L}*|shak(?:e|es|ing)|wash\p{L}*|peel(?:s|ing)?|draw\p{L}*|stick\p{L}*|label\p{L}*|aiut\p{L}*|raccogli\p{L}*|raccolt\p{L}*|etichett\p{L}*)\b/u
export const SWALLOWED = /\b(?:sip|taste|drink|drop|swig|lick|glass|eat|ber\p{L}*|assaggi\p{L}*|sorso|gocc\p{L}*)\b/u
export const OF_AGE_LATER =
  /\b(?:18th|21st|eighteenth|christening|birthday|when (?:he|she|they) (?:is|s|are|turns?|grows?)|until (?:he|she|they)|compleanno|battesimo|diciottesimo|quando (?:compie|avra))\b/
