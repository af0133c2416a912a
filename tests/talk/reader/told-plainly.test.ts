import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const say = async (text: string, shelf?: Shelf) => (await talkerFor({ after: null, ...(shelf && { shelf }) })).say(text)

it.each([
  ['12 g of sage in 1 litre of vodka', '/plan of:12 g sage spirit:1 litre vodka 40%'],
  ['40 g menta in un litro di grappa', '/plan of:40 g menta spirit:1 litro grappa 40%'],
  ['bay 8 g in 1 litre of gin', '/plan of:8 g bay spirit:1 litre gin 40%'],
  ['alloro 10 g in 1 litro', '/botanical of:alloro'],
])('%s: what is weighed out is a plant', async (text, read) => {
  expect(await say(text)).toMatchObject({ read, recorded: 0 })
})

it.each([
  ['mint for 5 hours', { days: '5 hours' }],
  ['basil in vodka for 3 hours', { days: '3 hours' }],
  ['ginger for 4 days', { days: '4 days' }],
  ['20 limoni per 2 settimane in un litro di alcol', { days: '2 settimane' }],
])('%s: that long it lies there', async (text, options) => {
  const { call } = await say(text)
  expect(call?.options).toMatchObject(options)
  expect(call?.options).not.toHaveProperty('ready-by')
})

it.each<[Shelf, string, string, number]>([
  ['fair', 'raspberry 4/5, sloe maybe a 2', '/jar taste raspberry rating:4 + /jar taste sloe rating:2', 2],
  ['fair', 'tasted the sloe 3 and the raspberry 4', '/jar taste sloe rating:3 + /jar taste raspberry rating:4', 2],
  ['lemon_ginger', 'the ginger not the lemon got its shake', '/jar shake ginger', 1],
  ['lemon', 'could you call the lemon jar frost from now on', '/jar rename lemon to:frost', 1],
  ['fair', 'can you nudge me about the sloe on friday?', '/jar later sloe until:friday', 1],
  ['fair', 'could you shake the sloe', '/jar show sloe', 0],
  ['fair', 'sloe not shaken', '/jar shake sloe', 0],
  ['fair', 'which is better, raspberry 5/5 or sloe 3/5', '/jar show raspberry', 0],
  ['fair', 'export my notebook as csv', '/notebook export:csv', 0],
  ['fair', 'back up my notebook', '/notebook export:json', 0],
  ['fair', 'esporta il quaderno', '/notebook export:json', 0],
])('of %s, %s: %s', async (shelf, text, read, recorded) => {
  const told = await say(text, shelf)
  expect([told.read, ...told.also.map((each) => each.read)].join(' + ')).toBe(read)
  expect(told.recorded).toBe(recorded)
})
