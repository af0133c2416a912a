import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { Jar } from '../../../../store/person.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Reply } from '../../../chat/reply.ts'
import { jarData, undoneJarData } from '../known/jar-data.ts'
import { kitchenOfJars } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { viewOf } from '../known/view-of.ts'

const isOf = ({ entries }: Jar, attempt: string): boolean => entries.some((entry) => entry.attempt === attempt)

/**
 * What to answer to an attempt made again that may have been kept: null where it was not. What is there is made durable
 * before it is called kept; a `StorageError` comes out where that fails.
 */
export async function keptAfterAll(attempt: string, context: Context): Promise<Reply | null> {
  const { jars } = await context.store.update(context.userId, () => null)
  const kept = jars.filter((jar) => isOf(jar, attempt))
  if (kept.length === 0) return null
  const views: readonly JarView[] = kept.flatMap((jar) => viewOf(jar, context) ?? [])
  const data = kept.map((jar) => {
    const view = viewOf(jar, context)
    return view === null ? undoneJarData(jar) : jarData(view)
  })
  const [only] = data
  return {
    headline: {
      group: 'headlines',
      key: 'jar_kept_after_all',
      values: { names: views.map(({ story }) => story.name) },
    },
    table: [],
    sure: [],
    notes: [],
    cautions: [],
    actions: views.slice(0, 1).map((view) => ({
      label: { group: 'actions', key: 'jar_show_kept', values: undefined },
      call: call('jar show', { jar: jarRef(view, context) }),
    })),
    data: data.length === 1 && only !== undefined ? only : { jars: data },
    kitchen: kitchenOfJars(
      {},
      views.map(({ story }) => story),
    ),
  }
}
