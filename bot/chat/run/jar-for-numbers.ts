import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { isRefused } from '../../../core/domain-error.ts'
import { ingredientsTold } from '../../../core/jar/state/batch-facts.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { volumeTyped } from '../../../core/quantity/write/made-amounts.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import { kitchenOfJar } from '../../commands/jar/known/jar-kitchen.ts'
import { type Kitchen, unitsIn } from '../../text/messages/kitchen.ts'
import type { Message } from '../../text/words.ts'

/** A call in which the name of a jar stood for its numbers, and what is to be said of those. */
export interface JarRead {
  readonly call: Invocation
  readonly notes: readonly Message<'notes'>[]
  /** That of the jar, whose numbers they are. */
  readonly kitchen: Kitchen
}

/** What a jar has to say where a command takes no jar. */
interface Numbers {
  readonly amount: string
  /** What is drunk: as it is, or, before its syrup is in, as it was planned. */
  readonly drink: { readonly strength: string; readonly sweetness: string }
  readonly strength: string
  readonly plants: string
  readonly isSweet: boolean
}

const round = (value: number): string => String(Number(value.toPrecision(value < 100 ? 2 : 3)))

/** `cinnamon, Ceylon` as it is typed. */
export function nameTyped(id: string): string {
  const [noun = '', ...kinds] = botanicalById(id)
    .names.title.replace(/ \(.*?\)/, '')
    .split(', ')
  return [...kinds, noun].join(' ').toLowerCase()
}

const isMade = ({ sweetened, bottled, started }: JarState): boolean =>
  sweetened !== null || bottled !== null || started.targets === null

/** From here on its sugar is no mere trace of its fruit, g/L. */
const SWEET_GPERL = 10

function numbersOf(story: JarState): Numbers {
  const { outcome } = contentsOf(story)
  const { abvPercent, sugarGPerL, volumeMl } = outcome
  const { targets } = story.started
  const planned = isMade(story) ? null : targets
  const { plants } = ingredientsTold(story)
  return {
    amount: volumeTyped(
      { ...volumeMl, value: kitchenRounded(volumeMl.value).value },
      unitsIn(kitchenOfJar({}, story)).volume,
    ),
    strength: `${round(abvPercent.value)}%`,
    drink: {
      strength: `${round(planned?.abvPercent ?? abvPercent.value)}%`,
      sweetness: `${round(planned?.sugarGPerL ?? sugarGPerL.value)} g/L`,
    },
    plants: [...new Set(plants.map(({ id, name }) => (id === null ? name : nameTyped(id))))].join(' + '),
    isSweet: sugarGPerL.value >= SWEET_GPERL,
  }
}

type Texts = Readonly<Record<string, string>>

/** In which options a jar's numbers stand; null where the command can do nothing with them. */
const OPTIONS: Partial<Record<Path, (numbers: Numbers) => Texts | null>> = {
  label: ({ drink, plants }) => ({ ...drink, of: plants }),
  serving: ({ strength }) => ({ strength }),
  mix: ({ amount, strength, isSweet }) => (isSweet ? null : { spirit: amount, strength }),
  blend: ({ amount, strength, drink: { sweetness }, isSweet }) => ({
    parts: `${amount} ${strength}${isSweet ? ` ${sweetness}` : ''}`,
  }),
  cautions: ({ plants }) => ({ of: plants }),
}

/** Of these a jar's name is a plant's, or a word of its own, first. */
const OTHERWISE: ReadonlySet<string> = new Set<Path>(['plan', 'jar start', 'botanical', 'trouble', 'forget'])

/**
 * A call whose first option is to be a number and is a jar: with that jar, where the command takes one, else with its numbers. Null
 * where it is not so, or where more than one jar may be meant.
 */
export function withJarNumbers({ path, options }: Invocation, jars: readonly Jar[]): JarRead | null {
  const shape = signatures[path as Path]?.shape as Readonly<
    Record<string, { safeParse(text: string): { success: boolean } }>
  >
  const [first = ''] = Object.keys(shape ?? {})
  const { [first]: typed, ...others } = options
  if (typed === undefined || OTHERWISE.has(path) || first === 'jar' || first === 'jars') return null
  if (options.jar !== undefined || shape[first]!.safeParse(typed).success || isRefused(() => findJar(typed, jars)))
    return null
  const jar = findJar(typed, jars)
  const story = jarStateOf(jar.entries)!
  const kitchen = kitchenOfJar({}, story)
  // Water does to a jar what it does to a spirit, and a jar may be sweet.
  if (path === 'dilute' || 'jar' in shape) {
    const taking = path === 'dilute' ? 'adjust' : path
    return { call: { path: taking, options: { jar: story.name, ...others } }, notes: [], kitchen }
  }
  const texts = OPTIONS[path as Path]?.(numbersOf(story)) ?? null
  if (texts === null) return null
  const isPlanned = path === 'label' && !isMade(story)
  return {
    call: { path, options: { ...texts, ...others } },
    notes: isPlanned ? [{ group: 'notes', key: 'numbers_planned', values: { jar: story.name } }] : [],
    kitchen,
  }
}
