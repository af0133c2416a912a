import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../../core/botanical/find/in-form.ts'
import { keyOf } from '../../../../core/botanical/names/name-index.ts'
import type { PlantIn } from '../../../../core/jar/entry/entry.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { plantsDue, plantsToAdd } from '../../../../core/jar/state/later-plants.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { householdMass } from '../../../../core/quantity/write/household.ts'
import { householdTyped } from '../../../../core/quantity/write/household-typed.ts'
import { readPlants } from '../../../../core/recipe/plan/find-plants.ts'
import { nameWords, plainWords } from '../../../../core/spelling/normalise-name.ts'
import type { Call } from '../../../calls/call.ts'
import { call } from '../../../calls/call.ts'
import { pastIn } from '../../../calls/jar-options.ts'
import type { Context } from '../../../chat/command.ts'
import { type Deep, inMore } from '../../../chat/depth.ts'
import type { Action } from '../../../chat/reply.ts'
import { type Kitchen, type MixedKitchen, unitsIn } from '../../../text/messages/kitchen.ts'
import { type JarAsker, kitchenAmong } from './jar-kitchen.ts'
import { afterNow, jarRef } from './jar-ref.ts'
import { todayOf } from './view-of.ts'

/** The name by which a line asks for a plant: of what the catalogue lists in the plural, `coffee beans`, that. */
export function typedAs({ id, name }: Pick<PlantIn, 'id' | 'name'>): string {
  if (id === null) return name
  const { title, en } = botanicalById(id).names
  const listed = new Set(plainWords(title))
  const [first = name] = en
  const meant = keyOf(nameWords(first))
  const isMany = (other: string): boolean =>
    other !== first && keyOf(nameWords(other)) === meant && plainWords(other).every((word) => listed.has(word))
  return en.find(isMany) ?? first
}

/** Three digits behind a point are asked back, four are not. */
const toPlaces = (value: number): string => String(Number(value.toPrecision(4))).replace(/\.\d{3}$/, '$&0')

/** With its state where a plan asks for that: `dried sage`. */
function withState({ id, isDried }: Pick<PlantIn, 'id' | 'isDried'>, name: string): string {
  if (id === null || !isFormAsked(botanicalById(id))) return name
  return `${isDried ? 'dried' : 'fresh'} ${name}`
}

/** As it was weighed: `80 g`, in ounces `2 3/4 oz`. */
function weighed({ massG }: PlantIn, { mass }: MixedKitchen): string {
  const told = householdMass(massG, mass)
  return told === null ? `${toPlaces(massG.value)} g` : householdTyped(told)
}

interface AskedOf {
  readonly jar: string
  readonly after: ReturnType<typeof afterNow>
  readonly kitchen: Kitchen
}

function callFor(
  plants: readonly PlantIn[],
  { jar, after, kitchen }: AskedOf,
  dated: { readonly when?: ReturnType<typeof pastIn> } = {},
): Call | null {
  const typed = plants.map((plant) => `${weighed(plant, unitsIn(kitchen))} ${withState(plant, typedAs(plant))}`)
  return typed.length === 0 ? null : call('jar add', { jar, of: readPlants(typed.join(' + ')), ...dated, ...after })
}

/** The call that says they are in; null where none is due. */
export const addCall = (story: JarState, day: IsoDay, asked: AskedOf): Call | null =>
  callFor(plantsDue(story, day), asked)

const askedOf = (held: Pick<JarView, 'jar' | 'story'>, context: JarAsker): AskedOf => ({
  jar: jarRef(held, context),
  after: afterNow(held.jar.entries, context.place),
  kitchen: kitchenAmong(held.story, context.settings),
})

/**
 * What says that the plants of later days went in with the others: of a jar that was started on a day that is over it may well be so,
 * and is asked at once.
 */
export function allInActions(held: Pick<JarView, 'jar' | 'story'>, context: Context): readonly (Action & Deep)[] {
  const { day } = held.story.started
  const isOver = day < todayOf(context)
  const added = callFor(plantsToAdd(held.story), askedOf(held, context), isOver ? { when: pastIn(day) } : {})
  if (added === null) return []
  const action: Action = { label: { group: 'actions', key: 'jar_all_in', values: undefined }, call: added }
  return isOver ? [action] : inMore([action])
}

/** What says that the plants of a later day are in, where that has come. */
export function addActions(held: Pick<JarView, 'jar' | 'story'>, context: Context): readonly Action[] {
  const added = addCall(held.story, todayOf(context), askedOf(held, context))
  const values = { duty: 'add', name: held.story.name } as const
  return added === null ? [] : [{ label: { group: 'actions', key: 'nudge_done', values }, call: added }]
}
