import { expect, test } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { json, printed, reply } from '../commands-label/desk.ts'
import { flat } from '../flat.ts'

test('works the dose out for the spirit that was said, in pieces where they are counted', async () => {
  expect(flat(await printed('/botanical sloes spirit:70 cl gin'))).toContain(
    'use about 350 g (210 to 490) in 70 cl of gin, for',
  )
  expect(flat(await printed('/botanical lemon spirit:1 fifth vodka'))).toContain(
    'the peel of 9 lemons, in a fifth of vodka',
  )
  expect(flat(await printed('/botanical vanilla spirit:250 ml + 250 ml'))).toContain(
    'about 3 g (1 to 10), 1 vanilla pod, in 250 ml + 250 ml of spirit',
  )
  expect(flat(await printed('/botanical vanilla spirit:25 cl'))).toContain(', ½ vanilla pod, in 25 cl')
  // A chilli weighs what one does that is counted in a plan, of whatever size.
  expect(flat(await printed('/botanical fresh chilli'))).toContain('about 10 g (2 to 40), 1 ')
  // Nobody counts 250 sloes, nor a tenth of a nutmeg.
  expect(flat(await printed('/botanical nutmeg'))).not.toContain('nutmeg,')
  // 800 g at 40 % vol are 0.94805 kg/l, OIML R 22: 844 ml.
  expect((await json('/botanical cloves spirit:800 g 40%')).data).toMatchObject({ spiritMl: expect.closeTo(843.8, 0) })
})

test('plans with that spirit', async () => {
  const { actions } = await reply('/botanical sloes spirit:70 cl gin')
  expect(actions.map(({ call }) => lineOf(call!))).toEqual(['/plan of:sloe spirit:70 cl gin strength:40%'])
  // Basil wants 60 % vol or more, which no vodka has.
  const basil = async (spirit: string) =>
    (await reply(`/botanical basil spirit:${spirit}`)).actions.map(({ call }) => lineOf(call!))
  expect(await basil('70 cl vodka')).toEqual(['/plan of:basil spirit:70 cl vodka strength:40%'])
  expect(await basil('70 cl')).toEqual(['/plan of:basil spirit:70 cl strength:60%'])
})

test('asks of what, and how strong, where that is needed', async () => {
  expect(await printed('/botanical spirit:70 cl')).toContain('What goes in?')
  expect(await printed('/botanical sloes spirit:700 g')).toContain('How strong is it?')
})
