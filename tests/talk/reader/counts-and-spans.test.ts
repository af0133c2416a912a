import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  // Half of something else belongs to no number before it.
  ['two litres of the 50 and half a stone of damsons', '/plan of:7 lb damsons spirit:2 litres 50%'],
  ['a litre of 95 and half a dozen oranges', '/plan of:6 oranges spirit:1 litre 95%'],
  ['litre of the 60 and half a kilo of cherries', '/plan of:0.5 kilo cherries spirit:1 litre 60%'],
  ['un litro del 60 e mezzo chilo di prugne', '/plan of:0.5 chilo prugne spirit:1 litro 60%'],
  ['one and a half litres of 50 and 1 kg plums', '/plan of:1 kg plums spirit:1.5 litres 50%'],
  // How long, said as one of two or of a few.
  ['9 oranges, a litre of 95, two or three weeks', '/plan of:9 oranges spirit:1 litre 95% days:3 weeks'],
  ['9 oranges, a litre of 95, 10-12 days', '/plan of:9 oranges spirit:1 litre 95% days:12 days'],
  ['9 oranges, a litre of 95, strain after a week', '/plan of:9 oranges spirit:1 litre 95% days:1 week'],
  ['80 g cocoa nibs, a litre of vodka, a day or two', '/plan of:80 g cocoa nibs spirit:1 litre vodka 40% days:2 days'],
  ['80 g cocoa nibs, a litre of vodka, a few hours', '/plan of:80 g cocoa nibs spirit:1 litre vodka 40% days:3 hours'],
  ['9 arance, un litro a 95, due o tre settimane', '/plan of:9 arance spirit:1 litro 95% days:3 settimane'],
  ['9 arance, un litro a 95, una settimana o due', '/plan of:9 arance spirit:1 litro 95% days:2 settimane'],
  ['9 arance, un litro a 95 per poche ore', '/plan of:9 arance spirit:1 litro 95% days:3 ore'],
  // What is counted behind a plant.
  ['rosemary, 7 sprigs, 70 cl gin', '/plan of:7 sprigs of rosemary spirit:70 cl gin 40%'],
  ['gin 70 cl, rosemary 7 sprigs', '/plan of:7 sprigs of rosemary spirit:70 cl gin 40%'],
  ['elderflower 12 heads 2L vodka 3 lemons', '/plan of:12 heads of elderflower + 3 lemons spirit:2 L vodka 40%'],
  ['basil, 25 leaves fresh, half a litre of 95', '/plan of:25 leaves of fresh basil spirit:0.5 litre 95%'],
  ['sambuco, 18 infiorescenze, un litro di vodka', '/plan of:18 fiori di sambuco spirit:1 litro vodka 40%'],
  [
    "liquore all'alloro, 24 foglie fresche e mezzo litro di alcol 95",
    '/plan of:24 foglie fresche di alloro spirit:0.5 litro 95%',
  ],
  // Whose recipe it is tells nothing of the spirit.
  ['ricetta di zia: 1 litro di alcol, 12 limoni', '/plan of:12 limoni spirit:1 litro 96%'],
])('%s', (text, read) => {
  it('is read whole', async () => {
    expect(await talker().say(text)).toMatchObject({ read, code: null })
  })
})

describe('what only looks like it', () => {
  it.each([['the first heads of a run, 50 ml vodka heads, and 10 lemons'], ['vodka heads 1 litre, 10 lemons']])(
    '%s is refused',
    async (text) => {
      expect(await talker().say(text)).toMatchObject({ read: null, code: 'refused' })
    },
  )

  it('is a day: 2 or 3 weeks ago', async () => {
    const told = await talker().say('started 9 oranges in a litre of 95% 2 or 3 weeks ago')
    expect(told).toMatchObject({ read: '/jar start of:9 oranges spirit:1 litre 95% when:3 weeks ago', recorded: 1 })
  })
})
