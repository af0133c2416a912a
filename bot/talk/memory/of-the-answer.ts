import { plainWords } from '../lexicon/plain-text.ts'
import type { Rule } from './rule.ts'

const LEAD =
  '(?:(?:and|so|but|ok|okay|oh|ah|hmm?|no|well|now|please|then|e|ma|allora|scusa|hang on|wait|sorry|are|is|quite|just|not to be rude but|dimmi|senti) )*'
const TAIL =
  '(?: (?:hm+|huh|eh|then|now|though|mate|pal|love|again|please|pls|please do|ta|thanks|too|as well|right|at all|or what|for me|dear|per favore|grazie|allora|pure|si|adesso|davvero|proprio))*'

const HOW =
  '(?:quite|really|absolutely|totally|completely|entirely|perfectly|pretty|very|dead|that|so|a hundred percent|100|one hundred percent|fairly|proprio|davvero|veramente|del tutto|ben)'
const SURE = '(?:sure|certain|positive|confident|convinced|sicur[oa]|cert[oa]|convint[oa])'
const FIGURES =
  '(?:that|this|it|those|these|them|all that|all this|(?:the|your|those|these|that|this) (?:figures?|numbers?|amounts?|answer|sums?|maths?|calculation|result|reckoning)|quest[oiae]|quell[oiae]|(?:i|questi|quei) (?:numeri|conti)|il conto|tutto questo)'
const SOUND =
  '(?:right|correct|accurate|exact|precise|reliable|solid|sound|true|guesswork|a guess|just a guess|just guesswork|realistic|believable|for sure|for certain|gospel|trustworthy|giust[oiae]|corrett[oiae]|esatt[oiae]|precis[oiae]|affidabil[ei])'

/** `Quite sure of that, hm?`, `could you be wrong?`, `how good are these numbers`. */
const DOUBTED = [
  `(?:(?:are|r|ur|youre) )?(?:you |u )?(?:${HOW} )*${SURE}(?: (?:of|about|on|with) ${FIGURES})?`,
  `(?:ne |ma )?(?:tu )?(?:ne )?sei (?:${HOW} )*${SURE}(?: (?:di|che) .{1,30})?`,
  `${SURE} ${SURE}`,
  `(?:(?:is|are) )?${FIGURES} (?:(?:is|are|be|e|sono) )?(?:${HOW} )*${SOUND}`,
  `(?:can|could|may|should|do) (?:i|we|you) (?:really |actually |safely )?(?:bank|rely|count|depend|lean|bet|swear|stand)(?: on| by| to| upon)? ${FIGURES}`,
  `(?:can|could|may|should) (?:i|we) (?:really |actually )?(?:trust|believe) ${FIGURES}`,
  `(?:youre|you are|you|arent you|are you)(?: not)?(?: just| only)? (?:guessing|making (?:it|this|that) up|winging it|plucking .{1,20} air)(?: are you| right)?`,
  `(?:could|might|may|can|what if|are) you(?: be|re| are| not)*(?: wrong| mistaken| off| out)(?: (?:about|on|with|there|here)(?: ${FIGURES})?)?`,
  `how (?:good|far out|far off|wrong|close|solid|sound|true|likely|accurate|exact|trustworthy) (?:is|are|can|could|would|might) ${FIGURES}(?: be| really)?`,
  `would you (?:put money|bet|stake \\w+(?: \\w+)?|swear)(?: on| to| by)? ${FIGURES}`,
  `(?:ci|me ne|mi) (?:posso|possiamo) (?:fidare|contare|fare affidamento)|quanto (?:ci )?(?:posso )?(?:contar(?:e|ci)|fidar(?:e|mi))(?: su ${FIGURES})?|quanto (?:ci|ne|me ne) posso (?:contare|fidare)|(?:non )?(?:e|sono) (?:${HOW} )*${SOUND}|(?:non )?stai (?:tirando a indovinare|inventando)|potresti sbagliarti|quanto e ${SOUND}`,
]

const ASKING =
  '(?:(?:can|could|may|might|will|would) (?:i|we|you) (?:please )?(?:have|see|get|give me|show me|tell me|read)|i(?:d| would)? (?:want|like|love|need)(?: to (?:see|know|hear|have|read))?|i wanna (?:see|know|hear)|gimme|gi me|give (?:me|us)|show (?:me|us)|tell (?:me|us)|let(?: me|s| us) (?:see|hear|have)|lets be having|hit me with|and|with|dammi|dimmi|fammi (?:vedere|sapere|leggere)|mostrami|voglio|vorrei|posso (?:avere|vedere)|raccontami|spiegami)'
const WHOLE =
  '(?:(?:all |all of |out )?the (?:rest|lot|whole (?:lot|thing|story|shebang|answer|caboodle|picture)|full (?:story|thing|monty|answer|picture|works|lot|details?)|remainder|small print|fine print|nitty gritty|ins and outs|details?|particulars|works|long (?:version|story|one|answer)|full version|longer (?:version|one|answer)|detailed (?:version|one|answer)|unabridged version|complete (?:version|answer|story)|extended version|extra bits|other bits|ones behind it)|(?:some |any |a bit |a little )?more(?: (?:details?|info|information|on (?:that|it|this)))?|everything(?: (?:you know|there is|youve got))?|all of (?:it|that|this)|all (?:details|there is)|chapter and verse|it all|tutto|tutto quanto|di piu|il resto|i dettagli|(?:tutti )?i particolari|la versione (?:lunga|completa|intera)|qualcosa di piu|altro)'

/** `Gimme the long version`, `keep going`, `vai avanti`. */
const MORE_ASKED = [
  `(?:${ASKING} )*${WHOLE}(?: (?:of|to|di|about|on) ${FIGURES})?`,
  `(?:is|are) there (?:any )?(?:more|anything else)(?: (?:to|of|on) ${FIGURES})?`,
  `any more(?: (?:to|of|on) ${FIGURES})?`,
  '(?:you can |do |just |please |can you |could you )*(?:carry on|keep going|go on|continue|read on|elaborate|expand|dont (?:stop|hold back)|go into (?:more |the |greater )?details?|spell it out|fill me in|vai avanti|continua|prosegui|vai pure)(?: (?:on|with) ' +
    FIGURES +
    ')?',
  'what (?:did you|have you|are you) (?:leave|left|leaving|missed?|skip|skipped|holding|not telling)(?: \\w+){0,2}',
  'what else(?: (?:is there|do i need to know|should i know|can you tell me))?|e (?:poi|il resto|dopo)|ce (?:dell |d )?altro|cos altro',
]

const wholly = (ways: readonly string[]): RegExp =>
  new RegExp(`^${LEAD}(?:${ways.map((way) => `(?:${way})`).join('|')})${TAIL}$`)

const DOUBT = wholly(DOUBTED)
const MORE = wholly(MORE_ASKED)

/** Asks by its mark, or by a word of it. */
const ASKS = /\?|^(?:ok |so |but |and )*(?:are|is|can|could|how|would|you|youre|r u|ma|ne|quanto|sure|quite|really)\b/i

const MOST_WORDS = 12

/** Asked of the answer that stands: how far it may be believed, or for the rest of it. Null where anything else is said. */
export const ofTheAnswer: Rule = ({ typed, bits }) => {
  if (bits.some(({ kind, value }) => value > 0 && kind !== 'strength' && kind !== 'bare')) return null
  const clauses = typed.text
    .split(/[,;.!:]+/)
    .map((clause) => plainWords(clause).trim())
    .filter((clause) => clause !== '')
  if (clauses.length === 0 || clauses.join(' ').split(' ').length > MOST_WORDS) return null
  const whole = clauses.join(' ')
  if (DOUBT.test(whole) && ASKS.test(typed.text)) return { kind: 'last', what: 'how_sure' }
  return MORE.test(whole) || (clauses.length > 1 && clauses.every((clause) => MORE.test(clause)))
    ? { kind: 'last', what: 'more' }
    : null
}
