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

it.each([
  ['forty folk are coming and everybody should get a 100 ml plum bottle', '40 x 100 ml'],
  ['twenty five guests, a 50 ml bottle of plum each', '25 x 50 ml'],
  ['plum for 30 people, 200 ml bottle each', '30 x 200 ml'],
  ['60 members and every one of them, each gets a 5 cl plum miniature', '60 x 50 ml'],
  ['quaranta ospiti, una bottiglietta da 50 ml di prugne a testa', '40 x 50 ml'],
  ['4 750 ml bottles of plum', '4 x 750 ml'],
  ['fill 12 250 ml bottles with plum', '12 x 250 ml'],
  ['I want 3 500 ml bottles of plum', '3 x 500 ml'],
])('as many bottles as are counted: %s', async (text, bottles) => {
  expect((await talker().say(text)).read).toContain(`bottles:${bottles}`)
})
