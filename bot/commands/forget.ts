import { z } from 'zod'
import { DomainError } from '../../core/domain-error.ts'
import { findJar } from '../../core/jar/find-jar.ts'
import { storyOf } from '../../core/jar/story.ts'
import { NOBODY, type Person } from '../../store/person.ts'
import { defineCommand } from '../chat/command.ts'
import type { Reply } from '../chat/reply.ts'
import { writeLine } from '../chat/write-line.ts'
import type { Message } from '../text/words.ts'
import { jarFields } from './jar/jar-fields.ts'
import { note } from './outcome-reply.ts'
import { planFields } from './plan-fields.ts'
import { openPosts, sharesOf, withdrawAll } from './share/withdraw-all.ts'
import { kitchenOf } from './typed-in.ts'

const SETTINGS = Object.keys(NOBODY.settings) as readonly (keyof Person['settings'])[]

/** What a person has, as far as it can be counted before it is gone; copies and files only then. */
const storedOf = ({ jars, settings, nudges, shares }: Person) => ({
  jars: jars.length,
  entries: jars.reduce((sum, { entries }) => sum + entries.length, 0),
  settings: SETTINGS.filter((key) => JSON.stringify(settings[key]) !== JSON.stringify(NOBODY.settings[key])).length,
  reminders: nudges.length,
  shares: shares.length,
})

const said = (headline: Reply['headline'], data: Reply['data']): Reply => ({
  headline,
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions: [],
  data,
  kitchen: kitchenOf({}),
})

/** The running or done jar that a text names, and nothing where it is no jar's. */
function jarNamed(typed: string, jars: Person['jars']): string | null {
  try {
    return storyOf(findJar(typed, jars).entries)?.name ?? null
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}

export const forgetCommand = defineCommand({
  path: 'forget',
  input: z.object({
    /** Takes whatever is typed without an option's name, so that a stray word confirms nothing. */
    jar: jarFields.jar.optional(),
    confirm: planFields.yesNo.optional(),
  }),
  async run({ jar, confirm }, context) {
    const { store, userId, forgetFiles } = context
    if (confirm?.is === true && jar === undefined) {
      const shared = await sharesOf(context)
      const removed = await store.remove(userId)
      const files = (await forgetFiles?.()) ?? 0
      const notes = await withdrawAll(shared, context)
      const values = { ...removed, files }
      const data = { erased: true, ...values, shares: shared.length }
      return { ...said({ group: 'headlines', key: 'forgotten', values }, data), notes }
    }
    const person = await store.read(userId)
    const stored = storedOf(person)
    const { jars, entries, shares } = stored
    const data = { erased: false, jars, entries, copies: null, files: null, shares }
    const name = jar === undefined ? null : jarNamed(jar.is, person.jars)
    if (name !== null) {
      const line = writeLine('jar discard', name)
      return said({ group: 'headlines', key: 'forget_one_jar', values: { name, line } }, data)
    }
    if (confirm?.is === false) return said({ group: 'headlines', key: 'not_forgotten', values: undefined }, data)
    const posted: readonly Message<'notes'>[] =
      shares === 0 ? [] : [{ group: 'notes', key: 'forget_shares', values: { count: openPosts(person.shares).length } }]
    return {
      ...said({ group: 'headlines', key: 'forget_ask', values: stored }, data),
      notes: [...posted, ...(jar === undefined ? [] : [note('forget_in_full')]), note('forget_not_one_jar')],
      actions: [{ label: { group: 'actions', key: 'forget_all', values: undefined }, line: '/forget confirm:yes' }],
    }
  },
})
