import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'
import { flat } from '../flat.ts'

async function withJar() {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  return desk
}

it.each([
  ['a bag of sugar', 'have:500 g sugar'],
  ['some sugar', 'have:500 g sugar'],
  ['2 bottles of 500 ml + a jar of honey', 'have:2 bottles of 500 ml + 500 g honey'],
  ['un pacco di zucchero', 'have:500 g sugar'],
])('asks how much is in %s, with a line that runs', async (have, line) => {
  const desk = await withJar()
  const { message } = await desk.refused(`/shopping have:${have}`)
  expect(flat(message)).toContain(`/shopping ${line}`)
  expect((await desk.anyOf(`/shopping ${line}`)).error).toBeUndefined()
})

it.each([
  'a jar',
  'a 1.5 l jar',
  '4 bottles of 500 ml',
  'a bottle',
  'sugar',
  '1 kg sugar',
  'a bottle of 500 ml',
  'muslin',
])('takes %s as before', async (have) => {
  const desk = await withJar()
  expect((await desk.anyOf(`/shopping have:${have}`)).error).toBeUndefined()
})
