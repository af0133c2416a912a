import { DomainError } from '../../../../core/domain-error.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { isPoison } from '../../../../core/jar/limits/judge-jar.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { isSouthern } from '../../../../core/quantity/time/hemisphere.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { batchOf } from '../../../../core/recipe/code/recipe-batch.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Reply } from '../../../chat/reply.ts'
import { spiritPortions } from '../../options/input-to-portion.ts'
import { isSaidAsTyped, kitchenOf } from '../../options/input-units.ts'
import { shoppingAction, trialOf, type Wish } from '../../plan/plan-actions.ts'
import { daysNotes, isWeaker } from '../../plan/plan-from-code.ts'
import { planReply } from '../../plan/plan-reply.ts'
import { byDepth } from '../../reply/first-screen.ts'
import { freezerOf, note } from '../../reply/outcome-reply.ts'
import { expectDrinkableJar } from '../known/jar-dangers.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { heldFirst } from '../known/told-trouble.ts'
import { factorOf } from './again-batch.ts'
import { asTyped, isOtherSugar, optionsAgain, recipeFor, recipeIn } from './again-options.ts'
import { askedOrReached, firstThatCanBe, nearestNotes, reachedAbvPercent } from './again-reached.ts'
import { type Choice, choicesOf, lastTimeNotes, otherwiseActions, toldByDepth } from './again-said.ts'
import { withSizes } from './again-sizes.ts'
import { sugarAgain, sweetnessAgain } from './again-sugar.ts'

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
    const isStrengthSaid = own['to-strength'] !== undefined
    const plannedBy = (choice: Choice) => {
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
      return { choice, typedAll, ...askedOrReached(typedAll, isStrengthSaid, setting) }
    }
    const { choice, typedAll, input, asked, nearestAbvPercent } = firstThatCanBe(choicesOf(story, own), plannedBy)
    const { start: _s, ...planned } = input
    const [freezerC, units] = [freezerOf(context), context.settings]
    const isAsTyped = isSaidAsTyped(kitchenOf(asked.input), units)
    const reply = planReply(asked, { freezerC, isAsTyped, isSouth: isSouthern(context.zone) })
    const code = asked.notes.find((each) => each.key === 'code_from')
    const by = code?.key === 'code_from' ? code.values : { factor: factorOf(story, other), by: null, id: null }
    const as = {
      name: story.name,
      isOtherwise: own.of !== undefined || isOtherSugar(own),
      factor: by.factor,
      by: by.by ?? (other === null ? null : 'spirit'),
      id: by.id,
      pouredIn: choice.last.pouredIn,
    } as const
    const ownDays =
      recipe === null || own.days !== undefined
        ? []
        : daysNotes(batchOf(recipeFor(recipe, choice, undefined)), asked.wish)
    const told = nearestNotes(lastTimeNotes(choice, story, own), nearestAbvPercent, choice, story)
    // How much of a plant there is was so last time, too, and what it is to become where nothing is told of that.
    const isKnown = ({ key }: Reply['notes'][number]) =>
      key === 'plan_only_in_season' ||
      (key === 'plan_assumed' && told.length > 0) ||
      (key === 'plan_far_off' && own.of === undefined)
    const reached = (wish: Wish) => reachedAbvPercent(input, wish, { ...setting, isTrial: true })
    const offering = { own, jar: jarRef({ jar, story }, context), reachedAbvPercent: reached }
    // A sweetness that nobody typed now tells no kitchen.
    const { 'to-sweetness': _aimed, ...measured } = typedAll
    const asMeasured = own['to-sweetness'] === undefined ? measured : typedAll
    const startLabel = { group: 'actions', key: 'start_jar', values: undefined } as const
    const same: typeof reply = {
      ...reply,
      notes: [
        { group: 'notes', key: 'again_as', values: as },
        ...toldByDepth(told),
        ...(as.by === 'spirit' ? inMore([note('again_by_alcohol')]) : []),
        ...byDepth([...asked.notes.filter(({ key }) => !SAID_ELSEWHERE.has(key)), ...ownDays], isWeaker),
        ...reply.notes
          .filter(({ key }) => !SAID_ELSEWHERE.has(key))
          .map((each) => (isKnown(each) ? inMore([each])[0]! : each)),
      ],
      actions: [
        ...reply.actions,
        { label: startLabel, call: call('jar start', { name, ...planned }) },
        ...inMore([
          ...otherwiseActions(choice, story, offering),
          ...shoppingAction({ bottles: planned.bottles }, asked),
        ]),
      ],
      kitchen: kitchenOfJar(asMeasured, story),
      data: { ...reply.data, name: typeof name === 'string' ? name : name.is },
    }
    return heldFirst(same, [story])
  },
})
