import { plantSaid } from '../../botanical/find/plant-said.ts'
import { saidText } from '../../quantity/said/said-text.ts'
import { nameWords } from '../../spelling/normalise-name.ts'
import { jarStateOf, type KeptJar } from './jar-state.ts'
import { plantKey } from './later-plants.ts'

/** What stands around a name in speech: `the orange jar`, `my damson one`. */
const AROUND = /^(?:the|my|our|that)\s+|\s+(?:jar|one|batch)$/gi

const NONE: ReadonlySet<string> = new Set()

interface Spoken {
  readonly words: readonly string[]
  /** Ids of the catalogue. */
  readonly plantIds: readonly string[]
}

function spokenIn(typed: string): Spoken {
  const bare = typed.trim().replaceAll(AROUND, '').trim()
  const { tokens } = saidText(bare)
  const plant = plantSaid(tokens, 0, NONE)
  return { words: nameWords(bare), plantIds: plant?.next === tokens.length ? plant.ids : [] }
}

function hasPlant({ entries }: KeptJar, { words, plantIds }: Spoken): boolean {
  const story = jarStateOf(entries)
  const went = story?.happened.flatMap((entry) =>
    entry.kind === 'started' || entry.kind === 'added' ? entry.plants : [],
  )
  return went?.some((plant) => plantIds.includes(plantKey(plant)) || isNamed(plant.name, words)) === true
}

const isNamed = (name: string, words: readonly string[]): boolean => {
  const own = nameWords(name)
  return words.length > 0 && words.every((word) => own.includes(word))
}

/**
 * Those of the jars that somebody may mean who does not say how a jar is called: words of a name go before what is in it, by its
 * everyday word. `orange` is `sweet orange peel`, and a jar called `midwinter` with oranges in it.
 */
export function jarsSpokenOf<Jar extends KeptJar>(typed: string, jars: readonly Jar[]): readonly Jar[] {
  const spoken = spokenIn(typed)
  const named = jars.filter(({ entries }) => isNamed(jarStateOf(entries)?.name ?? '', spoken.words))
  return named.length > 0 ? named : jars.filter((jar) => hasPlant(jar, spoken))
}
