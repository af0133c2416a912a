import { numberWords } from '../../../core/quantity/read/number-words.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { whichJar } from '../memory/rule.ts'

type Way = 'given' | 'opened'

/** Looked for before anything else: no other sentence is of it. */
const CHEAP = /\beach to\b|\bapiece to\b|gave|giv|gift|handed|drank|drunk|opened|away|regal|donat|bevut|apert|stapp/i

const COUNTS: ReadonlyMap<string, number> = new Map([
  ...numberWords,
  ...(['a', 'un', 'una', 'uno'] as const).map((word): [string, number] => [word, 1]),
  ...(['a couple', 'a couple of', 'a pair', 'a pair of', 'un paio', 'un paio di'] as const).map(
    (word): [string, number] => [word, 2],
  ),
])
/** Nobody gives away more of a batch, bottles. */
const MOST = 48

const COUNT = `(?<count>\\d{1,2}|${[...COUNTS.keys()].toSorted((one, other) => other.length - one.length).join('|')}|half)`
const WHO =
  '(?:(?:i|ive|we|weve|have|just|already|so|then|also|today|yesterday|ne|ho|abbiamo|ci siamo|mi sono|my (?:husband|wife|partner) and i) )*'
const GIVEN = '(?:gave(?: away)?|given(?: away)?|gifted|handed(?: out| over)?|regalat[oaie]|donat[oaie]|dat[oaie] via)'
const OPENED = '(?:opened|drank|drunk|bevut[oaie]|apert[oaie]|stappat[oaie])'
const BOTTLES = '(?: (?:more|other|altr[aei]))?(?: (?:bottles?|bottigli[ae]))?'
const OF = '(?: (?:of|di|del|dei|delle) (?:it|them|these|those|quelle|(?:the|my|our) (?:\\p{L}+ )?\\p{L}+))?'
const AWAY = '(?: (?:away|out|off|via))?'
const WHOM_WORDS =
  '(?!(?:it|them|that|this|and|one|two|three|some|half|away|good|quick|nice)\\b)(?:(?:my|our|the|his|her|a|la|il|mia|mio|l) )?(?!(?:jar|lot|taste|sip|shake|stir|swirl|glass)\\b)\\p{L}+(?: (?!(?:and|away|one|two|three|each)\\b)\\p{L}+)?'
const TO = `(?: (?:to|for|al?|ad|alla|alle|ai|allo|all|per) (?<whom>${WHOM_WORDS}))?`
const TAIL =
  '(?: (?:myself|ourselves|already|today|yesterday|now|too|as well|so far|last night|last week|each|apiece|as (?:a )?(?:present|gift)s?|for (?:christmas|her|his|their) ?(?:birthday)?|oggi|ieri|gia|ciascun[oa]|io))*'
const GONE = `(?: (?:have|has|are|is|were|was|got|been|all|now|already|sono|e|state?|l|le|la|gia|ho|abbiamo|l ho|lho|labbiamo|ce l|ce le))* (?<gone>given(?: away)?|gifted|handed out|away|gone|regalat[aei]|drunk|opened|empty|finished|bevut[aei]|apert[aei])`

const VERB = new RegExp(`^${WHO}(?:(?<given>${GIVEN})|(?<opened>${OPENED}))(?: (?<rest>.*))?$`, 'u')
const COUNTED = new RegExp(`^${WHO}${COUNT}${BOTTLES}${OF}${AWAY}(?: each| apiece)?${TO}${TAIL}$`, 'u')
const TOLD_GONE = new RegExp(`^${COUNT}${BOTTLES}${OF}${GONE}${TO}${TAIL}$`, 'u')
const WHOM_FIRST = new RegExp(`^(?<whom>${WHOM_WORDS}) ${COUNT}${BOTTLES}${OF}${TAIL}$`, 'u')
const ONLY_WHOM = new RegExp(`^(?:to )?(?<whom>${WHOM_WORDS})$`, 'u')
const OPENED_GONE = /^(?:drunk|opened|empty|finished|bevut|apert)/
const EACH_TO = /^\S+(?: bottles?)? (?:each|apiece) to /u
const EACH = / (?:each|apiece|ciascun[oa])\b/u

interface Told {
  readonly given: number
  readonly opened: number
  /** Half of something that is not named. */
  readonly isHalf: boolean
}

/** Words that no Italian sentence has beside a count: there `otto` is a person. */
const ENGLISH = /\b(?:gave|given|gifted|handed|drank|drunk|opened|each|apiece|bottles?|to|the|and|my)\b/iu
const OTTO = /\botto\b/giu
/** No count, so that a clause of it alone is somebody’s name. */
const NAMED = 'ottone'

/** Clauses of a sentence, each with its verb or that of the one before. */
const clausesOf = (text: string): readonly string[] =>
  plainWords((ENGLISH.test(text) ? text.replace(OTTO, NAMED) : text).toLowerCase().replace(/[,;+&.!]/g, ' and '))
    .trim()
    .split(/ (?:(?:and|plus|then|e|ed|poi) )+/u)
    .map((clause) => clause.replace(/^(?:and|so|also|e|ed|anche) /u, '').trim())
    .filter((clause) => clause !== '' && clause !== 'and')

/** How many bottles a sentence tells of, however they are counted; null where any of its words tells of something else. */
export function bottlesToldIn(text: string): Told | null {
  let way: Way | null = null
  let isHalf = false
  let [waiting, each] = [0, 0]
  const sum = { given: 0, opened: 0 }
  for (const clause of clausesOf(text)) {
    const gone = TOLD_GONE.exec(clause)?.groups
    const verb: Readonly<Record<string, string | undefined>> | undefined =
      gone === undefined ? VERB.exec(clause)?.groups : undefined
    if (gone !== undefined) way = OPENED_GONE.test(gone.gone!) ? 'opened' : 'given'
    else if (verb !== undefined) way = verb.given === undefined ? 'opened' : 'given'
    // `One each to Bea and Theo`: nothing else is done so.
    else if (way === null && EACH_TO.test(clause)) way = 'given'
    if (way === null) return null
    const rest: string = verb === undefined ? clause : (verb.rest ?? '')
    const found: Readonly<Record<string, string | undefined>> | undefined =
      gone ?? COUNTED.exec(rest)?.groups ?? (way === 'given' ? WHOM_FIRST.exec(rest)?.groups : undefined)
    if (found === undefined) {
      if (way !== 'given' || !ONLY_WHOM.test(rest)) return null
      // `One each to Anna and Paul`, `gave Anna and Paul one each`.
      if (each > 0) sum.given += each
      else waiting++
      continue
    }
    const count = COUNTS.get(found.count!) ?? Number(found.count)
    const isEach = EACH.test(rest)
    if (found.count === 'half') isHalf = true
    else if (!(count >= 1 && count <= MOST && Number.isInteger(count))) return null
    else sum[way] += count * (isEach ? 1 + waiting : 1)
    if (waiting > 0 && !isEach) return null
    each = isEach ? count : 0
    waiting = 0
  }
  return waiting > 0 || (sum.given + sum.opened === 0 && !isHalf) ? null : { ...sum, isHalf }
}

const IN_BOTTLES: ReadonlySet<TalkJar['stage']> = new Set(['resting', 'ready'])

const NAMES = /\b(?:of (?:the|my|our)|del|della|dei|delle) /iu

/** The jars that bottles may be of: named, spoken of last, or all that are in bottles. */
function jarsMeant({ bits, jars, typed }: Sentence, { call, answersBehind }: Remembered): readonly TalkJar[] {
  const named = jarsNamed(bits, jars).map(({ jar }) => jar)
  if (named.length > 0) return named
  // `Of the old faithful`: a jar that is not there.
  if (NAMES.test(typed.text)) return []
  const bottled = runningAmong(jars).filter(({ stage }) => IN_BOTTLES.has(stage))
  const spoken = answersBehind > 0 ? undefined : jarCalled(call?.options.jar, bottled)
  return spoken === undefined ? bottled : [spoken]
}

/**
 * `Gave Anna one and Paul two`, `two bottles away and I opened one myself`: bottles that went, all of them counted. Null where nothing is
 * in bottles, and where a word of it tells of something else.
 */
export function bottlesGone(sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading | null {
  const { text } = sentence.typed
  if (!CHEAP.test(text) || text.includes('?') || sentence.has('asking')) return null
  const told = bottlesToldIn(text)
  if (told === null) return null
  const meant = jarsMeant(sentence, said)
  const [only, another] = meant
  if (only === undefined || meant.some(({ stage, isTroubled }) => !IN_BOTTLES.has(stage) || isTroubled)) return null
  const ways = (['given', 'opened'] as const).filter((way) => told[way] > 0)
  const callOf = (jar: TalkJar, way: Way): CallRead => ({
    command: 'bottles',
    options: { jar: jar.name, [way]: String(told[way]) },
  })
  // Half of a bottle, or of all of them.
  if (told.isHalf) {
    const option = /gave|giv|regal|donat/i.test(text) ? 'given' : 'opened'
    const call: CallRead = { command: 'bottles', options: { jar: only.name } }
    return { kind: 'question', call, about: { kind: 'lacks', option, sample: '1' }, choices: [], leftOut: [] }
  }
  const [first, second] = ways
  if (first === undefined) return null
  if (another !== undefined)
    return second === undefined
      ? whichJar(
          { command: 'bottles', options: {} },
          meant.map((jar) => callOf(jar, first)),
        )
      : null
  return {
    kind: 'call',
    call: callOf(only, first),
    does: 'record',
    leftOut: [],
    ...(second !== undefined && { next: callOf(only, second) }),
  }
}
