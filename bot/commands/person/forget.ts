import { unlessRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import { entriesOf, NOBODY, type Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { call } from '../../calls/call.ts'
import { signature } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOf } from '../options/input-units.ts'
import { note } from '../reply/outcome-reply.ts'
import { openPosts, sharesOf, withdrawAll } from '../share/withdraw-all.ts'

/** Those that were chosen, the ones that may be left out among them. */
const chosenIn = (settings: Person['settings']): number =>
  Object.entries(settings).filter(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(NOBODY.settings[key as keyof Person['settings']]),
  ).length

/** How many jars no list of running ones shows. */
function hiddenIn(jars: Person['jars']) {
  const stories = jars.map(({ entries }) => jarStateOf(entries))
  return {
    finished: stories.filter((story) => story !== null && story.ended !== null).length,
    undone: stories.filter((story) => story === null).length,
  }
}

/** What a person has, as far as it can be counted before it is gone; copies and files only then. */
const storedOf = ({ jars, settings, nudges, shares }: Person) => ({
  jars: jars.length,
  ...hiddenIn(jars),
  entries: entriesOf({ jars }),
  settings: chosenIn(settings),
  reminders: nudges.length,
  shares: shares.filter(({ withdrawn }) => !withdrawn).length,
})

/** `2/7/1`: what would go, as the button says it that was offered for it. */
const tallyOf = ({ jars, entries, shares }: ReturnType<typeof storedOf>): string => `${jars}/${entries}/${shares}`

const tallyNow = async ({ store, userId }: Context): Promise<string> => tallyOf(storedOf(await store.read(userId)))

/** None where they cannot be read, which must keep nobody from being forgotten. */
async function jarsOf({ store, userId }: Context): Promise<Person['jars']> {
  try {
    return (await store.read(userId)).jars
  } catch (error) {
    if (error instanceof StorageError) return []
    throw error
  }
}

const said = (headline: Reply['headline'], data: Reply['data']): Reply => ({
  headline,
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions: [],
  data,
  kitchen: kitchenOf({}),
  visibility: 'confidential',
})

/** The running or done jar that a text names, and nothing where it is no jar's. */
function jarNamed(typed: string, jars: Person['jars']): string | null {
  return unlessRefused(() => jarStateOf(findJar(typed, jars).entries)?.name ?? null)
}

export const forgetCommand = defineCommand({
  ...signature('forget'),
  topic: 'you',
  async run({ jar, confirm: given }, context) {
    const { store, userId, forgetFiles, replies, talk, place } = context
    const confirm = given?.is ?? null
    const isChanged = confirm !== null && confirm.tally !== null && confirm.tally !== (await tallyNow(context))
    if (confirm?.isYes === true && jar === undefined && !isChanged) {
      const { finished, undone } = hiddenIn(await jarsOf(context))
      const shared = await sharesOf(context)
      const removed = await store.remove(userId)
      const files = (await forgetFiles?.()) ?? 0
      replies?.forget(userId)
      talk?.forget(userId)
      const notes = await withdrawAll(shared, context)
      const data = { erased: true, ...removed, files, shares: shared.length }
      const values = { ...removed, finished, undone, files }
      return { ...said({ group: 'headlines', key: 'forgotten', values }, data), notes }
    }
    const person = await store.read(userId)
    const stored = storedOf(person)
    const { jars, entries, shares } = stored
    const data = { erased: false, jars, entries, copies: null, files: null, shares }
    const name = jar === undefined ? null : jarNamed(jar.is, person.jars)
    if (name !== null) {
      const line = lineOf(call('jar discard', { jar: name }))
      return said({ group: 'headlines', key: 'forget_one_jar', values: { name, line } }, data)
    }
    const strayed: readonly Message<'notes'>[] =
      jar === undefined ? [] : [{ group: 'notes', key: 'forget_in_full', values: { typed: shown(jar.is) } }]
    if (confirm?.isYes === false) {
      return { ...said({ group: 'headlines', key: 'not_forgotten', values: undefined }, data), notes: strayed }
    }
    const posted: readonly Message<'notes'>[] =
      shares === 0 ? [] : [{ group: 'notes', key: 'forget_shares', values: { count: openPosts(person.shares).length } }]
    // Who types it has just read it; a button may be pressed a day later.
    const tally = place.kind === 'console' ? null : tallyOf(stored)
    return {
      ...said({ group: 'headlines', key: 'forget_ask', values: stored }, data),
      notes: [...(isChanged ? [note('forget_changed')] : []), ...posted, ...strayed, note('forget_not_one_jar')],
      actions: [
        {
          label: { group: 'actions', key: 'forget_all', values: undefined },
          call: call('forget', { confirm: { isYes: true, tally } }),
        },
      ],
    }
  },
})
