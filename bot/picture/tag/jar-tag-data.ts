import { finedWith, hasHoney, ingredientsTold } from '../../../core/jar/state/batch-facts.ts'
import { bestUntil } from '../../../core/jar/state/best-until.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { forGuests } from '../../../core/label/for-guests.ts'
import type { JarTagData } from '../../text/messages/pictures.ts'
import { isFlammable } from '../draw/flammable-mark.ts'

export function jarTagData({ jar, story, contents, dangers }: JarView): JarTagData {
  const { name, started } = story
  const { abvPercent } = contents.outcome
  const inJar = ingredientsTold(story)
  const { allergens, unknown } = forGuests(inJar.plants, [], finedWith(story))
  const { strainFrom, strainBy } = story.strained === null ? started.days : { strainFrom: null, strainBy: null }
  return {
    id: jar.id,
    name,
    started: started.day,
    strainFrom,
    strainBy,
    bestUntil: dangers.length > 0 ? null : bestUntil(story),
    inJar,
    allergens,
    unknown,
    abvPercent: abvPercent.value > 0 ? abvPercent : null,
    hasHoney: hasHoney(story),
    danger: dangers[0]?.kind ?? null,
    isFlammable: abvPercent.value > 0 && (story.strained === null || isFlammable(abvPercent)),
  }
}
