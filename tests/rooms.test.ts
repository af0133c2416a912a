import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')

/**
 * All rooms (folders), the lowest first. A file imports from its own room and from lower tiers only, types included:
 * rooms of one tier don't borrow from each other, so nothing goes in a circle.
 */
const TIERS: readonly (readonly string[])[] = [
  ['core'],
  ['core/spelling'],
  ['core/quantity'],
  ['core/quantity/measured'],
  ['core/liquid'],
  ['core/quantity/read'],
  ['core/quantity/said'],
  ['core/quantity/time', 'core/quantity/write', 'core/liquid/measure'],
  ['core/botanical/evidence', 'core/botanical/words'],
  ['core/botanical'],
  ['core/botanical/limits', 'core/botanical/foods'],
  ['core/botanical/catalogue'],
  ['core/botanical/names'],
  ['core/botanical/spirit'],
  ['core/botanical/refuse'],
  ['core/botanical/drink', 'core/botanical/find'],
  ['core/recipe'],
  ['core/recipe/solve', 'core/label'],
  ['core/recipe/plan'],
  ['core/recipe/code'],
  ['core/jar/entry'],
  ['core/jar/state'],
  ['core/jar/record', 'core/jar/limits'],
  ['core/jar/pour'],
  ['core/jar/tasks', 'core/trouble', 'core/shopping'],
  ['core/cost'],
  ['store'],
  ['store/schema'],
  ['store/memory'],
  ['store/disk'],
  ['store/open'],
  ['bot/calls'],
  ['bot/talk/emergency', 'bot/talk/lexicon'],
  ['bot/talk/bits'],
  ['bot/talk/frames'],
  ['bot/talk/memory'],
  ['bot/talk/household'],
  ['bot/talk/hunch'],
  ['bot/talk/reader'],
  ['bot/text/messages'],
  ['bot/text'],
  ['bot/text/en/handbook'],
  ['bot/text/en', 'bot/talk/handbook'],
  ['bot/chat'],
  ['bot/commands/options'],
  ['bot/chat/grammar'],
  ['bot/picture/draw'],
  ['bot/picture/render'],
  ['bot/picture/card', 'bot/picture/shelf', 'bot/picture/tag', 'bot/picture/label'],
  ['bot/commands/reply'],
  ['bot/commands/plan', 'bot/commands/plants', 'bot/commands/label'],
  ['bot/commands/jar/known'],
  ['bot/commands/jar/step', 'bot/commands/calculate'],
  ['bot/commands/share'],
  [
    'bot/commands/jar/record',
    'bot/commands/notebook-file',
    'bot/commands/measure',
    'bot/commands/trouble',
    'bot/commands/person',
  ],
  ['bot/commands/shopping'],
  ['bot/commands/jar/amend'],
  ['bot/commands/jar/view'],
  ['bot/commands'],
  ['bot/chat/run'],
  ['bot/chat/hear'],
  ['bot/reminders'],
  ['bot/terminal/files', 'bot/terminal/show', 'bot/discord/rest', 'bot/discord/buttons'],
  ['bot/terminal/chat', 'bot/discord/show'],
  ['bot/terminal/ask', 'bot/discord/forms', 'bot/discord/suggest'],
  ['bot/discord/nudges'],
  ['bot/discord/answer'],
  ['bot/discord/receive'],
  ['bot/discord/connect', 'bot/doctor', 'bot/demo'],
  ['bot'],
]

const IMPORT = /^(?:import|export)\s(?:[^'";]*?\sfrom\s+)?'(\.[^']+)'|\bimport\('(\.[^']+)'\)/gm

const sources = ['core', 'store', 'bot'].flatMap((top) =>
  readdirSync(join(root, top), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(top, path)),
)

const tierOf = (room: string): number => TIERS.findIndex((tier) => tier.includes(room))

const borrowed = sources.flatMap((path) =>
  [...readFileSync(join(root, path), 'utf8').matchAll(IMPORT)].flatMap((match) => {
    const target = relative(root, join(root, dirname(path), (match[1] ?? match[2])!))
    const [from, to] = [dirname(path), dirname(target)]
    return from === to || !target.endsWith('.ts') ? [] : [{ path, target, from, to }]
  }),
)

it('ranks every room, and no room that is gone', () => {
  expect([...new Set(sources.map((path) => dirname(path)))].sort()).toEqual(TIERS.flat().sort())
})

it('lets a room import from lower tiers only', () => {
  const offences = new Set(
    borrowed.filter(({ from, to }) => tierOf(to) >= tierOf(from)).map(({ from, to }) => `${from} → ${to}`),
  )
  expect([...offences]).toEqual([])
})

const texts = new Map(
  [
    ...sources,
    ...readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .map((path) => join('tests', path)),
  ].map((path) => [path, readFileSync(join(root, path), 'utf8')]),
)

it('exports no value that no other file names', () => {
  const filesWith = new Map<string, number>()
  for (const text of texts.values()) {
    for (const word of new Set(text.match(/\w+/g))) filesWith.set(word, (filesWith.get(word) ?? 0) + 1)
  }
  const exported = /^export (?:async )?(?:const|function\*?|class) (\w+)/gm
  const unread = sources.flatMap((path) =>
    [...texts.get(path)!.matchAll(exported)]
      .filter(([, name]) => filesWith.get(name!) === 1)
      .map(([, name]) => `${path} exports ${name}`),
  )
  expect(unread).toEqual([])
})
