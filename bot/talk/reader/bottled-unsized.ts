import { unlessRefused } from '../../../core/domain-error.ts'
import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { unknownName } from '../bits/unknown-name.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { withOption } from '../memory/change-call.ts'
import type { Remembered } from '../memory/remembered.ts'

const BOTTLE = /bottle|bottigli|flask|decanter|caraf/i

/** `Poured it all back in the gin bottle`, `bottled it in whatever bottle I had`, `versato in una bottiglia piccola`. */
const FILLED =
  /^(?:(?:i|we|ive|weve|just|now|ok|so|and|then|ho|abbiamo|l ho|have|it s|its) )*(?:bottled|decanted|poured|tipped|funnelled|funneled|ladled|siphoned|transferred|put|got|gone|went|imbottigliat[oa]|versat[oa]|travasat[oa]|mess[oa])\b.{0,40}\b(?:in|into|nella|nelle|in una)\b(?: (?:a|an|one|two|three|four|some|the|my|our|that|those|whatever|any|old|small|little|tiny|big|large|odd|clean|empty|different|gin|vodka|rum|whisky|whiskey|brandy|grappa|spirit|wine|beer|swing|top|clip|nice|glass|una|un|due|tre|qualche|bottle|of|kind|sort)){0,5} (?:bottles?|flasks?|decanters?|carafes?|bottigli[ae]|bottigliett[ae]|caraff[ae])\b/u

/** `Bottled it, filled an old wine bottle`, `it filled two small bottles`. */
const FILLS =
  /^(?:(?:i|we|it|ive|weve|just|now|ok|so|and|ho|abbiamo|bottled|imbottigliat[oa]|them|all) )*(?:filled|fills|riempit[oa])(?: (?:up|just|about|exactly))*(?: (?:an?|one|two|three|four|five|six|some|my|the|una|un|due|tre|quattro|old|small|little|tiny|big|large|odd|clean|empty|nice|wine|gin|vodka|rum|whisky|whiskey|brandy|grappa|spirit|glass|vecchia|piccola)){1,5} (?:bottles?|flasks?|decanters?|bottigli[ae]|bottigliett[ae])\b/u

/** It was only a part, or something else went in. */
const OF_PART =
  /\b(?:half|some of|a bit of|a little of|part of|sample|rest|leftover|meta|un po|parte|water|sugar|syrup|spoon|zucchero|acqua)\b/u

const COUNT: readonly (readonly [RegExp, number])[] = [
  [/\b(?:two|due|couple)\b/u, 2],
  [/\b(?:three|tre)\b/u, 3],
  [/\b(?:four|quattro)\b/u, 4],
  [/\b(?:five|cinque)\b/u, 5],
  [/\b(?:six|sei)\b/u, 6],
  [/\b7\b|\bseven\b/u, 7],
  [/\b8\b|\beight\b/u, 8],
]

const SMALL = /\b(?:small|little|tiny|wee|mini|piccol[aeio]|bottigliett[ae])\b/u
const LARGE = /\b(?:big|large|grand[ei])\b/u

/** What an example says of bottles that have no size yet: so many as were told, and as large as such bottles are, ml. */
function sampleOf(words: string, spiritMl: number): string {
  const count = countIn(words)
  const isOfSpirit = /\b(?:gin|vodka|rum|whisk(?:e)?y|brandy|grappa|spirit) bottle/u.test(words)
  const ml = /\b(?:wine bottle|da vino|di vino)/u.test(words)
    ? WINE_ML
    : isOfSpirit
      ? spiritMl
      : SMALL.test(words)
        ? SMALL_ML
        : LARGE.test(words)
          ? LARGE_ML
          : USUAL_ML
  return `${count} x ${ml} ml`
}

// Common practice, no source: bottles as they are sold.
const [SMALL_ML, USUAL_ML, LARGE_ML, WINE_ML] = [250, 500, 1000, 750]

/** Past its straining, and in no bottles yet. */
const WAITING: ReadonlySet<TalkJar['stage']> = new Set(['strained', 'sweetened', 'resting'])

const isWaiting = ({ stage, told }: TalkJar): boolean =>
  WAITING.has(stage) || (stage === 'ready' && told().every(({ kind }) => kind !== 'bottled'))

/** It is told to be in bottles of which nobody said the size: that is asked, with the jar; null where something else is told. */
export function bottledUnsized(sentence: Sentence, { call: last }: Remembered): TalkReading | null {
  const { typed, bits, jars, has, spiritBottleMl } = sentence
  if (!BOTTLE.test(typed.text)) return null
  if (has('asking', 'denial', 'hypothesis', 'wish') || typed.text.includes('?')) return null
  if (bits.some(({ kind }) => !/^(?:plant|jar|spirit|date|bottles|bare)$/.test(kind))) return null
  if (bits.some(({ kind, text }) => kind === 'bottles' && /\d\s*(?:ml|cl|l|oz)/.test(text))) return null
  const words = wordsAlone(typed)
  if (
    (!FILLED.test(words) && !FILLS.test(words)) ||
    OF_PART.test(words) ||
    unknownName(sentence, 'jar bottle') !== null
  )
    return null
  const running = runningAmong(jars)
  const named = jarsNamed(bits, running).map(({ jar }) => jar)
  const spoken = jarCalled(last?.options.jar, running)
  const meant = (named.length > 0 ? named : spoken === undefined ? running : [spoken]).filter(isWaiting)
  const [jar, another] = meant
  if (jar === undefined || another !== undefined) return null
  const day = bits.find(({ kind }) => kind === 'date')
  const call: CallRead = {
    command: 'jar bottle',
    options: { jar: jar.name, ...(day !== undefined && day.text !== 'today' && { when: day.text }) },
  }
  return lackingSize(call, sampleOf(words, spiritBottleMl))
}

/** How many bottles and how large is asked, by an example. */
const lackingSize = (call: CallRead, sample: string): TalkReading => ({
  kind: 'question',
  call,
  about: { kind: 'lacks', option: 'bottles', sample },
  choices: [],
  leftOut: [],
})

const COUNT_WORD = '(?:an?|another|one|two|three|four|five|six|un[ao]?|due|tre|quattro|cinque|sei|\\d+)'
const KIND =
  '(?:very|quite|small|little|tiny|wee|mini|big|large|odd|old|empty|clean|nice|wine|gin|vodka|rum|whisky|whiskey|brandy|grappa|spirit|piccol[aeio]|grand[ei]|vecchi[ae])'

/** `Three small ones`, `it filled an old wine bottle`. */
const COUNTED_ONLY = new RegExp(
  `^(?:(?:it|was|they|were|in|into|just|only|no|sorry|actually|i|we|ve|filled|used|got|made|to|ho|abbiamo|riempito|era|erano) )*${COUNT_WORD}(?: ${KIND})* (?:ones?|bottles?|flasks?|bottigli[ae]|bottigliett[ae])(?: (?:piccol[aeio]|grand[ei]|da vino|di vino|small))?$|^${COUNT_WORD} (?:small|little|tiny|big|large|piccol[aeio])(?: ones?)?$`,
  'u',
)

/** So large as such bottles are, which is said. */
const taken = ({ command, options }: CallRead, words: string, spiritMl: number): TalkReading => {
  const bottles = sampleOf(words, spiritMl)
  const kind = SIZED.exec(words)?.groups?.kind ?? (/(?:da|di) vino/u.test(words) ? 'wine' : undefined)
  const size = kind ?? (SMALL.test(words) ? 'small' : 'large')
  return {
    kind: 'call',
    call: { command, options: { ...options, bottles } },
    does: 'record',
    leftOut: [],
    vessels: [{ name: `${size} bottle`, ml: Number(/x (\d+)/.exec(bottles)![1]) }],
  }
}

const SIZED = /\b(?<kind>wine|gin|vodka|rum|whisk(?:e)?y|brandy|grappa|spirit) bottle|\b(?:da|di) vino\b/u

/** What was written down as bottles. */
const lotsIn = (bottles: string) => unlessRefused(() => parseBottles(bottles)) ?? []

/** How many are told. */
const countIn = (words: string): number =>
  COUNT.find(([said]) => said.test(words))?.[1] ?? (Number(/\d+/.exec(words)?.[0]) || 1)

/** `It was four bottles`, behind bottles that were written down: as large as they were, where so many go into as much. */
function countRighted(words: string, step: CallRead, jar: string): TalkReading | null {
  const [lot, another] = lotsIn(step.options.bottles ?? '')
  const count = countIn(words)
  if (lot === undefined || lot.count === null || another !== undefined) return null
  const call: CallRead = { command: 'jar correct', options: { jar } }
  if (count <= lot.count) {
    const bottles = `${count} x ${lot.volumeMl} ml`
    return { kind: 'call', call: withOption(call, 'bottles', bottles), does: 'record', leftOut: [] }
  }
  const filledMl = lot.count * lot.volumeMl
  const fits = SIZES_ML.find((ml) => ml * count <= filledMl) ?? SMALL_ML
  return lackingSize(call, `${count} x ${fits} ml`)
}

/** Sizes as bottles are sold, ml. Common practice, no source. */
const SIZES_ML = [1000, 750, 700, 500, 350, 330, 250, 200, 100] as const

/** `Three small ones`, where the bottles are asked for or were written down just now: as large as such bottles are, or how large is asked. */
export function sizeStillAsked(sentence: Sentence, { question, step, answersSince }: Remembered): TalkReading | null {
  const words = wordsAlone(sentence.typed).replaceAll(/['’]/gu, ' ')
  if (words.length > 60 || !COUNTED_ONLY.test(words)) return null
  const isSized = SMALL.test(words) || LARGE.test(words) || SIZED.test(words)
  const ask = (call: CallRead): TalkReading =>
    isSized ? taken(call, words, sentence.spiritBottleMl) : lackingSize(call, sampleOf(words, sentence.spiritBottleMl))
  if (question?.about.kind === 'lacks' && question.about.option === 'bottles') return ask(question.call)
  if (question !== null || step?.command !== 'jar bottle' || answersSince > 0 || step.options.jar === undefined)
    return null
  const jar = sentence.jars.find(({ id }) => `#${id}` === step.options.jar)?.name ?? step.options.jar
  if (isSized) return taken({ command: 'jar correct', options: { jar } }, words, sentence.spiritBottleMl)
  return sentence.has('gave_away', 'opened') || /^(?:an?|another)\b/.test(words) ? null : countRighted(words, step, jar)
}
