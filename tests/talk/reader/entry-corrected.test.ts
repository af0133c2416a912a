import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const SLOE = '/jar start sloe of:480 g sloes + 2 cloves spirit:70 cl gin 40% when:40 days ago'
const ORANGE = [
  '/jar start orange of:8 oranges spirit:1 l 95% when:30 days ago',
  '/jar strain orange measured:880 ml strength:84% when:9 days ago',
  '/jar sweeten orange water:1.3 l sugar:450 g when:8 days ago',
  '/jar bottle orange bottles:6 x 250 ml when:7 days ago',
]

const after = async (text: string) => {
  const one = await talkerFor({ after: null, shelf: undefined })
  for (const line of [SLOE, ...ORANGE, '/jar list']) await one.say(line)
  return one.say(text)
}

// As makers say it; no source.
it.each([
  ['I strained 860 ml of the orange, not 880', '/jar correct orange entry:2 measured:860 ml'],
  ['the orange was at 82 not 84', '/jar correct orange entry:2 strength:82%'],
  ['ho filtrato 860 ml di arancia non 880', '/jar correct orange entry:2 measured:860 ml'],
  ['sorry, not 880 ml but 860', '/jar correct orange entry:2 measured:860 ml'],
  ['I put 420 g sugar in the orange rather than 450', '/jar correct orange entry:3 sugar:420 g'],
  ['we bottled 5 not 6', '/jar correct orange entry:4 bottles:5 x 250 ml'],
  ['put in 500 g sloes not 480', '/jar correct sloe entry:1 of:500 g sloes + 2 cloves'],
  ['ho messo 500 g di prugnole non 480', '/jar correct sloe entry:1 of:500 g sloes + 2 cloves'],
  ['it was 3 cloves not 2 in the sloe', '/jar correct sloe entry:1 of:480 g sloes + 3 cloves'],
])('puts right the entry that holds the number which is not so: %s', async (text, read) => {
  const told = await after(text)
  expect(told).toMatchObject({ read, code: null, recorded: 1 })
})

it.each([
  ['I strained 860 ml of the orange, not 910', '/jar correct orange entry:2 measured:860 ml'],
  ['yesterday I put in 500 g sloes not 480', '/jar correct sloe entry:1 of:500 g sloes + 2 cloves'],
])('asks first where no entry holds it, or where it was another day: %s', async (text, line) => {
  expect(await after(text)).toMatchObject({ code: 'question', choices: [line], recorded: 0 })
})

it.each(['was it 860 ml not 880?', 'do I want 860 ml not 880'])('corrects nothing that is asked: %s', async (text) => {
  expect((await after(text)).recorded).toBe(0)
})
