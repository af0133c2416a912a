import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

const pasted = (...lines: readonly string[]) => talker().say(lines.join('\n'))

describe('a recipe that is pasted whole', () => {
  it.each([
    [
      ['Old damson brandy', '1 lb damsons', '75 cl brandy 40%', '6 oz sugar', 'Let it stand 3 months'],
      '/plan of:1 lb damsons spirit:75 cl brandy 40% sugar:6 oz days:3 months',
    ],
    [
      ['Raspberry vodka', '1 qt raspberries', '750 ml 80 proof vodka', '1 cup sugar'],
      '/plan of:4 cups raspberries spirit:750 ml vodka 80 proof sugar:1 cup',
    ],
    [
      ['Mandarin gin:', '- 6 mandarins', '- 1 bottle (70 cl) gin', '- 150 g sugar', '- 2 strips lemon peel'],
      '/plan of:6 mandarins + 2 strips of lemon peel spirit:70 cl gin 40% sugar:150 g',
    ],
    [
      ['Plum rum', '1. 500 g plums', '2. 2 bottles (350 ml each) rum', '3. 100 g sugar', 'Steep for 5 weeks, strain'],
      '/plan of:500 g plums spirit:700 ml rum 40% sugar:100 g days:5 weeks',
    ],
    [
      ['Liquore della zia', '9 limoni', '1 l alcol 95%', '600 g zucchero', 'Lasciare in infusione 20 giorni, filtrare'],
      '/plan of:9 limoni spirit:1 l 95% sugar:600 g days:20 giorni',
    ],
  ])('%j', async (lines, read) => {
    expect(await pasted(...lines)).toMatchObject({ read, recorded: 0 })
  })

  const leftOut = async (...lines: readonly string[]) => {
    const { outcome } = await talker().hear(lines.join('\n'))
    const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
    return notes.flatMap(({ key, values }) => (key === 'left_out' ? JSON.stringify(values) : [])).join(' ')
  }

  it('takes the time in the plants, and names the time after straining', async () => {
    const lines = [
      'Pear brandy',
      '500 g pears',
      '70 cl brandy',
      'Age 2 months',
      'Infuse for 3 weeks, strain, rest 1 month',
    ]
    expect((await pasted(...lines)).read).toMatch(/ days:3 weeks$/)
    expect(await leftOut(...lines)).toMatch(/Age 2 months.*strain, rest 1 month/)
  })

  it('keeps the recipe where a ready-made flavour is only stirred in later, and says so', async () => {
    const lines = ['8 oranges', '70 cl vodka', '200 g sugar', '2 tsp pure vanilla extract']
    expect((await pasted(...lines)).read).toBe('/plan of:8 oranges spirit:70 cl vodka 40% sugar:200 g')
    expect(await leftOut(...lines)).toContain('2 tsp pure vanilla extract')
  })

  it('instant coffee is no bean', async () => {
    const told = await pasted('Coffee liqueur', '1 cup instant coffee', '70 cl vodka', '200 g sugar')
    expect(told.code).not.toBe(null)
    expect(await talker().say('/plan of:50 g instant coffee spirit:1 l 40%')).toMatchObject({ code: 'ambiguous' })
  })
})

describe('around a recipe', () => {
  it('what only says that one follows is no question of spent fruit', async () => {
    expect(await talker().say('here’s our recipe: 1 kg fresh apricots')).toMatchObject({
      command: 'plan',
      code: 'missing_option',
    })
  })

  it.each(['ok start it', 'now start it'])('%s, of nothing: what goes in is asked', async (text) => {
    expect(await talker().say(text)).toMatchObject({ code: 'question', read: '/jar start', recorded: 0 })
  })
})
