import type { z } from 'zod'
import type { Happening, Ingredients, JarEntry, PlantIn, Started } from '../../../../core/jar/entry/entry.ts'
import { nameKey } from '../../../../core/jar/entry/jar-name.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { plantsAdded } from '../../../../core/jar/state/plants-added.ts'
import type { Strength } from '../../../../core/quantity/quantities.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { type DrinkPart, drinksIn } from '../../../../core/recipe/drinks-in.ts'
import type { PlantsRead } from '../../../../core/recipe/plan/find-plants.ts'
import type { Given } from '../../../calls/option.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import { spiritPortions } from '../../options/input-to-portion.ts'
import { planAsked } from '../../plan/plan-asked.ts'
import { jarStartCommand } from '../record/start.ts'
import { againOptions, pouredText, standingOptions, strengthOf, sugarText, written } from './again-options.ts'

/** What may be put right about what went in, beside water and sugar. */
export interface PutInFixes {
  readonly of?: Given<PlantsRead> | undefined
  readonly spirit?: Given<readonly DrinkPart[]> | undefined
  readonly strength?: Given<Strength> | undefined
  readonly sugar?: Given<unknown> | undefined
  readonly 'unknown-ok'?: Given<boolean> | undefined
}

const OPTIONS = ['of', 'spirit', 'strength', 'sugar', 'unknown-ok'] as const

/** Of the first day, and no part of the plan; `entry` belongs to a correction. */
const NOT_PLANNED = ['name', 'when', 'entry']

/** The amount of the one spirit, so that only its strength is another; throws where there are several. */
function samePour({ started: { spirits } }: Story): string {
  const [spirit, another] = spirits
  if (spirit !== undefined && another === undefined) return `${pouredText(spirit)}${sugarText(spirit)}`
  const values = { command: 'jar correct', option: 'spirit', example: 'spirit:1 l 95%' }
  throw new ChatError('missing_option', 'missing_option', values, { option: 'spirit' })
}

/** What was typed at the start, and since; of a code, all that went in by it, so that nothing is scaled anew. */
function startOptions(story: Story, entries: readonly JarEntry[]): Readonly<Record<string, string>> {
  const typed = standingOptions(story, entries)
  if (typed.from === undefined) return typed
  const { from: _, ...others } = typed
  const { started } = story
  return { ...others, ...againOptions({ ...story, happened: [started], strained: null }, entries, null) }
}

/** The strength in which it steeps with the water that went in first, whatever spirit it was. */
function steepAt({ started: { waterG } }: Story, { spirit, strength }: z.output<typeof jarStartCommand.input>) {
  if (waterG.value === 0 || spirit === undefined) return {}
  const steeped = strengthOf(spiritPortions(spirit.is, strength), waterG.value)
  return { 'steep-at': `${written(steeped)}%` }
}

const keyOf = ({ id, name }: PlantIn): string => id ?? nameKey(name)

/** The days and, where they were not named anew, the amounts of a recipe's plants, of which a plan from them knows nothing. */
function asInRecipe(made: Started, { started }: Story, isOther: boolean): Started {
  const { waterG } = started
  const isSame =
    made.plants.length === started.plants.length &&
    made.plants.every((plant) => started.plants.some((each) => keyOf(each) === keyOf(plant)))
  if (!isSame) return { ...made, waterG }
  const addOn = (plant: PlantIn) => started.plants.find((each) => keyOf(each) === keyOf(plant))!.addOn
  const plants = isOther ? made.plants.map((plant) => ({ ...plant, addOn: addOn(plant) })) : started.plants
  return { ...made, waterG, plants, days: started.days }
}

/** A start planned anew with what was typed then and what is right; its day and its name stay. */
export function startedAnew(
  story: Story,
  entries: readonly JarEntry[],
  fixes: PutInFixes,
  { zone, settings: { country } }: Pick<Context, 'zone' | 'settings'>,
): Started {
  const { started } = story
  const { shape } = jarStartCommand.input
  const isFromCode = standingOptions(story, entries).from !== undefined
  const isOtherSpirit = fixes.spirit !== undefined || fixes.strength !== undefined
  const dropped = [...NOT_PLANNED, ...(isOtherSpirit ? ['spirit', 'strength'] : isFromCode ? ['strength'] : [])]
  const kept = Object.entries(startOptions(story, entries)).filter(
    ([option]) => Object.hasOwn(shape, option) && !dropped.includes(option),
  )
  const right = OPTIONS.flatMap((option) =>
    fixes[option] === undefined ? [] : [[option, fixes[option].typed] as const],
  )
  const spirit = isOtherSpirit && fixes.spirit === undefined ? { spirit: samePour(story) } : {}
  const options = { ...Object.fromEntries(kept), ...spirit, ...Object.fromEntries(right), name: started.name }
  const then = { today: dayAt(zone, started.enteredMs), country, start: dayFromIso(started.day) }
  const read = jarStartCommand.input.parse(options)
  const input = isFromCode ? jarStartCommand.input.parse({ ...options, ...steepAt(story, read) }) : read
  const { wish, planned } = planAsked(input, { command: 'jar correct', ...then, isPoured: true })
  const made = startedFrom(planned, wish, started.name)
  return isFromCode ? asInRecipe(made, story, fixes.of !== undefined) : made
}

type Added = Extract<Happening, { kind: 'added' }>

/** What was added later, with the plants or spirit that are right. */
export function addedAnew(added: Added, seq: number, story: Story, fixes: PutInFixes): Added {
  const { of, spirit, strength } = fixes
  const others = { ...story, happened: story.happened.filter((entry) => entry.seq !== seq) }
  const [poured, another] = added.spirits
  const same =
    poured === undefined || another !== undefined
      ? null
      : drinksIn(`${pouredText(poured)}${sugarText(poured)}`, { blends: false })
  const parts = spirit?.is ?? (strength === undefined ? null : same)
  const spirits = parts === null ? added.spirits : spiritPortions(parts, strength)
  const liquids: Ingredients = { ...added, spirits, plants: [] }
  return { ...added, spirits, ...(of && { plants: plantsAdded(of.is, others, liquids) }) }
}
