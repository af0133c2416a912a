import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { isOver, jarsOf, runningAmong } from '../bits/jars-of.ts'
import { placedNames, type Way } from '../bits/placed-name.ts'
import { unknownName } from '../bits/unknown-name.ts'
import { withoutNewName } from './new-name.ts'

/** The jar that a sentence means: its name, or those that it may be. */
export interface JarsMeant {
  readonly text: string | null
  readonly bits: readonly Bit[]
  readonly choices: readonly string[]
}

type Stage = TalkJar['stage']

/** Where a jar stands when a step can follow. */
const FITTING: Readonly<Record<string, readonly Stage[]>> = {
  syrup: ['strained', 'steeping', 'sweetened'],
  'jar shake': ['steeping'],
  'jar strain': ['steeping'],
  'jar sweeten': ['strained', 'sweetened'],
  'jar filter': ['strained', 'sweetened', 'resting', 'ready'],
  'jar bottle': ['strained', 'sweetened', 'resting', 'ready'],
  'jar open': ['resting', 'ready'],
  bottles: ['resting', 'ready'],
  'jar take-out': ['steeping'],
  'jar split': ['steeping', 'strained', 'sweetened'],
  'jar add': ['steeping', 'strained', 'sweetened'],
  again: ['emptied', 'ready', 'resting', 'sweetened', 'discarded'],
}

/** Deeds that tell of their jar by what something goes into, or comes out of. */
const WAYS: Readonly<Record<string, Way>> = {
  'jar add': 'into',
  'jar sweeten': 'into',
  'jar strain': 'out_of',
  'jar take-out': 'out_of',
  'jar split': 'out_of',
}

/** Deeds that are told of the jar they name, and never of another. */
const NAMED_ONLY: ReadonlySet<string> = new Set([
  ...['jar shake', 'jar strain', 'jar sweeten', 'jar filter', 'jar bottle', 'jar taste', 'jar add', 'jar open'],
  ...['bottles', 'jar take-out', 'jar split', 'jar note'],
])

/** The jar that something goes into or comes out of, by its name: where no jar goes by it, the name as it was said. */
function placedJar(sentence: Sentence, command: string, fitting: readonly TalkJar[]): JarsMeant | null {
  const way = WAYS[command]
  const names = way === undefined ? [] : placedNames(sentence, way)
  const [first] = names
  if (first === undefined) return null
  const running = runningAmong(sentence.jars)
  const each = names.map((bit) => jarsOf(bit, running)).filter((all) => all.length > 0)
  const all = [...new Set(each.flat())]
  const inAll = all.filter((jar) => each.every((those) => those.includes(jar)))
  const meant = inAll.length > 0 ? inAll : all
  const able = meant.filter((jar) => fitting.includes(jar))
  const [only, another] = able.length > 0 ? able : meant
  if (only === undefined) return { text: first.text.toLowerCase(), bits: names, choices: [] }
  if (another === undefined) return { text: only.name, bits: names, choices: [] }
  return { text: null, bits: names, choices: (able.length > 0 ? able : meant).map(({ name }) => name) }
}

const MONTHS = 'january february march april may june july august september october november december'.split(' ')
const MESI = 'gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre'.split(' ')

/** 1 to 12; null where a word is no month. */
export function monthOf(word: string): number | null {
  const at = Math.max(MONTHS.indexOf(word), MESI.indexOf(word))
  return at === -1 ? null : at + 1
}

/** The jar that was begun in a month, by its name; the month itself where there is none, or more than one. */
export function ofMonth(word: string, jars: readonly TalkJar[]): string {
  const found = jars.filter(({ month }) => month === monthOf(word))
  return found.length === 1 ? found[0]!.name : word
}

/** `Another 50 g ginger`: of the jar that is called so, more of the same. */
function moreOfSame(bits: readonly Bit[], typed: Sentence['typed'], jars: readonly TalkJar[]): TalkJar | null {
  const isMore = typed.tokens.some(({ text }) => /^(?:another|more|extra|altr[oaie])$/.test(text))
  const [plant, another] = bits.filter(({ kind, role }) => kind === 'plant' && role !== 'left_out')
  if (!isMore || plant === undefined || another !== undefined) return null
  const [jar, second] = jarsOf(plant, jars)
  return jar === undefined || second !== undefined ? null : jar
}

/**
 * By name, by what is in it, by the month it was begun in; where nothing is said, the only one of which the step can follow. A plant
 * that no jar has is the name as it was said.
 */
export function jarsMeant(sentence: Sentence, command: string): JarsMeant {
  const { bits, typed, jars } = command === 'jar rename' ? withoutNewName(sentence) : sentence

  const stages = FITTING[command]
  const running = jars.filter((jar) => (command === 'again' ? true : !isOver(jar)))
  const fitting = stages === undefined ? running : running.filter(({ stage }) => stages.includes(stage))
  const placed = placedJar(sentence, command, fitting)
  if (placed !== null) return placed
  const byName = bits.find(({ kind }) => kind === 'jar')
  if (byName !== undefined) return { text: byName.text, bits: [byName], choices: [] }
  const plants = bits.filter(
    ({ kind, role, with: place }) =>
      kind === 'plant' && role !== 'left_out' && (place === undefined || command !== 'jar add'),
  )
  for (const plant of plants.length > 1 && command === 'jar add' ? plants.toReversed() : plants) {
    const all = jarsOf(plant, running)
    const able = all.filter((jar) => fitting.includes(jar))
    const meant = able.length > 0 ? able : all
    if (meant.length === 1) return { text: meant[0]!.name, bits: [plant], choices: [] }
    if (meant.length > 1) return { text: null, bits: [plant], choices: meant.map(({ name }) => name) }
  }
  const same = command === 'jar add' ? moreOfSame(bits, typed, running) : null
  if (same !== null) return { text: same.name, bits: [], choices: [] }
  const month = typed.tokens.map(({ text }) => monthOf(text)).find((at) => at !== null)
  const begun = month === undefined ? [] : running.filter((jar) => jar.month === month)
  if (begun.length === 1) return { text: begun[0]!.name, bits: [], choices: [] }
  const [plant] = plants
  if (plant !== undefined && command !== 'jar add')
    return { text: plant.text.toLowerCase(), bits: [plant], choices: [] }
  const unknown = NAMED_ONLY.has(command) && running.length > 0 ? unknownName(sentence, command) : null
  if (unknown !== null) return { text: unknown, bits: [], choices: [] }
  if (fitting.length === 1) return { text: fitting[0]!.name, bits: [], choices: [] }
  return { text: null, bits: [], choices: (fitting.length > 0 ? fitting : running).map(({ name }) => name) }
}
