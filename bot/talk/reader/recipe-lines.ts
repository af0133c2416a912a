import type { Sentence, Surroundings } from '../bits/bit.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { DEEDS } from '../lexicon/lexicon.ts'

/** What a line of a pasted recipe is: a name, a thing that goes in, or what is to be done. */
type Line =
  | { readonly kind: 'title' }
  | { readonly kind: 'thing'; readonly hasPlant: boolean; readonly hasSpirit: boolean }
  | { readonly kind: 'step' }

const MOST_TITLE_WORDS = 6
const MOST_WORDS = 16
const LEAST_LINES = 3
const MOST_LINES = 30

/** What a line of a list begins with. */
export const BULLET = /^\s*(?:[-–—*•·▪◦‣+]\s*|\d{1,2}[.)]\s+)(?=\S)/u

/** How a step of a recipe begins. */
export const STEP =
  /^(?:then |and then |now |after that |finally |poi |infine )?(?:leave|let|put|steep|infuse|macerate|store|keep|wait|stir|mix|shake|strain|filter|bottle|pour|peel|zest|prick|crush|chop|slice|wash|add|cover|seal|close|soak|rest|freeze|sweeten|dissolve|heat|cool|drink|serve|age|mature|place|combine|cut|halve|remove|rinse|enjoy|lascia|lasciare|metti|mettere|filtra|filtrare|mescola|mescolare|scuoti|scuotere|aspetta|aspettare|sbuccia|sbucciare|imbottiglia|imbottigliare|aggiungi|aggiungere|chiudi|chiudere|conserva|conservare)\b/iu

/** An amount that nobody measures. */
const VAGUE =
  /\b(?:a bit|some|a little|a few|a handful|a pinch|a dash|a splash|a drop|a mug|mugs?|to taste|(?:zest|peel|rind|juice) of|la (?:scorza|buccia) di|un po|qualche|un pizzico|una manciata|una tazza|q b)\b/iu

/** What a recipe is called by, where it names no plant. */
const NAMES_DRINK =
  /\b(?:recipe|ricetta|liqueurs?|liquor[ei]|cordial|ratafia|schnapps|bounce|nocino|limoncello|brandy|gin|vodka|rum|bitters)\b/i

/** A change of what was answered before, no line of a recipe. */
const CHANGE = [
  'instead',
  'without',
  'not_so',
  'again',
  'drier',
  'sweeter',
  'stronger',
  'weaker',
  'asking',
  'how_much',
  'how_long',
] as const

const NUMBERED = new Set(['volume', 'mass', 'bare', 'bottles', 'strength', 'span'])

const wordsOf = ({ typed }: Sentence): number => typed.tokens.filter(({ kind }) => kind === 'word').length

const isPoured = ({ bits }: Sentence): boolean =>
  bits.some(({ kind, role }) => kind === 'volume' || (kind === 'bottles' && role === 'of_spirit'))

function lineIn(text: string, at: number, surroundings: Surroundings): Line | null {
  const typed = text.replace(BULLET, '').trim()
  if (typed === '' || /^[/#]/.test(typed) || typed.includes('?')) return null
  if (STEP.test(typed)) return at === 0 ? null : { kind: 'step' }
  const sentence = sentenceIn(typed, surroundings)
  const { bits, has } = sentence
  if (wordsOf(sentence) > MOST_WORDS || has(...DEEDS, ...CHANGE)) return null
  const isNumbered = bits.some(({ kind }) => NUMBERED.has(kind))
  const hasPlant = bits.some(({ kind }) => kind === 'plant')
  if (at === 0 && !isNumbered && wordsOf(sentence) <= MOST_TITLE_WORDS)
    return hasPlant || NAMES_DRINK.test(typed) || typed.endsWith(':') ? { kind: 'title' } : null
  if (!isNumbered && !VAGUE.test(typed)) return null
  const hasSpirit =
    bits.some(({ kind }) => kind === 'spirit') || bits.some(({ kind, value }) => kind === 'strength' && value >= 35)
  const isThing =
    hasPlant || hasSpirit || bits.some(({ kind }) => kind === 'sugar' || kind === 'water' || kind === 'span')
  // A plant in a spirit that is poured is a call of its own.
  if (!isThing || (hasPlant && hasSpirit && isPoured(sentence))) return null
  return { kind: 'thing', hasPlant, hasSpirit }
}

/** Whether the first line is the name of a recipe: no amount is in it, and whatever spirit it names is none that goes in. */
export const isTitle = (line: string, surroundings: Surroundings): boolean =>
  lineIn(line, 0, surroundings)?.kind === 'title'

/** Whether a line may be the first of a recipe, so that those behind it are worth waiting for. */
export const mayBeginRecipe = (line: string, surroundings: Surroundings): boolean =>
  lineIn(line, 0, surroundings) !== null

/** How many of the lines, from the first on, are one recipe that was pasted; 0 where each stands by itself. */
export function recipeLines(lines: readonly string[], surroundings: Surroundings): number {
  const read: Line[] = []
  for (const [at, line] of lines.slice(0, MOST_LINES).entries()) {
    const found = lineIn(line, at, surroundings)
    if (found === null) break
    const things = read.filter(({ kind }) => kind === 'thing').length
    if (found.kind === 'step' && things < 2) break
    read.push(found)
  }
  const things = read.flatMap((each) => (each.kind === 'thing' ? [each] : []))
  const isWhole =
    things.some(({ hasPlant }) => hasPlant) && things.some(({ hasSpirit, hasPlant }) => hasSpirit && !hasPlant)
  return isWhole && read.length >= LEAST_LINES ? read.length : 0
}

/** The lines of a pasted recipe of which nothing was taken: what they name has no amount, or they only tell what to do. */
export function linesUnread(text: string, surroundings: Surroundings): readonly string[] {
  const lines = text.split(/\n+/).map((line) => line.trim())
  if (lines.length < LEAST_LINES) return []
  return lines.filter((line, at) => {
    if (line === '' || (at === 0 && !/\d/.test(line))) return false
    const { bits } = sentenceIn(line, surroundings)
    return bits.every(({ kind, with: place }) => (kind === 'sugar' || kind === 'water') && place === undefined)
  })
}
