import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import type { CallRead } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'

/** What was done, by the step that tells of it. */
const DONE: Readonly<Partial<Record<CallRead['command'], string>>> = {
  'jar shake':
    'shook|shake|shaken|shaking|stirred|stir|turned|turn|touched|touch|scoss[oai]|scuoter\\w*|scosse|agitat[oaie]|agitar\\w*|mosso|toccat[oa]',
  'jar strain':
    'strained|strain|drained|drain|sieved|sieve|touched|touch|filtrat[oaie]|filtrar\\w*|colat[oaie]|scolat[oaie]',
  'jar filter': 'filtered|filter|racked|touched|touch|filtrat[oaie]|filtrar\\w*',
  'jar sweeten': 'sweetened|sweeten|sugared|added|add|put|zuccherat[oaie]|dolcificat[oaie]|messo|aggiunt[oa]',
  'jar bottle': 'bottled|bottle|filled|fill|imbottigliat[oaie]|imbottigliar\\w*',
  'jar taste': 'tasted|taste|tried|try|rated|assaggiat[oaie]|provat[oaie]',
  'jar add': 'added|add|put|threw|messo|aggiunt[oaie]',
  'jar start': 'started|start|made|make|begun|began|put|iniziat[oa]|fatto|messo',
  'jar note': 'moved|move|said|wrote|spostat[oaie]|mosso',
}

const THAT =
  '(?:it|that|this|that one|this one|that bit|that entry|that line|that last (?:bit|one|entry|line|thing)|the last (?:bit|one|entry|line|thing)|last (?:bit|one|entry)|the entry|what i (?:just )?(?:said|wrote|told you)|quell[oa]|quest[oa]|l ultim[oa])'

/** That what was written down is not so. */
const NOT_SO = [
  '(?:that|it|this) (?:did not|didnt|never|has not|hasnt) (?:really |actually |even )?(?:happen(?:ed)?|take place|took place|occur(?:red)?)',
  '(?:that|it|this)(?:s| is| was|isnt| isnt| wasnt)(?: just)? (?:not true|untrue|not so|not right|false|a slip|a lie|an error|a fib|nonsense|rubbish|a joke|not what i did|not what happened|true)',
  'i (?:lied|fibbed|spoke too soon|jumped the gun|was (?:kidding|joking|lying|too quick|mistaken)|made (?:that|it) up|got (?:that|it) wrong|dreamt it|only thought i did)',
  'you (?:should not|shouldnt|ought not|oughtnt|werent|were not)(?: to)? (?:have )?(?:written|write|noted|note|recorded|record|marked|mark|counted|count|logged|log|put|entered|enter|taken|take|told)(?: (?:that|it|this))?(?: down| in)?',
  '(?:please )?(?:dont|do not|no need to) (?:write|note|record|count|log|mark|put|enter|keep) (?:that|it|this)(?: one)?(?: down| in)?',
  '(?:take|put) (?:that |it |this |this one |that one )?back(?: please| again)?|back please|please take back',
  `(?:please |can you |could you )*(?:rub|cross|wipe|strike|scrub|score|blot|take|cut|edit|scratch) ${THAT} (?:out|off|away|back|from the (?:record|book|list|log|notebook)|off the (?:record|book|list|log|notebook))`,
  '(?:please |can you |could you )*(?:erase|remove|delete|cancel|wipe|strike|scrub|bin|drop|lose|get rid of|take (?:out|off|back)) (?:that entry|the entry|that line|(?:that|the|my) last (?:bit|one|entry|line|thing|note)|last (?:bit|one|entry)|what i (?:just )?(?:said|wrote|told you))',
  'un ?(?:do|shake|strain|filter|bottle|sweeten|note|write)(?: (?:it|that|this))?',
  'non e (?:vero|successo|accaduto|cosi|mai successo)|non e mai (?:successo|accaduto)|e falso|torna indietro|scherzavo|(?:mi sono|m ero|mi ero) sbagliat[oa]|ho (?:scritto|detto) una (?:bugia|cavolata|sciocchezza)',
  `(?:${THAT} )?non (?:la |lo |l |li |le )?(?:dovevi|dovresti|andava|bisognava|devi)(?: mica)? (?:segna\\w+|scrive\\w+|registra\\w+|mette\\w+|conta\\w+|nota\\w+|scritt[oa]|segnat[oa]|registrat[oa])`,
  '(?:togli|leva|cancella|elimina|rimuovi|annulla)(?:l[oa]|mel[oa])? (?:dal registro|dal quaderno|dalla lista|dagli appunti|quella riga|quell ultim[oa]|l ultim[oa](?: \\w+)?|quello che ho detto)',
  'annulla(?:l[oa])?',
]

/** Said beside it, and not enough alone. */
const BESIDE =
  '(?:no|nope|nah|naw|oops|whoops|wrong|false|sorry|wait|hang on|hold on|my bad|silly me|please|pls|lol|haha|actually|well|oh|but|and|so|ok|off|away|ah|er|um|ops|falso|scusa|aspetta|anzi|errore|errore mio|per favore|ma|dai|no no)'
const GO = `(?:get rid of|delete|remove|erase|cancel|scrap|lose|drop|take|strike|bin|forget|scrub) ${THAT}(?: off| out| away| back)?|(?:togli|leva|cancella|elimina|rimuovi|annulla)(?:l[oa]|mel[oa])?|(?:delete|remove|erase|undo|cancel)`

const LEAD = `(?:${BESIDE} )*`
const TAIL = `(?: (?:please|pls|ok|again|now|then|will you|would you|for me|lol|yet|at all|per favore|dai|allora|${BESIDE}))*`

const strong = new RegExp(`^${LEAD}(?:${NOT_SO.map((way) => `(?:${way})`).join('|')})${TAIL}$`)
const weak = new RegExp(`^${LEAD}(?:${BESIDE}|${GO})${TAIL}$`)

/** `I never shook it`, `non l’ho agitato`: of the very step. */
const denies = (done: string): RegExp =>
  new RegExp(
    `^${LEAD}(?:(?:i|we) (?:never|did not|didnt|havent|have not|hadnt)(?: (?:actually|really|even|yet|ever))?(?: (?:did|do|done|${done}))?(?: (?:it|that|this|any of that|so|them|the \\w+(?: \\w+)?|yet|today))*|(?:didnt|never) (?:do|did|${done})(?: (?:it|that|this|the \\w+))?|non (?:l|lo|la|li|le)? ?(?:ho|abbiamo)(?: mica| mai| ancora)? (?:fatt[oa]|${done})(?: (?:il|la|lo|i|le) \\w+)?|non (?:lho|labbiamo)(?: mica| mai| ancora)? (?:fatt[oa]|${done}))${TAIL}$`,
  )

const MOST_WORDS = 14

/** `Wrong, that did not happen. Take back.`: that the step that was just written down is not so, and nothing else. */
export function isTakenBack({ typed, bits, jars }: Sentence, step: CallRead | null, own: TalkJar | undefined): boolean {
  if (step === null || typed.text.includes('?')) return false
  if (bits.some(({ kind, value }) => value > 0 && kind !== 'date')) return false
  if (jarsNamed(bits, jars).some(({ jar }) => jar.id !== own?.id)) return false
  const clauses = typed.text
    .replace(/\b[Uu]n-/g, 'un ')
    .split(/[,;.!:–—]+/)
    .map((clause) => plainWords(clause).trim())
    .filter((clause) => clause !== '')
  if (clauses.join(' ').split(' ').length > MOST_WORDS) return false
  const done = DONE[step.command]
  const isSaid = (clause: string): boolean => strong.test(clause) || (done !== undefined && denies(done).test(clause))
  return clauses.some(isSaid) && clauses.every((clause) => isSaid(clause) || weak.test(clause))
}
