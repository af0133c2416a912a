import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { signatures } from '../../../bot/calls/signatures.ts'
import { lineTyped, shortLineTyped } from '../../../bot/calls/write-line.ts'

const FOLDER = join(import.meta.dirname, '..', '..', '..', 'bot', 'text', 'en')

/** The tour's lines are played, and every example of a command is run. */
const RUN = { files: ['demo.ts'], lists: /^\s*examples: \[[^\]]*\],$/gm } as const

const names = [...new Set(Object.values(signatures).flatMap(({ shape }) => Object.keys(shape)))]
const paths = Object.keys(signatures).toSorted((one, other) => other.length - one.length)
const BARE = new RegExp(`(?<![\\w/])/(?:${paths.join('|')}) (?:(?![\`'\\n]).)*?(?<![\\w-])(?:${names.join('|')}):`, 'g')

const bareIn = (source: string): readonly string[] =>
  source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(RUN.lists, '')
    .match(BARE) ?? []

it('finds a line that is written out with the name of an option', () => {
  expect(bareIn("'Shake it: /jar later lemon until:18:00'")).toHaveLength(1)
  expect(bareIn('`To take it down: /share withdraw:`')).toHaveLength(1)
  expect(bareIn("examples: ['/jar later lemon until:18:00'],")).toEqual([])
  expect(bareIn("'For one jar: /jar show and its name.'")).toEqual([])
})

const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.ts') && !RUN.files.includes(name as 'demo.ts'),
)

it('in a sentence every option is checked, so that a renamed one does not compile', () => {
  expect(files.length).toBeGreaterThan(40)
  const found = files.flatMap((name) =>
    bareIn(readFileSync(join(FOLDER, name), 'utf8')).map((line) => `${name}: ${line}`),
  )
  expect(found).toEqual([])
})

it('writes a line as it is typed', () => {
  expect(lineTyped('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' })).toBe(
    '/jar start lemon of:10 lemons spirit:1 l 95%',
  )
  expect(lineTyped('share', { withdraw: '' })).toBe('/share withdraw:')
  expect(shortLineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' })).toBe('/plan 10 lemons spirit:1 l 95%')
  // @ts-expect-error an option that the command does not have
  expect(lineTyped('share', { unshare: 'abc' })).toBe('/share unshare:abc')
})
