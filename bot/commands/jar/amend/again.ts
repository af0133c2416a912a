import { DomainError } from '../../../../core/domain-error.ts'
import type { PlantIn } from '../../../../core/jar/entry/entry.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { isPoison } from '../../../../core/jar/limits/judge-jar.ts'
import { ingredientsOf } from '../../../../core/jar/state/batch-facts.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../../core/jar/state/recipe-of.ts'
import { abvPercent, ethanolG } from '../../../../core/liquid/liquid.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { SugarRead } from '../../../../core/quantity/quantities.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { type Batch, scale } from '../../../../core/recipe/batch.ts'
import { encodeBatch } from '../../../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../../../core/recipe/code/recipe.ts'
import { batchOf } from '../../../../core/recipe/code/recipe-batch.ts'
import { keptDays, poured, steepsAtPercent } from '../../../../core/recipe/code/recipe-wish.ts'
import type { KeptDays } from '../../../../core/recipe/plan/schedule.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import { call } from '../../../calls/call.ts'
import type { Given } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { defineCommand } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { spiritPortions } from '../../options/input-to-portion.ts'
import { batchOptions, bottlesGiven, percentGiven, sweetnessGiven } from '../../plan/batch-options.ts'
import { daysNotes } from '../../plan/plan-from-code.ts'
import { doseNotes } from '../../plan/plan-notes.ts'
import { sugarWritten } from '../../plan/written-amounts.ts'
import { expectDrinkableJar } from '../known/jar-dangers.ts'
import { jarStartCommand, startJar } from '../record/start.ts'

/** How it is told to others, and made of another spirit; null where that cannot be. */
function recipeIn(story: JarState): Recipe | null {
  try {
    const recipe = recipeOf(story)
    encodeBatch(recipe)
    return recipe
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return null
    throw error
  }
}

/** The same plant named twice is once as much of it. */
const joinPlants = (plants: readonly PlantIn[]): readonly PlantIn[] => {
  const keyOf = ({ id, name }: PlantIn): string => id ?? `“${name}`
  return [...new Set(plants.map(keyOf))].map((key) => {
    const same = plants.filter((plant) => keyOf(plant) === key)
    const [first] = same
    const massG = exactly(same.reduce((sum, plant) => sum + plant.massG.value, 0))
    return same.length === 1 ? first! : { ...first!, count: null, massG }
  })
}

/** How many times as much goes in: by the alcohol, so that a glass of it holds as much of the plants as before. */
const factorOf = (story: JarState, other: readonly Portion[] | null): number =>
  other === null ? 1 : ethanolG(poured(other)) / ethanolG(poured(ingredientsOf(story).spirits))

/** With other spirit only their size, as many as it fills. */
const bottlesAgain = ({ bottles }: Pick<Batch, 'bottles'>, isOther: boolean): Batch['bottles'] =>
  isOther ? bottles.slice(0, 1).map(({ volumeMl }) => ({ count: null, volumeMl })) : bottles

/** Everything that went in, by the alcohol, brought to the strength at which it steeped where water went in first. */
export function batchAgain(story: JarState, other: readonly Portion[] | null): Batch<IsoDay> {
  const { kind: _, ...started } = story.started
  const { waterG } = started
  const ingredients = ingredientsOf(story)
  const all = { ...started, ...ingredients, plants: joinPlants(ingredients.plants), waterG }
  const batch = scale(all, factorOf(story, other))
  const steeped = steepsAtPercent(started)
  const isStronger = waterG.value > 0 && abvPercent(poured(other ?? batch.spirits)) > steeped
  return {
    ...batch,
    bottles: bottlesAgain(started, other !== null),
    named: { ...batch.named, steepAtPercent: isStronger ? steeped : null },
  }
}

/** As many days on the plants as before, where each went in once. */
function daysOf(recipe: Recipe | null, story: JarState): KeptDays | undefined {
  const days = recipe === null || story.strained === null ? undefined : keptDays(batchOf(recipe))
  return days?.addOnDays.length === joinPlants(ingredientsOf(story).plants).length ? days : undefined
}

/** What it became, where it has become something. */
function targetsMade({ targets }: Recipe, { sweetened, bottled }: JarState) {
  if (targets === null || (sweetened === null && bottled === null)) return {}
  const [percent, gPerL] = [targets.abvHundredthPercent / 100, targets.sugarTenthGPerL / 10]
  return {
    'to-strength': { ...percentGiven(percent), typed: `${percent}%` },
    'to-sweetness': { ...sweetnessGiven(gPerL), typed: `${gPerL} g/L` },
  }
}

/** What begins it once more; of another spirit it is the recipe of its code. */
function optionsAgain(story: JarState, recipe: Recipe | null, other: readonly Portion[] | null) {
  if (recipe === null || other === null) {
    const daysTyped = story.started.typed.find(([option]) => option === 'days')?.[1]
    const options = batchOptions(batchAgain(story, other), daysTyped)
    return { ...options, ...(recipe === null ? {} : targetsMade(recipe, story)) }
  }
  const bottles = bottlesAgain(story.started, true)
  return {
    from: { typed: encodeBatch(recipe), is: { recipe, shareId: null, owner: null } },
    ...(bottles.length > 0 && { bottles: bottlesGiven(bottles) }),
  }
}

/** What was named, beside what went in before where only a name was, and beside the name where only amounts were. */
function sugarAgain(before: Given<SugarRead> | undefined, said: Given<SugarRead> | undefined) {
  if (said === undefined) return {}
  const amounts = said.is.amounts.length === 0 ? (before?.is.amounts ?? []) : said.is.amounts
  const sweetener = said.is.sweetener ?? before?.is.sweetener ?? null
  const weighed = amounts.map(({ material, massG }) => ({ material, massG: exactly(massG) }))
  return { sugar: { typed: sugarWritten(weighed, sweetener), is: { amounts, sweetener } } }
}

/** How much of the plants there is to the spirit, where that is worth a word. */
const DOSES: ReadonlySet<string> = new Set([
  'plan_capped',
  'plan_above_wise',
  'plan_more_than_usual',
  'plan_less_than_usual',
  'plan_spirit_usual',
])

export const againCommand = defineCommand({
  ...signature('again'),
  async run({ jar: { is, typed }, ...own }, context) {
    const { jars } = await context.store.read(context.userId)
    const jar = findJar(is, jars)
    const story = jarStateOf(jar.entries)
    if (story === null) throw new DomainError('not_found', 'no_such_jar', { typed, nearest: null })
    expectDrinkableJar(story, isPoison)
    const other = own.spirit === undefined ? null : spiritPortions(own.spirit.is, own.strength)
    // Of one that is done too, so that an undo of this one, typed twice, does not reach that one.
    const taken = jars.flatMap(({ entries }) => jarStateOf(entries)?.name ?? [])
    const recipe = recipeIn(story)
    const name = own.name?.is ?? freeName(story.name, taken)
    const said = Object.fromEntries(Object.entries(own).filter(([, given]) => given !== undefined))
    const again = optionsAgain(story, recipe, other)
    const options = { name, ...again, ...said, ...sugarAgain('sugar' in again ? again.sugar : undefined, own.sugar) }
    const kept = other === null ? daysOf(recipe, story) : undefined
    const reply = await startJar(jarStartCommand.input.parse(options), context, {
      kept,
      notesOf: ({ input, wish, planned, notes }) => [
        // How many times as much is said of the jar, not of a code.
        ...notes.filter(({ key }) => key !== 'code_from' && key !== 'code_days'),
        ...(story.strained === null || recipe === null ? [] : daysNotes(batchOf(recipe), wish)),
        ...doseNotes(input, planned).filter(({ key }) => DOSES.has(key)),
      ],
    })
    const made = await context.store.read(context.userId)
    const { started } = jarStateOf(findJar(name, made.jars).entries)!
    const values = {
      name: story.name,
      factor: factorOf(story, other),
      isOther: other !== null,
      targets: started.targets,
      line: lineOf(call('jar undo', { jar: name })),
    }
    const asBefore: Message<'notes'> = { group: 'notes', key: 'again_as', values }
    return { ...reply, notes: [asBefore, ...reply.notes] }
  },
})
