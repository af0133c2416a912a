import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { Recipe } from '../../../core/recipe/code/recipe.ts'
import type { Share } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import { parseSharedCode, shareRef } from '../../calls/share-ref.ts'
import type { Context } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { batchCard } from '../../picture/card/batch-card.ts'
import { batchCardData } from '../../picture/card/batch-card-data.ts'
import type { Becomes } from '../../text/messages/share.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { todayOf } from '../jar/known/view-of.ts'
import { change } from '../jar/step/record-step.ts'
import { row } from '../reply/outcome-reply.ts'
import { pictureFile } from '../reply/picture-file.ts'
import { withShare } from './new-share.ts'

/** A button where there are others to press it, else the line that carries the batch to them. */
function makeAction({ id, code }: Share, { userId, place }: Context): Action {
  const make = { owner: userId, shareId: id }
  return place.kind === 'console' || shareRef(make) === null
    ? {
        label: { group: 'actions', key: 'share_carry', values: undefined },
        call: call('plan', { from: parseSharedCode(code) }),
      }
    : {
        label: { group: 'actions', key: 'make_too', values: undefined },
        call: call('share', { make }),
        audience: 'anyone',
      }
}

/** What came out, else what is planned; null where neither is known. */
function becomes({ story, contents }: JarView): Becomes | null {
  const isMade = story.sweetened !== null || story.bottled !== null
  if (isMade && !contents.isEmpty) {
    const { abvPercent, sugarGPerL } = contents.outcome
    return { by: 'made', abvPercent, sugarGPerL }
  }
  const { targets } = story.started
  return targets === null ? null : { by: 'plan', ...targets }
}

interface SharedNow {
  readonly view: JarView
  readonly recipe: Recipe
  readonly share: Share
  /** Jars that others began from it. */
  readonly made: number
  /** Its name, or its id where others are called so. */
  readonly called: string
}

/** A batch for all to see as it is now: a picture, a line of text, its code. */
export function shareReply({ view, recipe, share, made, called }: SharedNow, context: Context): Reply {
  const data = batchCardData(view, todayOf(context))
  const isPosted = context.place.kind !== 'console'
  const isHarmless = [data.allergens, data.advice, data.unknown].every(({ length }) => length === 0)
  return {
    headline: {
      group: 'headlines',
      key: 'shared',
      values: { name: data.name, ids: recipe.plants.map(({ id }) => id), becomes: becomes(view) },
    },
    table: [
      ...(isHarmless ? [] : [row('share_allergens', { group: 'cells', key: 'share_allergens', values: data })]),
      ...(made > 0 ? [row('share_made', { group: 'cells', key: 'share_made', values: { count: made } })] : []),
      ...(isPosted ? [row('share_code', { group: 'cells', key: 'share_code', values: { code: share.code } })] : []),
    ],
    sure: [],
    notes: isPosted ? [] : [{ group: 'notes', key: 'share_snapshot', values: { called } }],
    cautions: [],
    actions: [makeAction(share, context)],
    data: { share: share.id, jar: share.jarId, name: data.name, code: share.code, made },
    kitchen: kitchenOfJar({}, view.story),
    files: [
      pictureFile('larderbell-batch.png', { group: 'files', key: 'batch_card', values: data }, (pen) =>
        batchCard(data, pen),
      ),
    ],
    ...(isPosted && { visibility: 'public' as const }),
    async posted(postedIn) {
      await change(context, (person) => {
        const known = person.shares.find(({ id }) => id === share.id)
        return { person: known === undefined ? null : withShare(person, { ...known, postedIn }), made: null }
      })
    },
  }
}
