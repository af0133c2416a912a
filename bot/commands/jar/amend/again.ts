import { DomainError, unlessRefused } from '../../../../core/domain-error.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { isPoison } from '../../../../core/jar/limits/judge-jar.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../../core/jar/state/recipe-of.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { encodeBatch } from '../../../../core/recipe/code/batch-code.ts'
import type { Recipe } from '../../../../core/recipe/code/recipe.ts'
import { batchOf, roundedTargets } from '../../../../core/recipe/code/recipe-batch.ts'
import { saidDays } from '../../../../core/recipe/plan/schedule.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import { call, callOfTexts } from '../../../calls/call.ts'
import type { Given } from '../../../calls/option.ts'
import { type InputOf, signature, signatures } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import { spiritPortions } from '../../options/input-to-portion.ts'
import { isSaidAsTyped, kitchenOf } from '../../options/input-units.ts'
import { batchOptions, bottlesGiven, wholeDaysGiven } from '../../plan/batch-options.ts'
import { shoppingAction, trialOf, type Wish } from '../../plan/plan-actions.ts'
import { daysNotes, isWeaker } from '../../plan/plan-from-code.ts'
import { planReply } from '../../plan/plan-reply.ts'
import type { Setting } from '../../plan/plan-wish.ts'
import { byDepth } from '../../reply/first-screen.ts'
import { freezerOf } from '../../reply/outcome-reply.ts'
import { expectDrinkableJar } from '../known/jar-dangers.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { heldFirst } from '../known/told-trouble.ts'
import { batchAgain, bottlesAgain, factorOf } from './again-batch.ts'
import { plantsAgain } from './again-plants.ts'
import { askedOrReached, nearestNotes, reachedAbvPercent } from './again-reached.ts'
import { type Choice, choiceOf, lastTimeNotes, otherwiseActions, targetsGiven } from './again-said.ts'
import { withSizes } from './again-sizes.ts'
import { sugarAgain, sweetnessAgain, syrupAgain } from './again-sugar.ts'
import { typedAgain } from './again-typed.ts'

type Input = InputOf<'again'>

/** How it is told to others, and made of another spirit; null where that cannot be. */
function recipeIn(story: JarState): Recipe | null {
  return unlessRefused(() => {
    const recipe = recipeOf(story)
    encodeBatch(recipe)
    return recipe
  })
}

/** The recipe with the days and the aims of the new batch. */
function recipeFor(recipe: Recipe, { wentDays, last, targets }: Choice, days: Input['days']): Recipe {
  const said = saidDays(days?.is ?? null)?.steep
  const went = wentDays === null ? null : { fromDays: wentDays, byDays: wentDays }
  const steep = said ?? went ?? last.plannedDays
  return {
    ...recipe,
    steep: steep === null || steep.byDays === 0 ? null : steep,
    targets: targets === null ? recipe.targets : roundedTargets(targets),
  }
}

/** What it is to become, where that is not what was planned of it. */
function targetsAgain({ targets }: Choice, { started }: JarState) {
  return targets === null || targets === started.targets ? {} : targetsGiven(targets)
}

const isOtherSugar = ({ sugar }: Pick<Input, 'sugar'>): boolean => sugar !== undefined && sugar.is.amounts.length > 0

interface AtHand {
  readonly of?: Input['of']
  readonly other: readonly Portion[] | null
  readonly bottles?: Input['bottles']
  readonly days?: Input['days']
  readonly sugar?: Input['sugar']
  readonly setting: Setting
}

/** What plans it once more; of another spirit, for other bottles, or where it came of a code, it is the recipe of its code. */
function optionsAgain(story: JarState, recipe: Recipe | null, choice: Choice, atHand: AtHand) {
  const { of, other, bottles, days, sugar, setting } = atHand
  const isCode = other !== null || bottles !== undefined || story.started.origin !== null
  const isSugarSaid = isOtherSugar({ sugar })
  if (recipe === null || !isCode || of !== undefined || (other === null && isSugarSaid)) {
    const daysTyped = story.started.typed.find(([option]) => option === 'days')?.[1]
    const before =
      (other === null ? typedAgain(story, setting) : null) ?? batchOptions(batchAgain(story, other), daysTyped)
    return {
      ...before,
      ...(of !== undefined && { of: plantsAgain(before.of, of) }),
      ...syrupAgain(before, story),
      ...targetsAgain(choice, story),
      ...(choice.wentDays !== null && { days: wholeDaysGiven(choice.wentDays) }),
      ...(days !== undefined && { days }),
    }
  }
  const made = recipeFor(recipe, choice, days)
  const size = bottles === undefined ? bottlesAgain(story.started, other !== null) : []
  return {
    from: { typed: encodeBatch(made), is: { recipe: made, shareId: null, owner: null } },
    ...(size.length > 0 && { bottles: bottlesGiven(size) }),
  }
}

/** What is planned is what the line that starts it says. */
function asTyped(options: Readonly<Record<string, Given<unknown> | undefined>>): InputOf<'plan'> {
  const texts = Object.entries(options).flatMap(([option, given]) =>
    given === undefined ? [] : [[option, given.typed] as const],
  )
  return signatures.plan.parse(callOfTexts('plan', texts)?.values ?? options)
}

/** What is said of the recipe's code is said of the jar. */
const SAID_ELSEWHERE: ReadonlySet<string> = new Set(['code_from', 'code_days', 'plan_days_said'])

export const againCommand = defineCommand({
  ...signature('again'),
  topic: 'sharing',
  async run(own, context) {
    const { is, typed } = own.jar
    const { jars } = await context.store.read(context.userId)
    const jar = findJar(is, jars)
    const story = jarStateOf(jar.entries)
    if (story === null) throw new DomainError('not_found', 'no_such_jar', { typed, nearest: null })
    expectDrinkableJar(story, isPoison)
    const { secondOf } = story.started
    if (secondOf !== undefined) {
      throw new DomainError('unreachable', 'second_steep_unshared', { jar: story.name, other: secondOf.other })
    }
    const other = own.spirit === undefined ? null : spiritPortions(own.spirit.is, own.strength)
    // Of one that is done too, so that an undo of the new one, typed twice, does not reach that one.
    const taken = jars.flatMap(({ entries }) => jarStateOf(entries)?.name ?? [])
    const name = own.name ?? freeName(story.name, taken)
    const recipe = recipeIn(story)
    const choice = choiceOf(story)
    const today = dayAt(context.zone, context.nowMs)
    const setting = {
      command: 'plan',
      today,
      country: context.settings.country,
      start: today,
      kitchen: context.kitchen,
    }
    const { jar: _, name: _n, days: _d, of: _o, ...wished } = own
    const bottles = wished.bottles === undefined ? undefined : withSizes(wished.bottles)
    const said = Object.fromEntries(Object.entries({ ...wished, bottles }).filter(([, given]) => given !== undefined))
    const again = optionsAgain(story, recipe, choice, { ...own, other, setting })
    const before = 'sugar' in again ? again.sugar : undefined
    const sugar = sugarAgain(before, own.sugar)
    const sweetness =
      own['to-sweetness'] === undefined
        ? sweetnessAgain(before, sugar.sugar, (otherwise) =>
            trialOf(asTyped({ ...again, ...said, ...otherwise }), setting),
          )
        : {}
    const typedAll = asTyped({ ...again, ...said, ...sugar, ...sweetness })
    const isStrengthSaid = own['to-strength'] !== undefined
    const { input, asked, nearestAbvPercent } = askedOrReached(typedAll, isStrengthSaid, setting)
    const { start: _s, ...planned } = input
    const [freezerC, units] = [freezerOf(context), context.settings]
    const reply = planReply(asked, { freezerC, isAsTyped: isSaidAsTyped(kitchenOf(asked.input), units) })
    const code = asked.notes.find((each) => each.key === 'code_from')
    const by = code?.key === 'code_from' ? code.values : { factor: factorOf(story, other), by: null }
    const as = {
      name: story.name,
      isOtherwise: own.of !== undefined || isOtherSugar(own),
      factor: by.factor,
      by: by.by ?? (other === null ? null : 'spirit'),
    } as const
    const ownDays =
      recipe === null || own.days !== undefined
        ? []
        : daysNotes(batchOf(recipeFor(recipe, choice, undefined)), asked.wish)
    const told = nearestNotes(lastTimeNotes(choice, story, own), nearestAbvPercent, choice, story)
    const isAimTold = told.some(({ key }) => key === 'again_came_out' || key === 'again_nearest')
    const reached = (wish: Wish) => reachedAbvPercent(input, wish, { ...setting, isTrial: true })
    const offering = { own, jar: jarRef({ jar, story }, context), reachedAbvPercent: reached }
    const startLabel = { group: 'actions', key: 'start_jar', values: undefined } as const
    const same: typeof reply = {
      ...reply,
      notes: [
        { group: 'notes', key: 'again_as', values: as },
        ...told,
        ...byDepth([...asked.notes.filter(({ key }) => !SAID_ELSEWHERE.has(key)), ...ownDays], isWeaker),
        ...reply.notes
          .filter(({ key }) => !SAID_ELSEWHERE.has(key))
          .map((each) => (each.key === 'plan_assumed' && isAimTold ? inMore([each])[0]! : each)),
      ],
      actions: [
        ...reply.actions,
        { label: startLabel, call: call('jar start', { name, ...planned }) },
        ...otherwiseActions(choice, story, offering),
        ...inMore(shoppingAction({ bottles: planned.bottles }, asked)),
      ],
      kitchen: kitchenOfJar(typedAll, story),
      data: { ...reply.data, name: typeof name === 'string' ? name : name.is },
    }
    return heldFirst(same, [story])
  },
})
