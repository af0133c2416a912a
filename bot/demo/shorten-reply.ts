import type { Reply } from '../chat/reply.ts'

/** Nothing in it is old. */
const ALWAYS_WHOLE: readonly string[] = ['jar list', 'notebook']
/** What is new in the others stands in their headline. */
const WHOLE_ONCE: readonly string[] = ['nudge', 'jar start', 'jar strain', 'jar sweeten']
/** Long, and explained elsewhere. */
const HEADLINE_ONLY: readonly string[] = ['plan', 'reminders', 'syrup']

/** As it is said, whatever its numbers. */
const saidOf = ({ key, values }: { readonly key: string; readonly values: unknown }): string =>
  `${key} ${JSON.stringify(values, (_, value: unknown) => (typeof value === 'number' ? null : value))}`

export interface Brief {
  readonly reply: Reply
  readonly isWhole: boolean
}

/** Every reply as it is given. */
export const asItIs = (reply: Reply): Brief => ({ reply, isWhole: true })

/**
 * Shortens what a newcomer has seen: of most replies only the answer is shown, what comes next, and the notes and cautions
 * that were not said before. `kind`: the command, or `nudge`.
 */
export function brevity(): (reply: Reply, kind: string) => Brief {
  const seen = new Set<string>()
  const isNews = (name: string): boolean => {
    const isNew = !seen.has(name)
    seen.add(name)
    return isNew
  }
  return (reply, kind) => {
    const brief = { ...reply, sure: [], actions: [] }
    if (HEADLINE_ONLY.includes(kind)) {
      return { reply: { ...brief, table: [], notes: [], cautions: [] }, isWhole: false }
    }
    const notes = reply.notes.filter((note) => isNews(saidOf(note)))
    const cautions = reply.cautions.filter((caution) => isNews(saidOf(caution)))
    if (ALWAYS_WHOLE.includes(kind) || (WHOLE_ONCE.includes(kind) && isNews(kind))) return { reply, isWhole: true }
    const table = reply.table.filter(({ label }) => label.key === 'jar_next')
    return { reply: { ...brief, table, notes, cautions }, isWhole: false }
  }
}
