import { withoutMarks } from '../lexicon/plain-text.ts'

const AGE =
  '(?:[1-9]|1[0-7]|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen)'

/** What comes behind a person's age; `my 12 year old rum` is no person. */
const NO_NOUN =
  '(?=$|[?.!]| (?:to|have|has|drink|try|taste|sip|some|a|an|any|one|of|and|or|at|in|for|with|who|when|it|this|that|please|too|boy|girl|son|daughter|kid|child|nephew|niece|grandson|granddaughter|grandchild|cousin|brother|sister)\\b)'

const CHILD =
  'son|daughter|kids?|child|children|boys?|girls?|lad|nephew|niece|grandson|granddaughter|grandchild|grandchildren|grandkids?|brother|sister|stepson|stepdaughter'

const FIGLI =
  'figli[oae]?|nipot[ei]|nipotin[oaie]|ragazz[oaie]|ragazzin[oaie]|fratello|fratellino|sorella|sorellina|cugin[oa]'

const AGED: readonly RegExp[] = [
  new RegExp(`\\b(?:my|our|his|her|their|your|the|a|an|any) ${AGE} ?(?:years?|yrs?|yr) olds?${NO_NOUN}`),
  new RegExp(`\\b(?:to|for|let) ${AGE} ?(?:years?|yrs?|yr) olds?${NO_NOUN}`),
  new RegExp(
    `\\b(?:${CHILD})\\b.{0,20}\\b(?:is|s|aged|of|who|turned|only|just|hes|shes) (?:only |just |nearly |almost )?${AGE}\\b(?! (?:ml|l|g|kg))`,
  ),
  new RegExp(
    `\\b(?:he|she|hes|shes) (?:is |s )?(?:only |just |nearly |almost )?${AGE}(?:$|[?.!,]| (?:years?|can|may|so|is))`,
  ),
  new RegExp(
    `\\b(?:${FIGLI})\\b.{0,20}\\b(?:di|ha|da|che ha) (?:solo |appena |quasi )?(?:[1-9]|1[0-7]|\\p{L}+) anni\\b`,
    'u',
  ),
  /\b(?:dodic|tredic|quattordic|quindic|sedic|diciassett)enn[ei]\b/,
]

/** Of no age that is said, and nobody's grown-up son. */
const YOUNG =
  /\b(?:teen|teens|teenagers?|teenage|kids?|children|child|toddlers?|under 18s?|under eighteens?|underage|minors?|grandchildren|grandkids?|adolescent[ei]?|minorenn[ei]|bambin[oaie]|bimb[oaie]|ragazzin[oaie])\b/

const HAVING =
  /\b(?:(?:one|some|bottle|glass|shot|sip|drop|taste|little|sample|una|uno|bottiglia|bicchiere|goccio|po) (?:for|per)|give|gives|gave|giving|have|drink|drinks|drinking|try|taste|sip|share|serve|let|allowed|safe|ok|okay|offer|pour|dare|darlo|darla|darne|dargli|darle|do|bere|berlo|berla|bere?ne|assaggiar\p{L}*|far bere|offrir\p{L}*|offro|puo|possono|beve|sors[oi]|goccio|goccetto|asks?|asking|wants?)\b/u

const ASKED =
  /\b(?:can|may|could|should|is it|are|let|allowed|posso|possono|puo|si puo|va bene|da dare|do|asks?|asked|asking|wants?|begs?|begging|chied\w+|chiesto|vuole|vogliono|vorrebbe)\b|\?/

/** Whether somebody under eighteen is to have some: `can I give it to my 15 year old?`. */
export function isForChild(text: string): boolean {
  const plain = withoutMarks(text).replace(/[^\p{L}\d?.!,]+/gu, ' ')
  if (!HAVING.test(plain) || WITHOUT.test(plain)) return false
  return AGED.some((aged) => aged.test(plain)) || (YOUNG.test(plain) && ASKED.test(plain) && IS_GIVEN.test(plain))
}

/** What a child may have. */
const WITHOUT =
  /\b(?:alcohol ?free|non ?alcoholic|without (?:any )?alcohol|juice|lemonade|water|milk|squash|analcolic\p{L}*|senza alcol|succo|limonata|acqua|latte)\b/u

/** Given to them, wished or had by them; `what can I make with the kids` is neither. */
const IS_GIVEN =
  /\b(?:(?:asks?|asked|asking|wants?|begs?|begging|chied\p{L}*|chiesto|vuole|vogliono|vorrebbe)\b.{0,30}\b(?:sip|taste|try|drop|some|drink|limoncello|liqueur|sors[oi]|goccio|goccetto|assaggi\p{L}*|ber\p{L}*|liquore)|(?:give|serve|offer|pour|share)\b.{0,25}\b(?:to|with|for|my|our|the|a|some)|(?:safe|ok|okay|fine|all right|allowed) for|(?:teen|teens|teenagers?|kids?|child|children|toddlers?|18s?|minors?|grandchildren|grandkids?)\b.{0,12}\b(?:have|drink|try|taste|sip|allowed)|(?:dar|offrir|assaggiar|ber)\p{L}*|(?:adolescent[ei]?|minorenn[ei]|bambin[oaie]|bimb[oaie]|ragazzin[oaie])\b.{0,12}\b(?:ber\p{L}*|assaggiar\p{L}*))/u
