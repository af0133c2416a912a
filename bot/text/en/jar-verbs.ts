import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'

const NONE: ReadonlySet<string> = new Set()

/** Ends as several things do: `sloes`, `leaves`, but not `hibiscus` or `cassis`. */
const SEVERAL = /s$(?<!(?:us|is|ss)$)|^kiwis$/iu

/** Whether a jar is named after several things, as `sloes` are, so that its verb is theirs. */
function isSeveral(name: string): boolean {
  const plant = name.replace(/ \d+$/u, '')
  if (!SEVERAL.test(plant)) return false
  const { tokens } = saidText(plant)
  return plantSaid(tokens, 0, NONE)?.next === tokens.length
}

type Named = string | readonly string[]

const chosen = (names: Named, one: string, several: string): string => {
  const [first = '', ...others] = typeof names === 'string' ? [names] : names
  return others.length > 0 || isSeveral(first) ? several : one
}

/** `lemon is`, `sloes are`, `lemon and plum are`. */
export const isAre = (names: Named): string => chosen(names, 'is', 'are')

export const isnt = (name: string): string => chosen(name, 'isn’t', 'aren’t')

export const wasWere = (name: string): string => chosen(name, 'was', 'were')

export const wasnt = (name: string): string => chosen(name, 'wasn’t', 'weren’t')

export const hasHave = (names: Named): string => chosen(names, 'has', 'have')

/** `Strain it`, `strain them`: where the sentence names the jar just before. */
export const itThem = (names: Named): string => chosen(names, 'it', 'them')
