import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')

/** Tables of numbers or words, which may be longer than code. */
const TABLES: readonly string[] = [
  'bot/talk/handbook/asked-by-strangers.ts',
  'bot/talk/handbook/asked-otherwise.ts',
  'tests/talk/whom-asked.ts',
  'core/botanical/names/ambiguous-names.ts',
  'core/botanical/refuse/refused-names.ts',
  'core/botanical/catalogue/fruit.ts',
  'core/botanical/catalogue/herbs.ts',
  'core/botanical/catalogue/spices.ts',
  'core/botanical/refuse/refusal-rules.ts',
  'core/quantity/materials.ts',
  'core/recipe/code/plant-numbers.ts',
  'bot/calls/signatures.ts',
  'bot/talk/lexicon/english.ts',
  'bot/talk/lexicon/italian.ts',
  'bot/talk/lexicon/lexicon.ts',
  'bot/talk/reader/danger-asked.ts',
  'bot/talk/frames/compute-frames.ts',
  'bot/talk/frames/jar-frames.ts',
  'bot/talk/frames/symptoms.ts',
  'bot/talk/emergency/contacts.ts',
  'bot/talk/emergency/deed-words.ts',
  'bot/talk/emergency/harm-words.ts',
  'bot/talk/emergency/ordinary-words.ts',
  'bot/talk/handbook/asked-in-italian.ts',
]

const LONGEST = 200

/** What is said, and how, a file for each feature. */
const SENTENCES = /^bot\/text\/(?:[a-z]{2}|messages)\//
const LONGEST_OF_SENTENCES = 450

const sources = ['core', 'store', 'bot', 'tests']
  .flatMap((room) => {
    const entries = readdirSync(root).includes(room)
      ? readdirSync(join(root, room), { recursive: true, encoding: 'utf8' })
      : []
    return entries.map((entry) => join(room, entry))
  })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }))

const IMPORT = /^(?:import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm
const DYNAMIC = /\bimport\('([^']+)'\)/g

/** What a file imports, its own files by their path from the root. */
const importsOf = ({ path, text }: { path: string; text: string }) => {
  const named = [...text.matchAll(IMPORT)].map((match) => ({ isType: match[1] !== undefined, from: match[2]! }))
  const dynamic = [...text.matchAll(DYNAMIC)].map((match) => ({ isType: false, from: match[1]! }))
  return [...named, ...dynamic].map(({ isType, from }) => ({
    isType,
    target: from.startsWith('.') ? relative(root, join(root, dirname(path), from)) : from,
  }))
}

const room = (path: string): string => path.split('/')[0]!

const offences = (rooms: readonly string[], isOffence: (target: string) => boolean): string[] =>
  sources
    .filter(({ path }) => rooms.includes(room(path)))
    .flatMap((source) => importsOf(source).map(({ target }) => [source.path, target] as const))
    .filter(([, target]) => isOffence(target))
    .map(([path, target]) => `${path} imports ${target}`)

it('finds the sources and their imports', () => {
  expect(sources.length).toBeGreaterThan(20)
  const grammar = sources.find(({ path }) => path === 'bot/chat/grammar/grammar.ts')!
  expect(importsOf(grammar)).toContainEqual({ isType: true, target: 'bot/calls/invocation.ts' })
  expect(importsOf(grammar)).toContainEqual({ isType: false, target: 'bot/chat/grammar/nearest.ts' })
})

it('keeps core to itself: no other room, no package, nothing of Node', () => {
  expect(offences(['core'], (target) => room(target) !== 'core')).toEqual([])
})

it('keeps clock, chance and surroundings out of core', () => {
  const impure = /\bDate\.now|\bnew Date\(\s*\)|\bMath\.random|\bprocess\.|\bconsole\.|\bperformance\.|\bfetch\(/
  const found = sources.filter(({ path, text }) => room(path) === 'core' && impure.test(text))
  expect(found.map(({ path }) => path)).toEqual([])
})

it('asks for the time in main only', () => {
  const clock = /\bDate\.now|\bnew Date\(\s*\)|\bMath\.random/
  const found = sources.filter(({ path, text }) => ['bot', 'store'].includes(room(path)) && clock.test(text))
  expect(found.map(({ path }) => path)).toEqual(['bot/main.ts'])
})

it('lets the store know nothing of the bot, and nothing of the tests enter the product', () => {
  expect(offences(['store'], (target) => room(target) === 'bot')).toEqual([])
  expect(offences(['core', 'store', 'bot'], (target) => room(target) === 'tests')).toEqual([])
})

it('lets nobody outside the store know that it is a folder', () => {
  expect(offences(['bot'], (target) => target.startsWith('store/disk/'))).toEqual([])
})

it('keeps what commands, chat and texts are apart from the terminal', () => {
  const inner = /^bot\/(commands|chat|text)\//
  const found = offences(
    ['bot'],
    (target) => /^bot\/(terminal|demo|doctor|main|config)/.test(target) || target.startsWith('node:'),
  )
  expect(found.filter((offence) => inner.test(offence))).toEqual([])
})

/** Files that import one another in a circle, by those of their imports that count. */
function circlesOf(counts: (path: string, isType: boolean) => boolean): readonly string[] {
  const imported = new Map(
    sources.map((source) => [
      source.path,
      importsOf(source)
        .filter(({ isType }) => counts(source.path, isType))
        .map(({ target }) => target),
    ]),
  )
  const done = new Set<string>()
  const circles: string[] = []
  const visit = (path: string, trail: readonly string[]): void => {
    if (trail.includes(path)) circles.push([...trail.slice(trail.indexOf(path)), path].join(' → '))
    if (done.has(path) || trail.includes(path)) return
    for (const target of imported.get(path) ?? []) visit(target, [...trail, path])
    done.add(path)
  }
  for (const { path } of sources) visit(path, [])
  return circles
}

it('has no circle of imports', () => {
  expect(circlesOf((_, isType) => !isType)).toEqual([])
})

it('has no circle outside the tests, types included', () => {
  expect(circlesOf((path) => room(path) !== 'tests')).toEqual([])
})

it(`has no file of more than ${LONGEST} lines besides tables`, () => {
  const long = sources.filter(({ path, text }) => {
    const most = SENTENCES.test(path) ? LONGEST_OF_SENTENCES : LONGEST
    return !TABLES.includes(path) && text.split('\n').length > most + 1
  })
  expect(long.map(({ path }) => path)).toEqual([])
})

it('keeps the tables that no formatter keeps within 120 columns', () => {
  const tables = sources.filter(({ text }) => /^\/\/ biome-ignore format/m.test(text))
  expect(tables.length).toBeGreaterThan(10)
  for (const { path, text } of tables) {
    expect(
      text
        .split('\n')
        .filter((line) => line.length > 120)
        .map((line) => `${path}: ${line}`),
    ).toEqual([])
  }
})

it('reads each language from the list of languages only', () => {
  const language = /^bot\/text\/[a-z]{2}\//
  const found = sources
    .filter(({ path }) => path.startsWith('bot/'))
    .flatMap((source) => importsOf(source).map(({ target }) => ({ from: source.path, target })))
    .filter(({ from, target }) => language.test(target) && language.exec(from)?.[0] !== language.exec(target)?.[0])
  expect(found).toContainEqual({ from: 'bot/languages.ts', target: 'bot/text/en/index.ts' })
  expect(found.filter(({ from }) => from !== 'bot/languages.ts')).toEqual([])
})

it('lists every command', () => {
  const commands = sources.filter(
    ({ path, text }) => path.startsWith('bot/commands/') && /\bdefineCommand\(/.test(text),
  )
  const index = sources.find(({ path }) => path === 'bot/commands/index.ts')!
  const listed = importsOf(index).map(({ target }) => target)
  for (const { path } of commands) expect(listed).toContain(path)
})

it('gives every exported type a name of its own', () => {
  const places = new Map<string, string[]>()
  for (const { path, text } of sources.filter(({ path }) => room(path) !== 'tests'))
    for (const [, name] of text.matchAll(/^export (?:interface|type) (\w+)/gm))
      places.set(name!, [...(places.get(name!) ?? []), path])
  expect(places.size).toBeGreaterThan(300)
  // Each room's problems.ts adds to one interface.
  places.delete('Problems')
  expect([...places].filter(([, paths]) => new Set(paths).size > 1)).toEqual([])
})
