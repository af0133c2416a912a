import { DomainError } from '../../../../core/domain-error.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { isPoison } from '../../../../core/jar/limits/judge-jar.ts'
import { ingredientsOf } from '../../../../core/jar/state/batch-facts.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type Story, storyOf } from '../../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../../core/jar/state/recipe-of.ts'
import { encodeBatch } from '../../../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../../../core/recipe/code/recipe.ts'
import { batchOf } from '../../../../core/recipe/code/recipe-batch.ts'
import { keptDays } from '../../../../core/recipe/code/recipe-wish.ts'
import type { KeptDays } from '../../../../core/recipe/plan/schedule.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Given } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { writeLine } from '../../../calls/write-line.ts'
import { defineCommand } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { spiritPortions } from '../../options/input-to-portion.ts'
import { daysNotes } from '../../plan/plan-from-code.ts'
import { doseNotes } from '../../plan/plan-notes.ts'
import { expectDrinkableJar } from '../record/jar-dangers.ts'
import { jarStartCommand, startJar } from '../record/start.ts'
import { againOptions, bottlesAgain, factorOf, type OtherSpirit, together as plantsTogether } from './again-options.ts'

/** What was typed, of those that were given. */
const typedOf = (options: { readonly [option: string]: Given<unknown> | undefined }) =>
  Object.fromEntries(
    Object.entries(options).flatMap(([option, given]) => (given === undefined ? [] : [[option, given.typed] as const])),
  )

/** How it is told to others, and made of another spirit; null where that cannot be. */
function recipeIn(story: Story): Recipe | null {
  try {
    const recipe = recipeOf(story)
    encodeBatch(recipe)
    return recipe
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return null
    throw error
  }
}

/** As many days on the plants as before, where each went in once. */
function daysOf(recipe: Recipe | null, story: Story): KeptDays | undefined {
  const days = recipe === null || story.strained === null ? undefined : keptDays(batchOf(recipe))
  return days?.addOnDays.length === plantsTogether(ingredientsOf(story).plants).length ? days : undefined
}

/** What it became, where it has become something. */
const targetsOf = ({ targets }: Recipe, { sweetened, bottled }: Story) =>
  targets === null || (sweetened === null && bottled === null)
    ? {}
    : {
        'to-strength': `${targets.abvHundredthPercent / 100}%`,
        'to-sweetness': `${targets.sugarTenthGPerL / 10} g/L`,
      }

/** What to type to begin it once more; of another spirit it is the recipe of its code. */
function optionsAgain(story: Story, jar: Jar, recipe: Recipe | null, other: OtherSpirit | null) {
  if (recipe === null || other === null) {
    return { ...againOptions(story, jar.entries, other), ...(recipe === null ? {} : targetsOf(recipe, story)) }
  }
  return { from: encodeBatch(recipe), spirit: other.typed, ...bottlesAgain(story.started, true) }
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
    const story = storyOf(jar.entries)
    if (story === null) throw new DomainError('not_found', 'no_such_jar', { typed, nearest: null })
    expectDrinkableJar(story, isPoison)
    const other =
      own.spirit === undefined
        ? null
        : { typed: own.spirit.typed, spirits: spiritPortions(own.spirit.is, own.strength) }
    // Of one that is done too, so that an undo of this one, typed twice, does not reach that one.
    const taken = jars.flatMap(({ entries }) => storyOf(entries)?.name ?? [])
    const recipe = recipeIn(story)
    const options = {
      name: freeName(story.name, taken),
      ...optionsAgain(story, jar, recipe, other),
      ...typedOf(own),
    }
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
    const { started } = storyOf(findJar(options.name, made.jars).entries)!
    const values = {
      name: story.name,
      factor: factorOf(story, other),
      isOther: other !== null,
      line: writeLine('jar undo', options.name),
      targets: started.targets,
    }
    const asBefore: Message<'notes'> = { group: 'notes', key: 'again_as', values }
    return { ...reply, notes: [asBefore, ...reply.notes] }
  },
})
