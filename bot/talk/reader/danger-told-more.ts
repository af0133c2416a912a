/** Nothing was drunk by whoever drives; over text in lower case without apostrophes. */
const NOTHING_HAD =
  /\b(?:(?:had|drunk|drank|drinking|touched|tasted|having|have) (?:absolutely |precisely )?(?:nothing|none|not a drop|no (?:alcohol|drink|drinks|booze))(?! to eat)|(?:havent|hasnt|not|didnt|did not|have not|has not|never) (?:actually |even )?(?:had|drunk|drink|drank|touched|tasted|have|touch|taste) (?:a (?:single )?(?:drop|thing|sip|drink)|any(?:thing)?(?: (?:alcohol|drink|drinks|at all))?|alcohol|one drop)|(?:dont|doesnt|didnt|never) drink(?! much| a lot| often| (?:\w+ )?enough)|(?:hadnt|havent|hasnt) been drinking|not been drinking|(?:the )?designated driver|(?:stone|completely|totally|stone cold) sober|teetotal(?:ler)?|not a drop|only (?:had |drank |drunk )?(?:water|juice|tea|squash|soft drinks?|lemonade|coffee)|(?:had|drank|drunk) only (?:water|juice|tea|squash|soft drinks?|lemonade|coffee))\b|\b(?:non (?:ho|ha|abbiamo) (?:\w+ )?(?:bevut\w|toccat\w|assaggiat\w)(?! (?:molto|tanto|troppo))|non bev[oe](?! (?:molto|tanto))|(?:solo|soltanto) (?:acqua|succo)|astemi[oa])\b/

/** But something was: how much, when, or except for what. */
const SOMETHING_HAD =
  /\b(?:but|except|really|almost|hardly|practically|nearly|much|to speak of|apart|other than|besides|else|stronger|since|hours?|minutes?|mins|yet|glass(?:es)?|sips?(?<!a sip)|nips?|shots?|taste[sd]?(?<!(?:not|havent|hasnt) tasted)|small|little|one|two|three|four|five|last night|yesterday|until|till|for (?:a|an|the)|(?:now|then) sober|sober now|ma|tranne|eccetto|a parte|bicchier\w+|sors\w+|ore|ieri|assaggino|goccino)\b/

/** Who asks to drive has had nothing at all: `can I drive her home, I’ve had nothing`. */
export const isNothingHad = (said: string): boolean => NOTHING_HAD.test(said) && !SOMETHING_HAD.test(said)

/** It is in the spirit already, whatever is asked of it. */
const IN_ALREADY =
  /(?:^|[,.!?] ?| )(?:i|we|ive|weve|he|she|they|my \w+|somebody|someone|and|already|just) (?:(?:have|has|had|ve|just|already|accidentally|also|then|stupidly) )*(?:put|added|used|steeped|dropped|chucked|threw|thrown|infused|filled|tipped|stuck|started|covered|macerated|soaked|made)\b|\b(?:are|is|been|were|was|theyre|its) (?:already |now |all |sitting |steeping |in there )*(?:in|steeping in|sitting in|under) (?:my|the|our|a|it|gin|vodka|rum|brandy|grappa|spirit|there|\d+%?)\b|\b(?:found|picked|got|gathered)\b.{0,40}\b(?:put|added|chucked|dropped|tipped) (?:them|it|some|those)\b|\bthere(?:s| are| is)(?: \w+){1,6} in (?:my|our|the|it|his|her)\b|\b(?:already in|been steeping|been soaking|been in)\b|\b(?:ho|abbiamo|ha|hanno) (?:gia |appena )?(?:mess[oaie]|aggiunt[oaie]|usat[oaie]|infus[oaie]|fatt[oaie])\b|\bc(?:i sono| e)(?: \w+){1,6} (?:nel|nella|nello)\b|\b(?:sono|e|stanno) (?:gia )?(?:nel|nella|dentro|in infusione|in macerazione)\b/

/** Asked beforehand. */
const BEFOREHAND =
  /\b(?:can|could|should|shall|may|might|must|want(?:ed)? to|going to|gonna|if|would|thinking of|like to|before) (?:i|we|you|one|to)? ?(?:put|use|add|steep|infuse|make|start)\b/

/** Plants nobody knows went in: what there is has to go, not only what was to come. */
export const isInAlready = (said: string): boolean => IN_ALREADY.test(said) && !BEFOREHAND.test(said)
