import { replay, type UnsoundEntry } from '../../../core/jar/record/replay.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { Jar } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Context } from '../../chat/command.ts'
import { LONGEST_LINE } from '../../chat/grammar/grammar.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { dangerCautions } from '../jar/known/jar-dangers.ts'
import { change } from '../jar/step/record-step.ts'
import { kitchenOf } from '../options/input-units.ts'
import { note } from '../reply/outcome-reply.ts'
import { type GivenJar, MOST_BYTES, type Notebook } from './notebook-file.ts'
import { readNotebook } from './read-notebook.ts'
import { nameOf, type TakenIn, takeIn } from './take-in.ts'

/** Entries looked at before others get their turn. */
const BREATH = 20

/** What is wrong with the entries of a jar, found while nobody waits for it; null where nothing is. */
async function unsoundOf(entries: Jar['entries']): Promise<UnsoundEntry | null> {
  const replaying = replay(entries, LONGEST_LINE)
  for (let looked = 0; ; looked++) {
    if (looked % BREATH === 0) await new Promise((resolve) => setTimeout(resolve, 0))
    const { done, value } = replaying.next()
    if (done === true) return value
  }
}

/** Without the jars that could not have happened so, which are left out. */
async function soundOf(notebook: Notebook): Promise<Notebook> {
  const jars: GivenJar[] = []
  const left = [...notebook.left]
  for (const given of notebook.jars) {
    const fault = await unsoundOf(given.jar.entries)
    if (fault === null) jars.push(given)
    else left.push({ jar: given.number, name: nameOf(given.jar) || null, ...fault, where: null })
  }
  return { ...notebook, jars, left }
}

function notesOf({ added, longer, renamed, isSettled, left }: TakenIn): readonly Message<'notes'>[] {
  return [
    ...(left.length > 0 ? [{ group: 'notes', key: 'import_left', values: { left } } as const] : []),
    ...(renamed.length > 0 ? [{ group: 'notes', key: 'import_renamed', values: { names: renamed } } as const] : []),
    ...(isSettled ? [note('import_settings')] : []),
    ...(added.length + longer.length > 0 ? [note('import_past')] : []),
  ]
}

function importedReply(taken: TakenIn, jars: readonly Jar[]): Reply {
  const { added, longer, same, entries, renamed, isSettled, left } = taken
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
    cautions: dangerCautions(jars.flatMap(({ entries }) => jarStateOf(entries) ?? [])),
    actions: isChanged
      ? [{ label: { group: 'actions', key: 'import_list', values: undefined }, call: call('jar list') }]
      : [],
    data: {
      added,
      longer,
      same,
      entries,
      renamed: renamed.map(([from, to]) => ({ from, to })),
      left: left.map(({ jar, name, seq, why }) => ({ jar, name, entry: seq, why })),
      settings: isSettled,
    },
    kitchen: kitchenOf({}),
  }
}

/** Takes in what is sound of a notebook, and names the rest. Throws `import_jars` where nothing of it is. */
export async function importNotebook(typed: string, context: Context): Promise<Reply> {
  const { openFile } = context
  if (openFile === undefined) throw new ChatError('bad_value', 'no_files_here', {})
  const notebook = await soundOf(readNotebook(await openFile(typed, MOST_BYTES)))
  const taken = await change(context, (person) => {
    const made = takeIn(person, notebook, context)
    if (made.left.length > 0 && made.added.length + made.longer.length + made.same === 0) {
      throw new ChatError('bad_value', 'import_jars', { left: made.left })
    }
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
