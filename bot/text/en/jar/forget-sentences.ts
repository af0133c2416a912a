import { listed } from '../phrases.ts'

const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`)

interface Stored {
  /** All of them. */
  readonly jars: number
  /** Of these emptied or thrown away. */
  readonly finished: number
  /** Of these no list shows: their start was taken back. */
  readonly undone: number
  readonly entries: number
}

/** `2 jars (and 1 in the notebook, 1 taken back) with 14 entries`. */
function jarsText({ jars, finished, undone, entries }: Stored): string {
  if (jars === 0) return 'no jar'
  const running = jars - finished - undone
  const others = [
    ...(finished > 0 ? [`${finished} in the notebook`] : []),
    ...(undone > 0 ? [`${undone} taken back`] : []),
  ].join(', ')
  const shown = running === 0 ? 'no running jar' : counted(running, 'jar', 'jars')
  const more = others === '' ? '' : ` (${running === 0 ? 'but' : 'and'} ${others})`
  return `${shown}${more} with ${counted(entries, 'entry', 'entries')}`
}

/** What `/forget` says. */
export const forgetSentences = {
  headlines: {
    forget_ask: (
      values: Stored & { readonly settings: number; readonly reminders: number; readonly shares: number },
    ) => {
      const parts = [
        jarsText(values),
        ...(values.settings > 0 ? [counted(values.settings, 'setting', 'settings')] : []),
        ...(values.reminders > 0 ? [counted(values.reminders, 'waiting reminder', 'waiting reminders')] : []),
        ...(values.shares > 0 ? [counted(values.shares, 'share', 'shares')] : []),
        'every copy of them, and every file that I made for you here',
      ]
      return `This would erase for good all that I keep about you: ${listed(parts)}. Nothing is erased yet.`
    },
    forgotten: (values: Stored & { readonly copies: number; readonly files: number }) => {
      const copies = values.copies === 0 ? 'there were no copies' : `${counted(values.copies, 'copy', 'copies')} too`
      const files = values.files === 0 ? '' : `, and ${counted(values.files, 'file', 'files')} that I had saved for you`
      return `Erased: ${jarsText(values)}, and your settings; ${copies}${files}. I keep nothing about you any more.`
    },
    forget_one_jar: ({ name, line }: { readonly name: string; readonly line: string }) =>
      `${name} is one jar, and /forget is for everything: ${line} throws that one away. Nothing is erased.`,
    not_forgotten: () => 'Nothing was erased.',
  },
  notes: {
    forget_changed: () =>
      'That button named something else than you have now, so it erased nothing; this is what would go.',
    forget_in_full: ({ typed }: { readonly typed: string }) =>
      `“${typed}” erases nothing. Only /forget confirm:yes, typed in full, erases.`,
    forget_not_one_jar: () => 'To be rid of one jar only, type /jar discard and its name; it stays in /notebook.',
  },
  actions: {
    forget_all: () => 'Erase everything',
  },
}
