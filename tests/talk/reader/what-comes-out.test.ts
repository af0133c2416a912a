import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

/** As makers would say it; none of these stands in the corpus. */
describe.each([
  // Behind a plant liquor is the drink that is to be made.
  ['5 half litre bottles of orange liquor from 96% spirit', '/plan of:oranges strength:96% bottles:5 x 0.5 litre'],
  ['what do I buy for 4 x 250 ml of ginger liqour with 60% spirit', '/plan of:ginger strength:60% bottles:4 x 250 ml'],
  ['8 bottles of quince liquer using 50% alcohol', '/plan of:quince strength:50% bottles:8'],
  ['10 lemons, a litre of liquor at 60%', '/plan of:10 lemons spirit:1 litre 60%'],
  // Of what is to come out one strength is wished, the other is the spirit's.
  ['I want 4 litres of plum liqueur from 60% spirit', '/plan of:plum strength:60% bottles:1 x 4 litres'],
  [
    'make 3 litres of raspberry liqueur at 27% out of 96% alcohol',
    '/plan of:raspberry strength:96% bottles:1 x 3 litres to-strength:27%',
  ],
  ['2 litres of damson liqueur in the end, my gin is 42%', '/plan of:damson strength:42% bottles:1 x 2 litres'],
  [
    'vorrei 2 litri di liquore di arancia al 28% partendo da alcol a 96',
    '/plan of:arancia strength:96% bottles:1 x 2 litri to-strength:28%',
  ],
  [
    'quattro bottiglie da 50 cl di limone al 25% con alcol 95%',
    '/plan of:limone strength:95% bottles:4 x 50 cl to-strength:25%',
  ],
  ['7 bottles of orange at 26% from 96% spirit', '/plan of:orange strength:96% bottles:7 to-strength:26%'],
])('%s', (text, read) => {
  it(`is read as ${read}`, async () => {
    expect(await talker().say(text)).toMatchObject({ read, code: null })
  })
})
