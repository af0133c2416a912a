import type { Bit, BitKind, Sentence } from '../bits/bit.ts'
import type { Frame } from './frame.ts'
import { fills } from './slots.ts'

/** A frame tried on a sentence. */
export interface FrameTried {
  readonly frame: Frame
  readonly score: number
  readonly options: Readonly<Record<string, string>>
  readonly used: readonly Bit[]
  readonly lacks: readonly string[]
  /** Where an option may be one of several. */
  readonly open: { readonly option: string; readonly choices: readonly string[] } | null
  /** Amounts that nothing took. */
  readonly unused: readonly Bit[]
}

const NUMBERS = new Set<BitKind>([
  'volume',
  'mass',
  'strength',
  'sweetness',
  'bare',
  'negative',
  'bottles',
  'gravity',
  'rating',
  'temperature',
])

const PER_BIT = 1.3
const PER_LACK = 2
const PER_NUMBER_LEFT = 1.5
const PER_THING_LEFT = 0.8
/** For an amount of something that a frame takes no notice of: whoever tells it wants it used. */
const PER_IGNORED = 1.2
/** Against recording what is asked. */
const ASKED = 1
/** Against a jar where there is none. */
const JARLESS = 1.2

/** A score of what a frame uses, lacks and leaves; null where what it needs said was not. */
export function tryFrame(frame: Frame, sentence: Sentence): FrameTried | null {
  if (frame.wants !== undefined && !sentence.has(...frame.wants)) return null
  if (frame.bars !== undefined && sentence.has(...frame.bars)) return null
  if (sentence.bits.some(({ kind }) => frame.barsThings?.includes(kind) === true)) return null
  // `How long do plums last`, where no jar is of them, is asked of no jar.
  if (frame.command === 'keeping' && !sentence.has('own_jar') && sentence.bits.some(({ kind }) => kind === 'plant'))
    return null
  const options: Record<string, string> = {}
  const used = new Set<Bit>()
  const lacks: string[] = []
  let open: FrameTried['open'] = null
  let assumed = 0
  const aside = new Set<Bit>()
  for (const { option, takes, needed, neededWith, unless, isAside } of frame.slots) {
    const filled = unless !== undefined && unless in options ? null : fills[takes](sentence, frame.command)
    const isFresh = filled !== null && (filled.bits.length === 0 || filled.bits.some((bit) => !used.has(bit)))
    if (filled !== null && filled.choices !== undefined) {
      open ??= { option, choices: filled.choices }
      for (const bit of filled.bits) used.add(bit)
    } else if (filled !== null && isFresh) {
      options[option] = filled.text
      for (const bit of filled.bits) (isAside ? aside : used).add(bit)
      if (filled.bits.length === 0 && filled.isAssumed !== true) assumed++
    } else if (needed === true || (neededWith !== undefined && sentence.has(neededWith))) lacks.push(option)
  }
  const ignored = new Set(frame.ignores ?? [])
  const left = sentence.bits.filter((bit) => !used.has(bit) && bit.role !== 'gone' && bit.role !== 'left_out')
  const isOfIgnored = ({ role }: Bit): boolean =>
    (role === 'of_plant' && ignored.has('plant')) || (role === 'of_water' && ignored.has('water'))
  const unused = left.filter(
    (bit) =>
      NUMBERS.has(bit.kind) &&
      !ignored.has(bit.kind) &&
      (bit.role !== 'price' || frame.command === 'cost') &&
      !isOfIgnored(bit),
  )
  const ignoredAmounts = left
    .filter(
      ({ kind, role, with: place }) =>
        (kind === 'mass' || kind === 'bare' || kind === 'volume' || kind === 'bottles') &&
        (role === 'of_plant' || role === 'of_spirit') &&
        place !== undefined &&
        ignored.size > 0,
    )
    .filter((bit) => !unused.includes(bit))
  // How strong a liquid is has nothing to do with what lies in it.
  const isOfStrength = (frame.cues.how_strong ?? 0) > 0 && sentence.has('how_strong')
  const things = left.filter(({ kind }) => !NUMBERS.has(kind) && !ignored.has(kind) && kind !== 'date')
  const cues = Object.entries(frame.cues).reduce(
    (sum, [cue, weight]) => sum + (sentence.has(cue as keyof typeof frame.cues) ? (weight ?? 0) : 0),
    frame.base ?? 0,
  )
  // Nobody who has no jar shakes one.
  const jarless =
    sentence.jars.length === 0 &&
    frame.command.startsWith('jar ') &&
    frame.command !== 'jar start' &&
    frame.command !== 'jar list'
      ? JARLESS
      : 0
  const asked = frame.does === 'record' && sentence.has('asking') ? ASKED : 0
  const score =
    cues -
    asked -
    jarless +
    PER_BIT * Math.min(6, used.size) +
    0.5 * assumed -
    PER_LACK * lacks.length -
    (open === null ? 0 : 0.2) -
    PER_NUMBER_LEFT * unused.length -
    (isOfStrength ? 0 : PER_IGNORED * ignoredAmounts.length) -
    PER_THING_LEFT * things.length
  return { frame, score, options, used: [...used, ...aside], lacks, open, unused }
}
