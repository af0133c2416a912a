import { describe, expect, it } from 'vitest'
import { bottlesToldIn } from '../../../bot/talk/reader/bottles-gone.ts'
import { talkerFor } from './told.ts'

const onBottled = () => talkerFor({ after: null, shelf: 'lemon_bottled' })

describe('bottles that went are all counted', () => {
  it.each([
    ['gave Bea one and Theo two', 3, 0],
    ['gave one away', 1, 0],
    ['gave one to the baker and two to my aunt', 3, 0],
    ['gave Bea and Theo one each', 2, 0],
    ['gave one each to Bea, Theo and my aunt', 3, 0],
    ['two bottles away and I opened one myself', 2, 1],
    ['drank one and gave the neighbours two', 2, 1],
    ['three given away, one drunk', 3, 1],
    ['I’ve handed out four', 4, 0],
    ['gave one each to Bea and Otto', 2, 0],
    ['One each to Otto and Bea', 2, 0],
    ['gave otto two and drank one', 2, 1],
    ['two apiece to Otto, my aunt and the baker', 6, 0],
    ['ne ho regalate otto', 8, 0],
    ['una bottiglia l’abbiamo bevuta', 0, 1],
    ['due le ho regalate alla zia', 2, 0],
    ['tre bottiglie le abbiamo già aperte', 0, 3],
    ["una l'ho regalata e una l'abbiamo bevuta", 1, 1],
    ['regalate otto bottiglie al coro', 8, 0],
    ['gave a couple of bottles to the choir', 2, 0],
    ['ho regalato una bottiglia a Bea e due a Theo', 3, 0],
    ['ne ho regalata una e bevute due', 1, 2],
  ])('%s: %i given, %i opened', (text, given, opened) => {
    expect(bottlesToldIn(text)).toMatchObject({ given, opened })
  })

  it.each([
    'gave it a good shake',
    'gave the jar one stir',
    'opened the jar',
    'drank a glass',
    'gave my brother the recipe',
    'gave up',
  ])('%s: of no bottles', (text) => {
    expect(bottlesToldIn(text)).toBeNull()
  })

  it('writes down both of what one sentence tells', async () => {
    const told = await (await onBottled()).say('gave my aunt one and opened one')
    expect(told).toMatchObject({ command: 'bottles', call: { options: { given: '1' } } })
    expect(told.also).toMatchObject([{ call: { path: 'bottles', options: { opened: '1' } } }])
  })

  it.each([
    ['drank half', 'opened'],
    ['gave half away', 'given'],
  ])('%s: asks how many bottles', async (text, option) => {
    const told = await (await onBottled()).say(text)
    expect(told).toMatchObject({ command: 'bottles', code: 'question', recorded: 0 })
    const { outcome } = await (await onBottled()).hear(text)
    expect(JSON.stringify(outcome)).toContain(`${option}:1`)
  })
})
