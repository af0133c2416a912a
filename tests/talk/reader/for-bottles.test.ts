import { expect, it } from 'vitest'
import { talker } from './told.ts'

it.each([
  ['how many oranges do I buy for three bottles', '/plan of:oranges strength:95% bottles:3'],
  ['how many damsons do I need for eight half litre bottles', '/plan of:damsons strength:40% bottles:8 x 0.5 litre'],
  ['how many limes and how much spirit for ten 250 ml bottles', '/plan of:limes strength:95% bottles:10 x 250 ml'],
  ['what do I buy for six bottles of lemon at 28%', '/plan of:lemon strength:95% bottles:6 to-strength:28%'],
  ['quante arance compro per 5 bottiglie da 70 cl', '/plan of:arance strength:95% bottles:5 x 70 cl'],
  ['quanto alcol per 4 bottiglie di nocino', '/plan of:noci verdi strength:96% bottles:4'],
  ['how many bottles from 12 limes and a litre of 95', '/plan of:12 limes spirit:1 litre 95%'],
])('works out backwards what a shelf takes: %s', async (text, read) => {
  const told = await talker().hear(text)
  expect(told.read).toBe(read)
  expect(JSON.stringify(told.outcome)).not.toContain('"left_out"')
})

it.each(['how many sloes for a bottle of gin', 'how much rhubarb in 2 bottles of vodka', 'how much ginger per bottle'])(
  'is asked of the plant: %s',
  async (text) => {
    expect((await talker().say(text)).command).toBe('botanical')
  },
)
