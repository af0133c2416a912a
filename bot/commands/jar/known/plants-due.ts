import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import type { PlantIn } from '../../../../core/jar/entry/entry.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { plantsToAdd } from '../../../../core/jar/state/later-plants.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Context } from '../../../chat/command.ts'
import { writeLine } from '../../../chat/grammar/write-line.ts'
import type { Action } from '../../../chat/reply.ts'
import { type JarView, todayOf } from '../view/jar-view.ts'
import { afterNow, jarRef } from './jar-ref.ts'

interface PlantDue extends Pick<PlantIn, 'id' | 'name'> {
  /** By which a line can ask for it. */
  readonly typedAs: string
  readonly massG: number
}

/** What is to be put into a jar by a day as planned, and is not in yet. */
export const plantsDue = (story: Story, day: IsoDay): readonly PlantDue[] =>
  plantsToAdd(story)
    .filter(({ addOn }) => addOn <= day)
    .map(({ id, name, massG }) => ({
      id,
      name,
      typedAs: id === null ? name : (botanicalById(id).names.en[0] ?? name),
      massG: massG.value,
    }))

const toPlaces = (value: number): string => String(Number(value.toPrecision(4)))

/** The line that says they are in; null where none is due. */
export function addLine(story: Story, day: IsoDay, jar: string, after: ReturnType<typeof afterNow>): string | null {
  const plants = plantsDue(story, day).map(({ typedAs, massG }) => `${toPlaces(massG)} g ${typedAs}`)
  return plants.length === 0 ? null : writeLine('jar add', jar, [['of', plants.join(' + ')], ...after])
}

/** What says that the plants of a later day are in, where that has come. */
export function addActions(held: Pick<JarView, 'jar' | 'story'>, context: Context): readonly Action[] {
  const line = addLine(held.story, todayOf(context), jarRef(held, context), afterNow(held.jar.entries, context.place))
  const values = { duty: 'add', name: held.story.name } as const
  return line === null ? [] : [{ label: { group: 'actions', key: 'nudge_done', values }, line }]
}
