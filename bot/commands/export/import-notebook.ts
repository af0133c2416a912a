import { storyOf } from '../../../core/jar/story.ts'
import type { Jar } from '../../../store/person.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { change } from '../jar/change-jar.ts'
import { dangerCautions } from '../jar/jar-dangers.ts'
import { note } from '../outcome-reply.ts'
import { kitchenOf } from '../typed-in.ts'
import { wrongEntry } from './import-error.ts'
import { jarFault } from './jar-fault.ts'
import { MOST_BYTES, type Notebook } from './notebook-file.ts'
import { readNotebook } from './read-notebook.ts'
import { nameOf, type TakenIn, takeIn } from './take-in.ts'

async function expectSound({ jars }: Notebook, nowMs: number): Promise<void> {
  for (const [index, jar] of jars.entries()) {
    const fault = await jarFault(jar.entries, nowMs)
    if (fault !== null) throw wrongEntry({ jar: index + 1, name: nameOf(jar) || null, ...fault, where: null })
  }
}

function notesOf({ added, longer, renamed, isSettled }: TakenIn): readonly Message<'notes'>[] {
  return [
    ...(renamed.length > 0 ? [{ group: 'notes', key: 'import_renamed', values: { names: renamed } } as const] : []),
    ...(isSettled ? [note('import_settings')] : []),
    ...(added.length + longer.length > 0 ? [note('import_past')] : []),
  ]
}

function importedReply(taken: TakenIn, jars: readonly Jar[]): Reply {
  const { added, longer, same, entries, renamed, isSettled } = taken
  const isChanged = added.length + longer.length > 0
  return {
    headline: {
      group: 'headlines',
      key: 'imported',
      values: { added: added.length, longer: longer.length, same, entries, isSettled },
    },
    table: [],
    sure: [],
    notes: notesOf(taken),
    cautions: dangerCautions(jars.flatMap(({ entries }) => storyOf(entries) ?? [])),
    actions: isChanged
      ? [{ label: { group: 'actions', key: 'import_list', values: undefined }, line: '/jar list' }]
      : [],
    data: { added, longer, same, entries, renamed: renamed.map(([from, to]) => ({ from, to })), settings: isSettled },
    kitchen: kitchenOf({}),
  }
}

/** Takes in a notebook: all of it or nothing. */
export async function importNotebook(typed: string, context: Context): Promise<Reply> {
  const { openFile, nowMs } = context
  if (openFile === undefined) throw new ChatError('bad_value', 'no_files_here', {})
  const notebook = readNotebook(await openFile(typed, MOST_BYTES))
  await expectSound(notebook, nowMs)
  const taken = await change(context, (person) => {
    const made = takeIn(person, notebook, context)
    const isShared = made.person.shares.length > person.shares.length
    const isNews = made.isSettled || isShared || made.added.length + made.longer.length > 0
    return { person: isNews ? made.person : null, made }
  })
  const { jars } = await context.store.read(context.userId)
  const news = new Set([...taken.added, ...taken.longer])
  return importedReply(
    taken,
    jars.filter(({ id }) => news.has(id)),
  )
}
