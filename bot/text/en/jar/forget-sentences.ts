import { listed } from '../phrases.ts'

const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`)

interface Stored {
  readonly jars: number
  readonly entries: number
}

const jarsText = ({ jars, entries }: Stored): string =>
  jars === 0 ? 'no jar' : `${counted(jars, 'jar', 'jars')} with ${counted(entries, 'entry', 'entries')}`

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
    forget_in_full: () => 'Only /forget confirm:yes, typed in full, erases.',
    forget_not_one_jar: () => 'To be rid of one jar only, type /jar discard and its name; it stays in /notebook.',
  },
  actions: {
    forget_all: () => 'Erase everything',
  },
}
