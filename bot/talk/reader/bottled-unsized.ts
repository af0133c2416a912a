import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { unknownName } from '../bits/unknown-name.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'

const BOTTLE = /bottle|bottigli|flask|decanter|caraf/i

/** `Poured it all back in the gin bottle`, `bottled it in whatever bottle I had`, `versato in una bottiglia piccola`. */
const FILLED =
  /^(?:(?:i|we|ive|weve|just|now|ok|so|and|then|ho|abbiamo|l ho|have|it s|its) )*(?:bottled|decanted|poured|tipped|funnelled|funneled|ladled|siphoned|transferred|put|got|gone|went|imbottigliat[oa]|versat[oa]|travasat[oa]|mess[oa])\b.{0,40}\b(?:in|into|nella|nelle|in una)\b(?: (?:a|an|one|two|three|four|some|the|my|our|that|those|whatever|any|old|small|little|tiny|big|large|odd|clean|empty|different|gin|vodka|rum|whisky|whiskey|brandy|grappa|spirit|wine|beer|swing|top|clip|nice|glass|una|un|due|tre|qualche|bottle|of|kind|sort)){0,5} (?:bottles?|flasks?|decanters?|carafes?|bottigli[ae]|bottigliett[ae]|caraff[ae])\b/u

/** It was only a part, or something else went in. */
const OF_PART =
  /\b(?:half|some of|a bit of|a little of|part of|sample|rest|leftover|meta|un po|parte|water|sugar|syrup|spoon|zucchero|acqua)\b/u

const COUNT: readonly (readonly [RegExp, number])[] = [
  [/\b(?:two|due|couple)\b/u, 2],
  [/\b(?:three|tre)\b/u, 3],
  [/\b(?:four|quattro)\b/u, 4],
  [/\b(?:five|cinque)\b/u, 5],
  [/\b(?:six|sei)\b/u, 6],
]

const SMALL = /\b(?:small|little|tiny|wee|mini|piccol[aeio]|bottigliett[ae])\b/u
const LARGE = /\b(?:big|large|grand[ei])\b/u

/** What an example says of bottles that have no size yet: so many as were told, and as large as such bottles are, ml. */
function sampleOf(words: string, spiritMl: number): string {
  const count = COUNT.find(([said]) => said.test(words))?.[1] ?? 1
  const isOfSpirit = /\b(?:gin|vodka|rum|whisk(?:e)?y|brandy|grappa|spirit) bottle/u.test(words)
  const ml = /\bwine bottle/u.test(words)
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

/** It is told to be in bottles of which nobody said the size: that is asked, with the jar; null where something else is told. */
export function bottledUnsized(sentence: Sentence, { call: last }: Remembered): TalkReading | null {
  const { typed, bits, jars, has, spiritBottleMl } = sentence
  if (!BOTTLE.test(typed.text)) return null
  if (has('asking', 'denial', 'hypothesis', 'wish') || typed.text.includes('?')) return null
  if (bits.some(({ kind }) => !/^(?:plant|jar|spirit|date|bottles|bare)$/.test(kind))) return null
  if (bits.some(({ kind, text }) => kind === 'bottles' && /\d\s*(?:ml|cl|l|oz)/.test(text))) return null
  const words = wordsAlone(typed)
  if (!FILLED.test(words) || OF_PART.test(words) || unknownName(sentence, 'jar bottle') !== null) return null
  const running = runningAmong(jars)
  const named = jarsNamed(bits, running).map(({ jar }) => jar)
  const spoken = jarCalled(last?.options.jar, running)
  const meant = (named.length > 0 ? named : spoken === undefined ? running : [spoken]).filter(({ stage }) =>
    WAITING.has(stage),
  )
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

const COUNTED_ONLY =
  /^(?:(?:it was |they were |in |into |just |only |no |sorry |actually )*)(?:an?|one|two|three|four|five|six|una?|due|tre|quattro|\d+)(?: (?:very |quite )?(?:small|little|tiny|wee|mini|big|large|odd|piccol[aeio]|grand[ei]))? (?:ones?|bottles?|flasks?|bottigli[ae]|bottigliett[ae])(?: (?:small|piccol[aeio]|grand[ei]))?$|^(?:an?|one|two|three|four|due|tre) (?:small|little|tiny|big|large|piccol[aeio])(?: ones?)?$/u

/** `Three small ones`, where the bottles are asked for or were written down just now: how large they are is asked. */
export function sizeStillAsked(sentence: Sentence, { question, step, answersSince }: Remembered): TalkReading | null {
  const words = wordsAlone(sentence.typed)
  if (words.length > 60 || !COUNTED_ONLY.test(words)) return null
  const sample = sampleOf(words, sentence.spiritBottleMl)
  if (question?.about.kind === 'lacks' && question.about.option === 'bottles') return lackingSize(question.call, sample)
  // `No, it was four bottles`: as large as they were.
  if (!SMALL.test(words) && !LARGE.test(words)) return null
  if (question !== null || step?.command !== 'jar bottle' || answersSince > 0 || step.options.jar === undefined)
    return null
  const jar = sentence.jars.find(({ id }) => `#${id}` === step.options.jar)?.name ?? step.options.jar
  return lackingSize({ command: 'jar correct', options: { jar } }, sample)
}
