import { describe, expect, it } from 'vitest'
import { eachIsRecorded } from './by-shelf.ts'
import { talker } from './told.ts'

// The sentences are ours; no source.
describe('what is said in the place of an amount counts', () => {
  it.each([
    ['1 kg of plums, no wait, 1.2 kg, and a litre of vodka', '/plan of:1.2 kg plums spirit:1 litre vodka 40%'],
    ['10 lemons, sorry, 12, and a litre of 95%', '/plan of:12 lemons spirit:1 litre 95%'],
    ['700 g cherries, no, 800, and 70 cl brandy', '/plan of:800 g cherries spirit:70 cl brandy 40%'],
    ['gooseberries 500, i mean 600 g, and a litre of vodka', '/plan of:600 g gooseberries spirit:1 litre vodka 40%'],
    ['10 limoni, anzi 12, e un litro di alcol a 95', '/plan of:12 limoni spirit:1 litro 95%'],
    ['half a litre of gin, no, a whole litre, and 500 g sloes', '/plan of:500 g sloes spirit:1 litre gin 40%'],
    ['8 lemons and a litre of 90, no, 95%', '/plan of:8 lemons spirit:1 litre 95%'],
    ['10 lemons, no, 12 limes, 1 l vodka', '/plan of:12 limes spirit:1 l vodka 40%'],
    [
      '920 ml at 82, wait, 84, to 30 and 250 g/L',
      '/syrup infusion:920 ml strength:84% to-strength:30% to-sweetness:250 g/L',
    ],
    // None is put right.
    ['10 lemons, 1 l 95%, make it 28%', '/plan of:10 lemons spirit:1 l 95% to-strength:28%'],
    ['10 lemons and no sugar, 1 l vodka', '/plan of:10 lemons spirit:1 l vodka 40% to-sweetness:0 g/L'],
  ])('%s', async (text, read) => {
    expect((await talker().say(text)).read).toBe(read)
  })

  eachIsRecorded({
    lemon: [
      ['strained it, 930 ml, no sorry, 910', '/jar strain lemon measured:910 ml'],
      ['strained the lemon, got 900, i mean 920 ml, at 86', '/jar strain lemon measured:920 ml strength:86%'],
    ],
  })
})
