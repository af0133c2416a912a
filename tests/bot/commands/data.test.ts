import { describe, expect, test } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { ask, askAny, commands, faults, keysOf, run, textOf, UNSEEMLY } from './desk.ts'

/** The table of `data` in DEVELOPERS.md, “ask --json”. */
const OUTCOME = ['volumeMl', 'abvPercent', 'sugarGPerL', 'densityGPerMl', 'massG', 'freezesAtC', 'ethanolG']
/** What sweetens, and what it brings: no ± of their own. */
const SWEETENER = ['sweetener', 'sweetenerSugarsG', 'sweetenerWaterG']
const KEYS: Readonly<Record<string, readonly string[]>> = {
  mix: OUTCOME,
  blend: OUTCOME,
  dilute: [...OUTCOME, 'waterMl', 'waterG'],
  // infusionMl: besides the contract, what of the infusion to use where at-most: leaves some over.
  syrup: [...OUTCOME, 'waterMl', 'waterG', 'sugarG', 'syrupMl', 'syrupG', 'infusionMl'],
  adjust: [...OUTCOME, 'spiritMl', 'waterMl', 'waterG', 'sugarG'],
}

const withPlusMinus = (keys: readonly string[]) => keys.flatMap((key) => [key, `${key}PlusMinus`]).sort()

const examples = Object.keys(KEYS).flatMap((path) =>
  en.commands[path as keyof typeof en.commands].examples.map((line): [string, string] => [path, line]),
)

const MORE = [
  ['mix', '/mix sugar:500 g water:1 l'],
  ['mix', '/mix water:1 l'],
  ['mix', '/mix spirit:750 ml 75.5% + 375 ml 40% sugar:2 cups'],
  ['mix', '/mix spirit:790 g 95% water:1 l'],
  ['syrup', '/syrup 770 g strength:90.6% at 28 C to-strength:30% ratio:1:1'],
  ['syrup', '/syrup 930±5 ml strength:90% to-sweetness:rich ratio:1:1'],
  ['syrup', '/syrup 920 ml strength:90% to-strength:30% to-sweetness:250 g/L at-most:2 l'],
  ['syrup', '/syrup 920 ml strength:40% to-strength:40% to-sweetness:0'],
  ['dilute', '/dilute 750 ml 75.5% + 375 ml 96% to-strength:60%'],
  ['blend', '/blend 600 ml 47% 250 g/L + 300 ml'],
  ['adjust', '/adjust 1 l strength:25% sweetness:200 g/L to-strength:30% spirit-strength:95%'],
  ['adjust', '/adjust 1 l strength:35% to-strength:30%'],
]

describe.each([...examples, ...MORE])('%s: %s', async (path, line) => {
  const json = await ask(line!)
  const records: readonly object[] = json.data.styles ?? [json.data]

  test('runs, in words too', async () => {
    expect(json.command).toBe(path)
    expect(await textOf(line!)).not.toMatch(UNSEEMLY)
    expect(faults()).toEqual([])
  })

  test('holds what the contract says and nothing else', () => {
    for (const record of records) {
      const named = Object.keys(record).filter((key) => key !== 'key' && key !== 'line')
      const filler = path === 'syrup' ? ['filler'] : []
      const sweetener = KEYS[path!]!.includes('sugarG') ? [...SWEETENER, ...filler] : []
      expect(named.sort()).toEqual([...withPlusMinus(KEYS[path!]!), ...sweetener].sort())
    }
  })

  test('every number is a full double, no amount and no ± below nothing', () => {
    for (const record of records) {
      for (const [name, value] of Object.entries(record)) {
        if (name === 'key' || name === 'line' || name === 'sweetener' || name === 'filler') continue
        expect(typeof value, name).toBe('number')
        expect(Number.isFinite(value), name).toBe(true)
        if (name !== 'freezesAtC') expect(value, name).toBeGreaterThanOrEqual(0)
      }
    }
  })

  test('the JSON is the reply unrounded', async () => {
    const outcome = await run(line!)
    expect(outcome.ok && outcome.reply.data).toEqual(json.data)
  })
})

test('every command has an example that runs, and the JSON of a fault holds a code and a sentence', async () => {
  expect(Object.keys(en.commands).sort()).toEqual(commands.map(({ path }) => path).sort())
  for (const { path } of commands)
    expect(en.commands[path as keyof typeof en.commands].examples.length).toBeGreaterThan(0)
  expect((await askAny('/mix')).error).toMatchObject({ code: 'missing_option' })
})

describe('worked styles', () => {
  test('the infusion alone gives dry, everyday and rich at 30 % vol, each a command that runs to the same numbers', async () => {
    const { styles } = (await ask('/syrup infusion:920 ml strength:90%')).data
    expect(styles?.map(({ key }) => key)).toEqual(['dry', 'everyday', 'rich'])
    expect(styles?.map(({ sugarGPerL }) => Math.round(sugarGPerL!))).toEqual([120, 190, 270])
    for (const { key, line, ...numbers } of styles ?? []) expect((await ask(line)).data, key).toEqual(numbers)
  })

  test.each([
    '/syrup 1 l strength:12%',
    '/syrup 900 ml strength:41.3% to-sweetness:250',
    '/syrup 900 ml strength:90% ratio:0.8 at-most:1.5 l',
    '/syrup 2 cups strength:150 proof to-strength:28.5% at-most:1 quart',
    '/syrup 770±2 g strength:93.1±0.2% at 28 C',
  ])('%s offers commands that run to the same numbers', async (line) => {
    const { styles } = (await ask(line)).data
    expect(styles?.length).toBeGreaterThan(0)
    for (const { key, line: ready, ...numbers } of styles ?? []) {
      const again = (await ask(ready)).data
      for (const [name, value] of Object.entries(numbers)) {
        if (typeof value === 'string') expect(again[name]).toBe(value)
        if (typeof value !== 'number') continue
        expect(Math.abs(again[name]! - value), `${key} ${name}`).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(value)))
      }
    }
  })
})

test('cautions come worst first: what burns, then what spoils or bursts', async () => {
  const burns = ['flame', 'cool_first']
  const lines = [
    '/syrup 1 l strength:60% to-strength:10% to-sweetness:50',
    '/syrup 1 l strength:30% to-strength:14% to-sweetness:100',
    '/syrup 1 l strength:96% to-strength:40% to-sweetness:370',
    '/syrup 1 l strength:40% to-strength:31% ratio:3:1',
    '/adjust 1 l strength:35% sweetness:100 to-strength:13% to-sweetness:150',
    ...examples.map(([, line]) => line),
  ]
  for (const line of lines) {
    const keys = keysOf((await ask(line)).cautions)
    const burning = keys.filter((key) => burns.includes(key))
    expect(keys.slice(0, burning.length), line).toEqual(burning)
    expect(
      [...burning].sort((a, b) => burns.indexOf(a) - burns.indexOf(b)),
      line,
    ).toEqual(burning)
  }
})
