import type { OverCeiling } from '../../botanical/limits/ceilings.ts'
import { once } from '../../once.ts'
import { strengthAt20 } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { plantsPutIn } from '../entry/plants-put-in.ts'
import { contentsOf } from '../state/contents.ts'
import type { JarState } from '../state/jar-state.ts'
import { type StandingTrouble, standingTroubles } from '../state/standing-troubles.ts'
import { type NotKeeping, notKeeping } from './jar-keeping.ts'
import { driedSpirit, poisonNamedIn, refusedPlantIn, refusedSpiritIn, unknownIn } from './judge-words.ts'
import { limitsPassed } from './limits-passed.ts'
import { type SpiritToAdd, spiritToAdd, withSpirit } from './spirit-to-add.ts'
import { type WeakLowAcid, weakLowAcidIn } from './weak-low-acid.ts'

/** A jar that holds more of something than is safe. */
export interface OverInJar {
  /** The worst first. */
  readonly over: readonly OverCeiling[]
  /** The spirit that brings it within its limits; null where none does. */
  readonly add: SpiritToAdd | null
}

/** What a jar holds too much of; null where every limit is kept. */
function overInJar(story: JarState): OverInJar | null {
  const over = limitsPassed(story)
  if (over.length === 0) return null
  const isWithin = (add: SpiritToAdd): boolean => limitsPassed(withSpirit(story, add)).length === 0
  return { over, add: spiritToAdd(story, contentsOf(story).outcome.volumeMl.value, isWithin) }
}

/** What is wrong with a jar by what is known today. */
export type Danger =
  /** As it was typed, or named in the entry. */
  | { readonly kind: 'refused_plant' | 'refused_spirit' | 'unknown_plant'; readonly typed: string }
  | ({ readonly kind: 'over_ceiling' } & OverInJar)
  | ({ readonly kind: 'ferments' | 'undecided' } & Omit<NotKeeping, 'keeping'>)
  | ({ readonly kind: 'weak_low_acid' } & WeakLowAcid)
  /** What its maker told of it: it is to go, not to be drunk as it is, or a question of it is open. */
  | { readonly kind: ToldKind; readonly trouble: StandingTrouble }

type ToldKind = 'to_throw_away' | 'not_yet' | 'in_question'

export type DangerKind = Danger['kind']

/** Entries keep what was typed; corrections replace it option by option. */
const typedIn = ({ happened }: JarState, option: string): readonly string[] =>
  happened.flatMap((entry) =>
    entry.kind === 'started' || entry.kind === 'added'
      ? entry.typed.flatMap(([name, text]) => (name === option ? [text] : []))
      : [],
  )

/** A file edited by hand may give a plant of the catalogue another name, so its names are judged as well. */
const namesIn = ({ happened }: JarState, isCatalogued: boolean): readonly string[] =>
  happened.flatMap(plantsPutIn).flatMap(({ id, name }) => ((id !== null) === isCatalogued ? [name] : []))

const firstOf = (texts: readonly string[], judge: (text: string) => string | null): string | null => {
  for (const text of texts) {
    const found = judge(text)
    if (found !== null) return found
  }
  return null
}

const driedIn = ({ happened }: JarState): string | null =>
  happened
    .flatMap((entry) => (entry.kind === 'started' || entry.kind === 'added' ? valuesOf(entry.spirits) : []))
    .map((portion) => driedSpirit(strengthAt20(portion)))
    .find((each) => each !== null) ?? null

/** Options of what goes in beside plants. */
const BESIDE = ['spirit', 'water', 'sugar'] as const

/** A plant is judged by its name first, which is shorter than what was typed. */
function poisons(story: JarState): readonly Danger[] {
  const names = namesIn(story, false)
  const plant =
    firstOf([...names, ...namesIn(story, true), ...typedIn(story, 'of')], refusedPlantIn) ??
    firstOf(
      BESIDE.flatMap((option) => typedIn(story, option)),
      poisonNamedIn,
    )
  const unknown = plant === null ? firstOf(names, unknownIn) : null
  const spirit = firstOf(typedIn(story, 'spirit'), refusedSpiritIn) ?? driedIn(story)
  return [
    ...(plant === null ? [] : [{ kind: 'refused_plant', typed: plant } as const]),
    ...(spirit === null ? [] : [{ kind: 'refused_spirit', typed: spirit } as const]),
    ...(unknown === null ? [] : [{ kind: 'unknown_plant', typed: unknown } as const]),
  ]
}

/**
 * What is wrong with a jar as its entries tell it, judged by today's lists and limits, the worst first; empty where nothing
 * is. Of what is thrown away nothing is said, of what is drunk up only what nobody may have drunk.
 */
export const judgeJar = once((story: JarState): readonly Danger[] => {
  const { ended } = story
  if (ended?.kind === 'discarded') return []
  const poisonous = poisons(story)
  if (ended !== null) return poisonous
  const over = overInJar(story)
  const weak = notKeeping(story)
  const lowAcid = weakLowAcidIn(story)
  const told = toldOf(story)
  const isOpen = told.some(({ kind }) => kind === 'in_question')
  return [
    ...poisonous,
    ...(isOpen ? [] : told),
    ...(over === null ? [] : [{ kind: 'over_ceiling', ...over } as const]),
    ...(weak?.keeping === 'ferments' ? [dangerOf(weak)] : []),
    ...(lowAcid === null ? [] : [{ kind: 'weak_low_acid', ...lowAcid } as const]),
    ...(isOpen ? told : []),
    ...(weak?.keeping === 'undecided' ? [dangerOf(weak)] : []),
  ]
})

const TOLD: Readonly<Record<StandingTrouble['verdict'], ToldKind>> = {
  throw_away: 'to_throw_away',
  hold: 'not_yet',
  ask: 'in_question',
}

/** The worst that its maker told of it and has not taken back. */
const toldOf = (story: JarState): readonly Danger[] =>
  standingTroubles(story)
    .slice(0, 1)
    .map((trouble) => ({ kind: TOLD[trouble.verdict], trouble }))

const dangerOf = ({ keeping, ...weak }: NotKeeping): Danger => ({ kind: keeping, ...weak })

/** Whether it must not be drunk, bottled or given away as it is. */
export const isHeld = (dangers: readonly Danger[]): boolean => dangers.some(isHolding)

/** Whether it speaks against drinking it as it is: what nobody can tell, or is only asked about, is said and goes on. */
export const isHolding = ({ kind }: Pick<Danger, 'kind'>): boolean =>
  kind !== 'undecided' && kind !== 'in_question' && kind !== 'weak_low_acid'

/** Whether nothing of a jar is to be drunk, bottled or given away as it is. */
export const isHeldBack = (story: JarState): boolean => isHeld(judgeJar(story))

/** Whether nothing makes it fit to drink. */
export const isPoison = ({ kind }: Danger): boolean => kind === 'refused_plant' || kind === 'refused_spirit'
