import { sameName } from '../../../../core/jar/entry/jar-name.ts'
import { ratingsOf } from '../../../../core/jar/state/batch-facts.ts'
import { findTwoJars } from '../../../../core/jar/state/two-jars.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { signature } from '../../../calls/signatures.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Reply } from '../../../chat/reply.ts'
import { exportNotebook } from '../../notebook-file/export-notebook.ts'
import { importNotebook } from '../../notebook-file/import-notebook.ts'
import { batchData } from '../known/batch-data.ts'
import { dangerCautions } from '../known/jar-dangers.ts'
import { kitchenOfJars } from '../known/jar-kitchen.ts'
import { viewOf } from '../known/view-of.ts'
import { compareRows } from './compare-rows.ts'
import { notebookReply } from './notebook-reply.ts'

function compareReply(views: readonly [JarView, JarView], context: Context): Reply {
  const [one, other] = views
  const isSame = sameName(one.story.name, other.story.name)
  const named = ({ story }: JarView) => ({ name: story.name, startedOn: isSame ? story.started.day : null })
  const rated = ({ story }: JarView) => ratingsOf(story).at(-1) ?? null
  const table = compareRows(views, context.settings)
  return {
    headline: {
      group: 'headlines',
      key: 'compared',
      values: { names: [named(one), named(other)], ratings: [rated(one), rated(other)], count: table.length },
    },
    table,
    sure: [],
    notes: [],
    cautions: dangerCautions(
      views.map(({ story }) => story),
      context.settings,
    ),
    actions: [],
    data: { batches: views.map(batchData) },
    kitchen: kitchenOfJars(
      {},
      views.map(({ story }) => story),
    ),
  }
}

export const notebookCommand = defineCommand({
  ...signature('notebook'),
  topic: 'sharing',
  async run(input, context) {
    const { compare, export: format, import: file } = input
    const given = Object.keys(input)
    if (given.length > 1) {
      const values = { command: 'notebook', options: given }
      throw new ChatError('too_many_options', 'one_at_a_time', values, { command: 'notebook', option: given[1]! })
    }
    if (format !== undefined) return exportNotebook(format.is, context)
    if (file !== undefined) return importNotebook(file.is, context)
    const { jars } = await context.store.read(context.userId)
    if (compare === undefined) {
      return notebookReply(
        jars.map((jar) => viewOf(jar, context)).filter((view) => view !== null),
        context,
      )
    }
    const [one, other] = findTwoJars(compare.is, jars).map((jar) => viewOf(jar, context))
    return compareReply([one!, other!], context)
  },
})
