import { expect, it } from 'vitest'
import { talker } from './told.ts'

const DAMSONS = '/jar start damsons of:500 g damsons spirit:1 l 60% when:2026-10-01'
const BOTTLED = [
  DAMSONS,
  '/jar strain damsons measured:970 ml when:2026-11-01',
  '/jar bottle damsons bottles:4 x 200 ml when:2026-11-02',
]

async function after(...lines: readonly string[]) {
  const maker = talker()
  for (const line of lines) await maker.hear(line)
  return maker
}

it.each([
  'drank a glass',
  'we had a small glass of the damsons last night',
  'my sister drank a glass',
  'bevuto un bicchierino',
])('%s: asks how it was, and calls nobody', async (line) => {
  const { command, code } = await (await after(...BOTTLED)).say(line)
  expect([command, code]).toEqual(['jar taste', 'question'])
})

it.each(['my little boy drank a glass', 'drank a glass and feel sick'])('%s: is an emergency', async (line) => {
  expect((await (await after(...BOTTLED)).say(line)).command).toBe('emergency')
})

it('takes no glass of a jar with mould for a taste', async () => {
  const maker = await after(DAMSONS, '/trouble mould jar:damsons yes:something grows')
  expect((await maker.say('we drank a glass')).command).not.toBe('jar taste')
})

it.each([
  ['opened one', '1'],
  ['uncorked two of the damsons', '2'],
  ['ho aperto due bottiglie', '2'],
])('%s: counts %s', async (line, count) => {
  expect((await (await after(...BOTTLED)).say(line)).read).toBe(`/bottles damsons opened:${count}`)
})

it.each([
  ['8 limes and half a litre of vodka, without any sugar', true],
  ['8 limes and half a litre of vodka, we don’t want sugar', true],
  ['8 lime e mezzo litro di vodka, senza zucchero', true],
  ['8 limes and half a litre of vodka', false],
])('%s: is planned without sugar: %s', async (line, isNone) => {
  const { read } = await talker().say(line)
  expect(read?.endsWith('to-sweetness:0 g/L')).toBe(isNone)
})

it('keeps that what was strained is to stay without sugar', async () => {
  const maker = await after(DAMSONS, '/jar strain damsons measured:970 ml')
  const { read, recorded } = await maker.say('I’d rather not add any sugar')
  expect([read, recorded]).toEqual(['/jar note damsons note:no sugar', 1])
})

it('asks for the bottles where it is only said that none went in', async () => {
  const maker = await after(DAMSONS, '/jar strain damsons measured:970 ml')
  const { command, code, recorded } = await maker.say('I didn’t put any sugar in')
  expect([command, code, recorded]).toEqual(['jar bottle', 'question', 0])
})

it.each([
  ['stirred in a splash of agave syrup, about 40 ml', '/jar sweeten damsons sugar:40 ml agave syrup'],
  ['added a little honey (2 tablespoons)', '/jar sweeten damsons sugar:2 tablespoons honey'],
  ['poured in a good dash of gin, maybe 30 ml', '/jar add damsons spirit:30 ml gin 40%'],
])('%s', async (line, read) => {
  const maker = await after(DAMSONS, '/jar strain damsons measured:970 ml')
  expect((await maker.say(line)).read).toBe(read)
})

it.each([
  ['/jar sweeten damsons sugar:280 ml', 'no, half a mug', '/jar correct damsons sugar:140 ml'],
  ['/jar strain damsons measured:1.1 l', 'sorry, nearly a wine bottle', '/jar correct damsons measured:700 ml'],
])('%s, %s: puts it right', async (step, line, read) => {
  const strained = step.includes('strain') ? [] : ['/jar strain damsons measured:970 ml']
  expect((await (await after(DAMSONS, ...strained, step)).say(line)).read).toBe(read)
})

it.each([
  ['start it tomorrow', 'start:tomorrow'],
  ['we’ll begin it in May', 'start:1 may'],
  ['comincio domani', 'start:tomorrow'],
])('%s: begins nothing before its day', async (line, option) => {
  const maker = await after('/plan of:8 limes spirit:1 l vodka 40%')
  const { read, recorded } = await maker.say(line)
  expect(read).toContain(option)
  expect(recorded).toBe(0)
})
