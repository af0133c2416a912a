import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'

/** Looked for before anything else. */
const CHEAP =
  /sugar|syrup|sweeten|zuccher|sciropp|taste|occhio|eye|idea|know|sure|measur|weigh|pesat|handful|glug|basta|non so|dunno/i

const SIZE = '(?:(?:good|big|large|small|little|generous|decent|fair|nice|healthy|bel|bella|buon|buona) )*'
const GLUG =
  '(?:glugs?|splash(?:es)?|slugs?|sloshe?s?|drizzles?|dollops?|handfuls?|fistfuls?|scoops?|goccio|manciat[ae]|pugn[oi])'
const SWEET = '(?:(?:the|that|my|white|caster|brown|lo|dello|di|d) )*(?<what>sugar|syrup|zucchero|sciroppo)'
const DID =
  '(?:stirred|added|put|poured|mixed|dissolved|tipped|sweetened|chucked|bunged|gave|aggiunto|messo|versato|zuccherat[oa]|addolcit[oa])'
const BY_TASTE =
  '(?:(?:to|by) (?:my )?(?:taste|eye|feel)|by guess\\p{L}*|without (?:measuring|weighing)(?: it| anything)?|i (?:didnt|never) (?:measure|weigh)(?: it| anything)?|a occhio|quanto basta|a piacere|a sentimento)'

/** `Stirred in a glug of syrup`, `I put a good handful of sugar in`. */
const A_GLUG = new RegExp(
  `(?:^| )(?:a|an|one|another|some|two|un|una|due) ${SIZE}(?<glug>${GLUG}) (?:of |di |d )?${SWEET}(?: |$)`,
  'u',
)
const DONE = new RegExp(`(?:^| )${DID} `, 'u')
/** `Sweetened it by taste`, `added sugar by eye`, `zuccherato a occhio`. */
const TASTED = new RegExp(`(?:^| )${DID} (?:\\p{L}+ ){0,4}?${BY_TASTE}(?: |$)`, 'u')
/** Where how much is asked. */
const NOBODY_KNOWS = new RegExp(
  `^(?:(?:i|we|oh|sorry|just|it was|honestly|really) )*(?:no (?:idea|clue)|(?:do|did)(?:n ?t| not) (?:know|measure|weigh)|dont know|dunno|not sure|didnt (?:measure|weigh|look)|never measured|havent a clue|${BY_TASTE}|non (?:lo )?so|boh|nessuna idea|non (?:l )?ho (?:pesato|misurato))(?: (?:it|how much|at all|that|sorry|quanto|really|anything))*$`,
  'u',
)

/** So much is in a hand or a glug. Common practice, no source. */
const TAKEN: Readonly<Record<'syrup' | 'sugar', Readonly<Record<string, string>>>> = {
  syrup: { sugar: '30 g ±20 g', water: '30 ml' },
  sugar: { sugar: '50 g ±30 g' },
}

/**
 * What went into a strained jar by taste: a glug or a handful is taken for what such ones are, and all else for what was planned, give
 * or take half of it. Null where an amount is told, or it is asked or not done yet.
 */
export function sweetenedByTaste(sentence: Sentence, { call, question }: Remembered): TalkReading | null {
  const { typed, bits, jars, has } = sentence
  if (!CHEAP.test(typed.text) || typed.text.includes('?')) return null
  if (has('asking', 'denial', 'wish', 'hypothesis', 'how_much') && !NOBODY_KNOWS.test(plainOf(sentence))) return null
  const words = plainOf(sentence)
  const isAsked =
    question?.about.kind === 'lacks' && question.call.command === 'jar sweeten' && question.about.option === 'sugar'
  const glug = A_GLUG.exec(words)?.groups
  const isDone = DONE.test(words) || isAsked
  const isTold = isDone && (glug !== undefined || TASTED.test(words))
  if (!isTold && !(isAsked && NOBODY_KNOWS.test(words))) return null
  if (bits.some(({ kind, value }) => !/^(?:jar|plant|date)$/.test(kind) && !(kind === 'sugar' && value === 0)))
    return null
  const waiting = runningAmong(jars).filter(({ stage }) => stage === 'strained')
  const named = jarsNamed(bits, waiting)[0]?.jar
  const spoken = jarCalled(question?.call.options.jar, waiting) ?? jarCalled(call?.options.jar, waiting)
  const jar = named ?? spoken ?? (waiting.length === 1 ? waiting[0] : undefined)
  if (jar === undefined) return null
  const taken = glug === undefined ? {} : TAKEN[/^s[cy]/.test(glug.what!) ? 'syrup' : 'sugar']
  const sweeten: CallRead = { command: 'jar sweeten', options: { jar: jar.name, ...taken } }
  return { kind: 'call', call: sweeten, does: 'record', leftOut: [], isSugarGuessed: true }
}

const plainOf = ({ typed }: Sentence): string => wordsAlone(typed).replaceAll(/['’]/gu, '')
