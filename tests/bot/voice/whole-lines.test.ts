import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { signatures } from '../../../bot/calls/signatures.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const EN = 'bot/text/en'
const OPTIONS = [...new Set(Object.values(signatures).flatMap(({ shape }) => Object.keys(shape)))].join('|')

/** A piece of a line: `country:Italy`, `Add strength:`, `leave out ready-by:`. */
const FRAGMENT = new RegExp(
  `(?<![\\w-])(?:${OPTIONS}):[^\\s]|(?:[Aa]dd|[Ll]eave(?: out)?|[Kk]eep|[Cc]hoose|in|after|before|with) (?:${OPTIONS}):`,
)

const files = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? files(join(folder, entry.name)) : [join(folder, entry.name)],
  )

/** What stands between quotation marks, without the code in it. */
const literals = (source: string): readonly string[] => {
  let text = source.replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '')
  for (let before = ''; before !== text; ) {
    before = text
    text = text.replaceAll(/\$\{[^{}`]*\}/g, '…').replaceAll(/\$\{[^{}]*\{[^{}]*\}[^{}]*\}/g, '…')
  }
  return (text.match(/'(?:[^'\\\n]|\\.)*'|`[^`]*`/g) ?? []).map((each) => each.slice(1, -1))
}

it('says whole lines, never an option alone', () => {
  const found = files(EN)
    // What the tour types is a script.
    .filter((path) => !path.endsWith('demo.ts'))
    .flatMap((path) => literals(readFileSync(path, 'utf8')).map((text) => ({ path, text })))
    .filter(({ text }) => !/(?:^|\s)\/[a-z]/.test(text) && FRAGMENT.test(text))
  expect(found).toEqual([])
})

/** Lines that lack something, have too much, or leave something open. */
const OPEN = [
  ['/serving pour:30 ml strength:30%', 'country:Italy'],
  ['/label strength:30% sweetness:250 g/L of:lemon', 'region:uk'],
  ['/keeping of:lemon', 'strength:30%'],
  ['/shopping', 'have:'],
  ['/plan of:10 lemons spirit:1 l 95% bottles:40 x 500 ml', 'strength:95%'],
  ['/plan of:60 g peppermint spirit:1 l 96%', 'steep-at:'],
  ['/adjust glass-water:5 ml glass:50 ml', 'jar:lemon'],
  ['/adjust jar:lemon glass-water:5 ml', 'glass:50 ml'],
  ['/adjust jar:lemon glass:50 ml', 'glass-water:5 ml'],
  ['/adjust jar:lemon strength:30% to-strength:25%', '/adjust jar:lemon to-strength:25%'],
  ['/syrup jar:lemon infusion:920 ml', '/syrup jar:lemon'],
  ['/plan of:10 lemons + 500 ml water spirit:1 l 95%', '/plan of:10 lemons spirit:1 l 95%'],
  ['/plan of:10 lemons + 300 g sugar spirit:1 l 95%', 'sugar:300 g'],
  ['/jar later lemon until:yesterday', 'until:tomorrow'],
  ['/plan of:lemon spirit:1 l 95% bottles:some', 'bottles:4 x 500 ml'],
  ['/adjust liqueur:1 l strength:30% sweetness:100 g/L to-strength:35%', 'spirit-strength:40%'],
  ['/syrup infusion:920 ml strength:82% to-sweetness:600 g/L ratio:1:2', 'ratio:2:1'],
] as const

it.each(OPEN)('offers a line that runs after %s', async (line, part) => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 20, 9), asker: newAsker() })
  await desk.run('/jar start lemon of:10 lemons spirit:1 l 95% when:2026-10-01')
  await desk.run('/jar strain lemon measured:930 ml when:2026-10-20')
  const text = (await desk.textOf(line)).replaceAll(/\n\s*/g, ' ')
  expect(text).toContain(part)
  const offered = text
    .split(/ (?=\/[a-z])/)
    .map((each) => each.match(/^\/[a-z][^•!?]*/)?.[0] ?? '')
    .find((each) => each.includes(part.replace(/^\/.*? /, '')))
  expect(offered, text).toBeDefined()
})
