import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const readOf = async (shelf: 'lemon' | 'lemon_bottled', text: string) => {
  const told = await (await talkerFor({ after: null, shelf })).say(text)
  return { read: [told.read, ...told.also.map(({ read }) => read)], recorded: told.recorded }
}

// As makers say it; no source.
it.each([
  [
    'lemon_bottled',
    'opened a bottle of the lemon and start 300 g cherries in 60 cl vodka 40%',
    ['/bottles lemon opened:1', '/plan of:300 g cherries spirit:60 cl vodka 40%'],
    1,
  ],
  [
    'lemon',
    'shook the lemon, started 300 g quinces in 60 cl vodka 40%',
    ['/jar shake lemon', '/jar start of:300 g quinces spirit:60 cl vodka 40%'],
    2,
  ],
  [
    'lemon',
    'strained the lemon, 920 ml at 86, then started 9 oranges in a litre of 95%',
    ['/jar strain lemon measured:920 ml strength:86%', '/jar start of:9 oranges spirit:1 litre 95%'],
    2,
  ],
  [
    'lemon',
    'ho scosso il limone e iniziato 9 arance in un litro di vodka 40%',
    ['/jar shake lemon', '/jar start of:9 arance spirit:1 litro vodka 40%'],
    2,
  ],
] as const)('%s: a batch that is begun is none of the jar before it: %s', async (shelf, text, read, recorded) => {
  expect(await readOf(shelf, text)).toEqual({ read, recorded })
})

it.each([
  ['drank two and gave one to the vicar', ['/bottles lemon opened:2', '/bottles lemon given:1']],
  ['gave two to the choir and drank one with mum', ['/bottles lemon given:2', '/bottles lemon opened:1']],
  ['polished off a bottle and gave another to dad', ['/bottles lemon opened:1', '/bottles lemon given:1']],
])('counts each of what was drunk and given: %s', async (text, read) => {
  expect(await readOf('lemon_bottled', text)).toEqual({ read, recorded: 2 })
})

it('takes what is told after bottles were opened for what it says', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
  await one.say('opened a bottle of the lemon')
  expect(await one.say('gave two to the choir')).toMatchObject({ read: '/bottles lemon given:2', recorded: 1 })
})
