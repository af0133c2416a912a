import { nearRefusedSaid } from '../../../core/botanical/refuse/near-said.ts'
import { isRefusedWord } from '../../../core/botanical/refuse/refused-word.ts'
import { classify } from '../../../core/botanical/spirit/classify.ts'
import { anyUnitAt } from '../../../core/quantity/read/unit-at.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { neighboursSwapped } from '../../../core/spelling/neighbours-swapped.ts'
import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { wordsOfSymptoms } from '../../talk/handbook/find-symptom-told.ts'
import { indexOf } from '../../talk/handbook/handbook-index.ts'
import { otherMatters } from '../../talk/handbook/other-matters.ts'
import { termOf, wordsAlike } from '../../talk/handbook/same-words.ts'
import { smallWords } from '../../talk/handbook/small-words.ts'
import type { Lexicon } from '../../talk/lexicon/lexicon.ts'
import { isWordOf, isWordOfCore } from '../../talk/lexicon/respell.ts'
import { tellsOfHarm } from '../../talk/reader/danger-asked.ts'
import type { Handbook } from '../../text/messages/handbook.ts'

/** Shorter words are too often others with their letters in another order. */
const LEAST_LETTERS = 5

export interface Vocabulary {
  readonly lexicons: readonly Lexicon[]
  readonly handbook: Handbook
  /** The words of the jars' names. */
  readonly names: ReadonlySet<string>
}

/**
 * Words of every day, English and Italian, that two swapped letters would make a word that is understood: `saliva` is no `salvia`,
 * `soles` are no sloes. Found with word lists of both languages, chosen from memory.
 */
const EVERYDAY: ReadonlySet<string> = new Set(
  (
    'agile alley altar ample angle angles aptly arise assured assuredly beats bombast boost boosts burnt cases center centers coals crabbed ' +
    'crabby crane cranes crave craves crudely cured deeds dents direr elite elites ethnic fiend fiends filed forms framer fries garter ' +
    'gores graded hears hooped hoops hurst lampoon launder laundered laundering loess louts malaise maltese mantel marina marinas martian ' +
    'mauls meals metre minuet mitre moors morose morse moses motocross nuder olivets opted opting orate pairs parties parting partings partly ' +
    'patsy peeps peers peseta pinata pious plies poets potions prefect prism proceed proto quail rails rappers repost roach roaches roost ' +
    'roosts rotas rotate rotated rotating sales saliva scared scarp scooby seams seats seems serie sibling siblings sings slated slats slave ' +
    'slaves sliver slivers soles spears staring steels strait straits strata stroy succeed suing toady tuple untied voila voile wiled woodsy wroth ' +
    'acustica allegria arido asina brodo calvo camion canarie chinato colse comparto forza forze fraine greta magno malato malata malati ' +
    'manico marciato mostre nobel notre orata ostile partendo partita pastoso pesato pesata pesate pesati petti pluto potra potro prefetto ' +
    'premesso presa prese prete radere rosato rosata rotaia salvato salvata santino semper sguaiato soldi spinse spora spore sporse storse ' +
    'straniero striato sugoso sugosa sapro sappro tigre torvo trono trota vinse'
  ).split(' '),
)

/** Times and places that no list of words has. */
const TIMES_AND_PLACES: ReadonlySet<string> = new Set(
  'fortnight weekend evening afternoon morning stairs staircase cupboard cellar shelf windowsill pomeriggio mattina settimana scaffale cantina'.split(
    ' ',
  ),
)

/** From so many letters on the beginning of a word is enough to know it, and to take another word for it. */
const LEAST_STEM = { known: 3, meant: 6 } as const

/** `Pálinka`, `schnapps`, `reposado`: a drink, or what is said of one. */
const isSaidOfDrinks = (word: string): boolean => classify(plainWords(word)).every((kind) => kind !== 'unknown')

const isKnown = (word: string, { lexicons, handbook, names }: Vocabulary, leastStem: number): boolean =>
  names.has(word) ||
  lexicons.some((lexicon) => isWordOf(word, lexicon, leastStem)) ||
  isWordOfCore(word) ||
  isSaidOfDrinks(word) ||
  anyUnitAt(saidText(word), 0) !== null ||
  indexOf(handbook).words.has(word) ||
  wordsOfSymptoms().has(word) ||
  smallWords.has(word) ||
  wordsAlike.has(word) ||
  TIMES_AND_PLACES.has(word) ||
  otherMatters.has(termOf(word)) ||
  isRefusedWord(word) ||
  tellsOfHarm(word)

/** The one word of all that this is with two neighbours swapped; null where it is a word itself, or where there is none, or several. */
function meantBy(word: string, vocabulary: Vocabulary): string | null {
  if (word.length < LEAST_LETTERS || EVERYDAY.has(word) || isKnown(word, vocabulary, LEAST_STEM.known)) return null
  const found = neighboursSwapped(word).filter((each) => isKnown(each, vocabulary, LEAST_STEM.meant))
  const [meant] = found
  if (meant === undefined || found.length > 1) return null
  // What may be a slip of something that is refused is asked about.
  return isRefusedWord(meant) || nearRefusedSaid(word) === null ? meant : null
}

/**
 * A sentence with two letters put right in each word that nothing knows, where that makes a word that is known: `leomns`, `satruday`.
 * All else stays as it was typed.
 */
export function swapsMended(text: string, vocabulary: Vocabulary): string {
  const typed = saidText(text)
  let [mended, at] = ['', 0]
  for (const { kind, text: word, from, to } of typed.tokens) {
    const meant = kind === 'word' && to - from === word.length ? meantBy(word, vocabulary) : null
    if (meant === null) continue
    mended += text.slice(at, from) + meant
    at = to
  }
  return mended + text.slice(at)
}
