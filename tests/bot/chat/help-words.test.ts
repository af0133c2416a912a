import { expect, it } from 'vitest'
import { help } from '../../../bot/chat/run/help.ts'
import { en } from '../../../bot/text/en/index.ts'
import { commands } from '../test-desk.ts'

const pageOf = (line: string) => {
  const page = help(line, commands, { commands: en.commands, about: en.help.about })
  if (page === null || !page.ok) throw new Error(`no page: ${line}`)
  return page
}

const pathsOf = (line: string) => pageOf(line).entries.map(({ command }) => command)

/** What a word is known by: whether an example says it, and whether it has to be said. */
const rankIn = (word: string, { options, examples }: ReturnType<typeof pageOf>['entries'][number]) =>
  2 * Number(examples.some((line) => line.includes(`${word}:`))) +
  Number(options.some(({ name, required }) => name === word && required))

it.each(['water', 'all-in', 'rating', 'when'])(
  'shows by a word the commands of which it is an option, those first that say it in an example and need it: %s',
  (word) => {
    const page = pageOf(`/help ${word}`)
    const all = pageOf('/help all').entries.filter(({ options }) => options.some(({ name }) => name === word))
    expect(page.entries).toHaveLength(Math.min(3, all.length))
    const ranks = all.map((entry) => rankIn(word, entry)).toSorted((one, other) => other - one)
    expect(page.entries.map((entry) => rankIn(word, entry))).toEqual(ranks.slice(0, page.entries.length))
    expect(page.lines!.map(({ line }) => line)).toEqual(page.entries.map(({ examples }) => examples[0]))
    expect(page.first).toEqual({ count: 0, rest: `/help ${page.entries[0]!.command}` })
  },
)

it.each(['brix', '/brix', 'brix:'])(
  'shows what is said of a word with the mark of an option or a command too: %s',
  (word) => {
    expect(pageOf(`/help ${word}`)).toMatchObject({ first: { rest: '/help measure' } })
  },
)

it('sends on to the command of its first line, not to another with an option of that name', () => {
  expect(pageOf('/help freezer')).toMatchObject({ first: { rest: '/help settings' } })
  expect(pageOf('/help emergency').first).toBeUndefined()
})

it('tells every command to who asks for everything', () => {
  expect(pathsOf('/help everything')).toEqual(pathsOf('/help all'))
})

it('shows the commands whose name it is in, and no others that have it as an option', () => {
  expect(pathsOf('/help strain')).toEqual(['jar strain'])
  expect(pathsOf('/help start')).toEqual(['jar start'])
  expect(pathsOf('/help jar').every((path) => path.startsWith('jar '))).toBe(true)
})

it('knows words of the craft, also with a slip', () => {
  const { lines } = pageOf('/help sugar')
  expect(lines!.length).toBeGreaterThan(1)
  expect(pageOf('/help suger').lines).toEqual(lines)
})
