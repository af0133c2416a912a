import { CUSTOMARY_MEASURES } from '../../../core/quantity/customary-bottles.ts'
import { numberWords } from '../../../core/quantity/read/number-words.ts'
import { SPIRIT_BOTTLE_ML, US_SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import type { VesselTaken } from '../frames/reading.ts'

/** How much of something there is, as parts of a vessel; by the words that say so. */
const SHARES: readonly (readonly [words: string, share: number])[] = [
  ['two[ -]thirds|2/3|⅔|due terzi', 2 / 3],
  ['three[ -]quarters|3/4|¾|tre quarti', 3 / 4],
  ['(?:a|one|1)[ -]third|1/3|⅓|un terzo', 1 / 3],
  ['(?:a|one|1)[ -]quarter|1/4|¼|un quarto', 1 / 4],
  ['(?:a )?half|1/2|½|mezz[oa]', 1 / 2],
]

export const SHARE = SHARES.map(([words]) => words).join('|')

/** The share that some words say. */
export const shareOf = (words: string): number | null =>
  SHARES.find(([each]) => new RegExp(`^(?:${each})$`, 'iu').test(words.trim()))?.[1] ?? null

/** Vessels are counted in words up to so many. */
const MOST_IN_WORDS = 6
const COUNTED = [...numberWords].flatMap(([word, count]) => (count > 1 && count <= MOST_IN_WORDS ? [word] : []))
const COUNT = `an?|one|the|un|uno|una|la|${COUNTED.join('|')}|\\d{1,2}`
const LESS =
  'nearly|almost|just under|just short of|not quite|a (?:bit|little) (?:less than|under)|quasi|poco meno di|scars[oa]'
const MORE = 'just over|a (?:bit|little) (?:more than|over)|slightly (?:more than|over)|poco piu di|poco più di'
const ABOUT = 'about|around|roughly|approximately|maybe|circa'
const BEHIND = [
  ['an?other half|a half|half|mezz[oa]', 0.5],
  ['a third|un terzo', 1 / 3],
  ['a quarter|un quarto', 0.25],
  [
    "a (?:wee |little |tiny )?(?:bit|little|drop|splash|dash)(?: more| extra| over)?|a bit|some|un po[’']?|un goccio",
    0.05,
  ],
] as const

const NAMES = [
  ...CUSTOMARY_MEASURES.map(([name]) => name.replace(/ /g, '[ -]')),
  'bottigli[ae] (?:da|di|del) vino',
  'tazzon[ei]',
  '(?:gin|vodka|rum|brandy|whiske?y|spirits?)[ -]bottle',
  'bottles?',
  'bottigli[ae]',
].join('|')

const FILLS = '(?:ha )?(?:fill(?:s|ed)|riempi(?:e|va|to))'

const VESSEL = new RegExp(
  `(?<![\\p{L}\\d])(?:${FILLS}\\s+)?(?:(?<about>${LESS}|${MORE}|${ABOUT})\\s+)?(?:${FILLS}\\s+)?(?:(?<share>${SHARE})(?:\\s+(?:of|di))?\\s+)?(?:(?<count>${COUNT})\\s+)?` +
    `(?:full\\s+|big\\s+|large\\s+)?(?<name>${NAMES})(?:ful|s|fuls)?(?:\\s+full)?(?:\\s+(?:and|plus|e|\\+)\\s+(?<behind>${BEHIND.map(([words]) => words).join('|')}))?(?![\\p{L}\\d])`,
  'giu',
)

/** A vessel of a text: where it stands, what it comes to, ml, and what one of it was taken to hold. */
export interface VesselSaid {
  readonly from: number
  readonly to: number
  readonly ml: number
  /** A whole one. */
  readonly one: VesselTaken
  /** Only `a bottle`, of whatever kind. */
  readonly isPlain: boolean
}

/** As a spirit is sold in it. */
const OF_SPIRIT = /^(?:bottles?|bottigli[ae]|(?:gin|vodka|rum|brandy|whiske?y|spirits?)[ -]bottles?)$/i
const PLAIN = /^(?:bottles?|bottigli[ae])$/i

/** What a vessel is called in the answer, one of it. */
const called = (name: string): string =>
  /vino$/i.test(name)
    ? 'wine bottle'
    : name
        .toLowerCase()
        .replace(/-/g, ' ')
        .replace(/bottles$|^bottigli[ae]$/, 'bottle')
        .replace(/^tazzon[ei]$/, 'mug')

const holds = (name: string, isUs: boolean): number => {
  if (OF_SPIRIT.test(name)) return isUs ? US_SPIRIT_BOTTLE_ML : SPIRIT_BOTTLE_ML
  return CUSTOMARY_MEASURES.find(([each]) => each === called(name))![1]
}

const says = (words: string, text: string | undefined): boolean =>
  text !== undefined && new RegExp(`^(?:${words})$`, 'iu').test(text)

/** Nearly one, and a bit more than one: by so much of it; estimated. */
const NEARLY = 0.05

/** No finer than such a measure tells it, ml or g. */
export const roundly = (amount: number): number =>
  amount >= 500 ? 50 * Math.round(amount / 50) : 10 * Math.max(1, Math.round(amount / 10))

/** As it is typed: `950 ml`, `1.1 l`. */
export const written = (ml: number): string => (ml < 1000 ? `${ml} ml` : `${ml / 1000} l`)

function countOf(count: string | undefined): number {
  if (count === undefined) return 1
  return numberWords.get(count.toLowerCase()) ?? (/\d/.test(count) ? Number(count) : 1)
}

/** What is told by vessels: `nearly two wine bottles`, `three quarters of a jam jar`, `a mug and a half`. */
export function vesselsIn(text: string, isUs: boolean): readonly VesselSaid[] {
  return [...text.matchAll(VESSEL)].flatMap((match) => {
    const { about, share, count, name = '', behind } = match.groups ?? {}
    if (share === undefined && count === undefined) return []
    const ml = holds(name, isUs)
    const whole = share === undefined ? countOf(count) : (shareOf(share) ?? 1)
    const more = BEHIND.find(([words]) => says(words, behind))?.[1] ?? 0
    const nearly = says(LESS, about) ? -NEARLY : says(MORE, about) ? NEARLY : 0
    return [
      {
        from: match.index,
        to: match.index + match[0].length,
        ml: roundly((whole + more + nearly) * ml),
        one: { name: called(name), ml },
        isPlain: PLAIN.test(name),
      },
    ]
  })
}
