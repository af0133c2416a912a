import { expect, it } from 'vitest'
import { swapsMended } from '../../../bot/chat/hear/swaps-mended.ts'
import { english } from '../../../bot/talk/lexicon/english.ts'
import { italian } from '../../../bot/talk/lexicon/italian.ts'
import { en } from '../../../bot/text/en/index.ts'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const vocabulary = { lexicons: [english, italian], handbook: en.handbook, names: new Set(['grnadma']) }

it.each<[text: string, shelf: Shelf | undefined, told: object]>([
  ['6 leomns and half a litre of 95%', undefined, { read: '/plan of:6 lemons spirit:0.5 litre 95%' }],
  ['600 g albioccche e un litro di grappa', undefined, { read: '/plan of:600 g albicocche spirit:1 litro grappa 40%' }],
  ['shook the ginger yesetrday', 'lemon_ginger', { read: '/jar shake ginger when:yesterday', recorded: 1 }],
  ['nudge me about the sloe in a forntight', 'fair', { read: '/jar later sloe until:in 2 weeks' }],
  ['is hnoey ok instead of sugar', undefined, { command: 'handbook', data: { entry: 'honey' } }],
  ['il filtro è intsaato', undefined, { command: 'trouble' }],
  ['is icing sugar alirght', undefined, { command: 'handbook' }],
  ['diigtalis leaves and vodka', undefined, { code: 'refused' }],
  ['500 ml of metahnol and 5 lemons', undefined, { code: 'refused' }],
])('%s: two letters that changed places are put right', async (text, shelf, told) => {
  expect(await (await talkerFor({ after: null, ...(shelf && { shelf }) })).say(text)).toMatchObject(told)
})

it.each([
  // Words of every day that stand for themselves.
  'saliva on the soles of my boots',
  'pesato in un vaso di petti',
  // Known as they are.
  'sloes, damsons and plums',
  // A jar's own name.
  'grnadma',
  // Spruce or spurge: what may be a slip of what is refused is asked about.
  'spurce tips',
  // Short words have too many neighbours.
  'teh jsut',
])('%s: stays as it was typed', (text) => {
  expect(swapsMended(text, vocabulary)).toBe(text)
})

it('never plans spruce where spurge may be meant', async () => {
  const told = await (await talkerFor({ after: null })).say('50 g spurce in a litre of vodka')
  expect({ ...told, isPlan: told.command === 'plan' }).toMatchObject({ isPlan: false, recorded: 0 })
})

it('keeps all else of a sentence', () => {
  expect(swapsMended('È vero?  2 leomns, “tsop” — 1½ l alochol!', vocabulary)).toBe(
    'È vero?  2 lemons, “tsop” — 1½ l alcohol!',
  )
})
