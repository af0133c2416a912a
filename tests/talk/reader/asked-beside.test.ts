import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talker, talkerFor } from './told.ts'

// The sentences are ours; no source.
describe('what is asked of how it is done, behind what is planned, is answered beside the plan', () => {
  it.each([
    ['got a kilo of cherries and a litre of brandy, do i need to stone them', 'stones_whole'],
    ['500g raspberries in 70 cl vodka, do i wash them first?', 'wash_fruit'],
    ['3 oranges and a litre of vodka, is it ok in a plastic tub?', 'plastic'],
    ['6 limes, 750 ml white rum, does the jar need to be in the dark?', 'steep_light'],
    ['un kilo di ciliegie e un litro di alcol a 95, tolgo i noccioli?', 'stones_whole'],
    ['can I do a kilo of currants in a bottle of rum and do I wash them?', 'wash_fruit'],
    ['1 kg of frozen blackberries and a litre of gin, can they go in frozen?', 'frozen_fruit'],
    ['1 kg damsons, 1 l gin, stones i take out or not', 'stones_whole'],
    ['half litre of 96 and a kilo of sour cherries. The stones I leave inside or no?', 'stones_whole'],
    ['pound of raspberries, 500 ml gin. oh and do i mash them or nah', 'crush_fruit'],
    ['2 lb pears and 750 ml brandy, or should I wait till theyre riper?', 'ripe_fruit'],
    ['8 limes and a quart of vodka. the peel or the juice goes in?', 'juice_or_zest'],
    ['6 oranges 70cl brandy, do i need to take the pith off', 'pith'],
    ['mezzo chilo di more e 70 cl di vodka, le schiaccio o no?', 'crush_fruit'],
    ['un chilo di fragole e un litro di alcol, vanno lavate?', 'wash_fruit'],
  ])('%s', async (text, entry) => {
    const { command, also } = await talker().say(text)
    expect(command).toBe('plan')
    expect(also).toMatchObject([{ command: 'handbook', data: { entry } }])
  })

  it.each([
    '10 lemons and a litre of vodka, would that be strong',
    '500 g sloes and 1 l gin, will it be ready for christmas',
    'eight plums, 70cl brandy. how long and how much sugar?',
  ])('the plan says it itself: %s', async (text) => {
    expect((await talker().say(text)).also).toEqual([])
  })
})

it('names what nothing answers', async () => {
  const { outcome } = await talker().hear('2 lb peaches and a fifth of bourbon, do i peel em or no')
  expect(JSON.stringify(outcome)).toContain('do i peel em or no')
})

describe('whether whole stones stay in is answered, and what is in them is refused', () => {
  it.each([
    'do the cherry stones come out first',
    'should i leave cherry stones in',
    'posso lasciare i noccioli di ciliegia dentro?',
    'are damson stones harmless while they stay whole?',
    'are uncracked plum stones ok in gin',
    'is it dangerous with whole cherry stones?',
    'i noccioli di prugna interi sono un problema?',
  ])('%s', async (text) => {
    expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'stones_whole' } })
  })

  it.each([
    'can i crack the cherry stones and use them',
    'can i leave cherry stones in if they are cracked',
    'apricot stones, can I eat them',
    'can i leave the cherry stones in for a year',
    'cherry stones in vodka',
    'are crushed plum stones safe if the rest are whole',
    'are whole apricot kernels ok?',
  ])('%s', async (text) => {
    expect((await talker().say(text)).code).toBe('refused')
  })
})

describe('an entry that explains all that is asked stands before a plan of the plant, and a jar that is only named', () => {
  const CASES: readonly (readonly [text: string, entry: string, shelf?: Shelf])[] = [
    ['what to do with the boozy raspberries left over after straining', 'spent_fruit', 'fair'],
    ['what do you do with the sloes after straining?', 'spent_fruit'],
    ['got ten bald lemons left, what do i do with them', 'peeled_fruit'],
    ['cosa ci faccio con i limoni senza buccia?', 'peeled_fruit'],
    ['are sauce bottles alright to use again?', 'reuse_bottles'],
    ['vanno bene le bottiglie della passata?', 'reuse_bottles'],
    ['dopo aperta, entro quando va consumata?', 'keep_opened'],
    ['can hot syrup go straight into the spirit', 'cool_syrup'],
  ]
  it.each(CASES.map(([text, entry, shelf]) => ({ text, entry, shelf })))('$text', async ({ text, entry, shelf }) => {
    const told = await (await talkerFor({ after: null, ...(shelf && { shelf }) })).say(text)
    expect(told).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0 })
  })

  it.each([
    ['what can i do with 10 lemons and a litre of vodka', '/plan of:10 lemons spirit:1 litre vodka 40%'],
    ['how much ginger per litre', '/botanical of:ginger'],
  ])('and before nothing that amounts or doses are asked of: %s', async (text, read) => {
    expect((await talker().say(text)).read).toBe(read)
  })
})

it.each([
  ['how long does limoncello keep?', 'keep_time'],
  ['quanto dura il nocino?', 'keep_time'],
  ['how long does sloe gin last once opened?', 'keep_opened'],
  ['how long does cream limoncello keep', 'keep_cream'],
])('is asked how long a drink keeps, not how long its plant steeps: %s', async (text, entry) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry } })
})

it.each([
  ['it turned to milk when the syrup went in', 'cloudy_on_mixing'],
  ['era limpido, ci metto lo sciroppo e subito è latte', 'cloudy_on_mixing'],
  ['mine turned cloudy the second the syrup touched it', 'cloudy_on_mixing'],
])('hears a likeness to milk as a cloud: %s', async (text, symptom) => {
  expect((await talker().say(text)).data).toMatchObject({ symptom })
})
