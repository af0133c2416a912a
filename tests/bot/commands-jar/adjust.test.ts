import { expect, it, test } from 'vitest'
import { jarDesk, LEMON, numberIn } from './desk.ts'

/** A lemon liqueur of 30 % vol and 250 g/L, two weeks old. */
const made = async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask(LEMON)
  desk.at('2026-10-20')
  await desk.ask('/jar strain lemon measured:930 ml strength:87%')
  await desk.ask('/jar sweeten lemon water:1.46 l sugar:660 g')
  desk.at('2026-11-05')
  return desk
}

const doneIn = (text: string): string => /\/jar add .*/.exec(text)![0]

test.each([
  ['to-strength:26%', 26, null],
  ['to-strength:35%', 35, null],
  ['to-sweetness:180 g/L', 29.6, 180],
  ['to-strength:28% to-sweetness:200 g/L', 28, 200],
] as const)('brings a jar to %s, and what is recorded then is that', async (wish, abvPercent, sugarGPerL) => {
  const desk = await made()
  const line = `/adjust jar:lemon ${wish}`
  const asked = await desk.ask(line)
  const wanted = sugarGPerL ?? numberIn(await desk.ask('/jar show lemon'), 'sugarGPerL')
  expect(numberIn(asked, 'abvPercent')).toBeCloseTo(abvPercent, 0)
  const recorded = await desk.ask(doneIn(await desk.textOf(line)))
  // Amounts that a jug and a scale can tell, so not to the last digit.
  expect(numberIn(recorded, 'abvPercent')).toBeCloseTo(abvPercent, 0)
  expect(Math.abs(numberIn(recorded, 'sugarGPerL') - wanted)).toBeLessThan(2)
  const events = recorded.data.events as readonly { readonly kind: string }[]
  expect(events.filter(({ kind }) => kind === 'added')).toHaveLength(1)
})

it('is undone in one step', async () => {
  const desk = await made()
  const before = await desk.ask('/jar show lemon')
  await desk.ask(doneIn(await desk.textOf('/adjust jar:lemon to-strength:26%')))
  const after = await desk.ask('/jar undo lemon')
  expect(numberIn(after, 'volumeMl')).toBe(numberIn(before, 'volumeMl'))
})

it('says which bottles it makes, a glass to try first, and by which spirit it went', async () => {
  const text = await (await made()).textOf('/adjust jar:lemon to-strength:35%')
  expect(text).toMatch(/Makes \d bottles of 500 ml/)
  expect(text).toMatch(/Try it first: .* in 50 ml of it\./)
  expect(text).toContain('I’ve gone by 95 % spirit.')
  expect(await (await made()).textOf('/adjust jar:lemon to-strength:35% spirit-strength:60%')).not.toContain('gone by')
})

it('takes what pleased in a glass for all of the jar', async () => {
  const desk = await made()
  const volumeMl = numberIn(await desk.ask('/jar show lemon'), 'volumeMl')
  const { data } = await desk.ask('/adjust jar:lemon glass:50 ml glass-sugar:2 g glass-water:3 ml')
  expect(data.sugarG).toBeCloseTo((2 * volumeMl) / 50, 6)
  expect(data.waterMl).toBeCloseTo((3 * volumeMl) / 50, 6)
  const spirit = await desk.ask('/adjust jar:lemon glass:100 ml glass-spirit:10 ml vodka 40%')
  expect(spirit.data.spiritMl).toBeCloseTo(volumeMl / 10, 6)
})

it('adds nothing where a jug could not tell', async () => {
  const desk = await made()
  const { abvPercent } = (await desk.ask('/jar show lemon')).data
  const text = await desk.textOf(`/adjust jar:lemon to-strength:${Number(abvPercent).toFixed(2)}%`)
  expect(text).toMatch(/nothing to add/i)
  expect(text).not.toContain('/jar add')
})

test.each([
  ['/adjust jar:lemon', 'What should lemon become? For example: /adjust jar:lemon to-strength:30%'],
  [
    '/adjust jar:lemon glass:50 ml',
    'What did you stir into the glass: sugar, water or spirit? For example: /adjust jar:lemon glass:50 ml glass-sugar:4 g',
  ],
  [
    '/adjust jar:lemon glass-sugar:4 g',
    'How much was in the glass? For example: /adjust jar:lemon glass-sugar:4 g glass:50 ml',
  ],
  [
    '/adjust jar:lemon to-strength:20% glass:50 ml glass-sugar:4 g',
    'The glass already tells me what you want. Type: /adjust jar:lemon glass:50 ml glass-sugar:4 g',
  ],
  [
    '/adjust jar:lemon strength:30% to-strength:20%',
    'The jar already tells me what there is. Type: /adjust jar:lemon to-strength:20%',
  ],
  [
    '/adjust glass:50 ml glass-sugar:4 g',
    'Which jar was in that glass? For example: /adjust glass:50 ml glass-sugar:4 g jar:lemon',
  ],
])('asks one thing back of %s', async (line, message) => {
  expect((await (await made()).refused(line)).message).toBe(message)
})

it('does not adjust what still steeps', async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask(LEMON)
  expect((await desk.refused('/adjust jar:lemon to-strength:30%')).code).toBe('wrong_stage')
})
