import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const say = async (text: string, shelf?: Shelf) => (await talkerFor({ after: null, ...(shelf && { shelf }) })).say(text)

it.each<[Shelf, string, string]>([
  ['lemon', 'when can I drink the limoncello', '/jar show lemon'],
  ['lemon', 'dove trovo il limoncello', '/jar show lemon'],
  ['lemon', 'quando posso bere il limoncello', '/jar show lemon'],
  ['lemon', 'could we strain the lemon yet', '/jar show lemon'],
  ['fair', 'can i filter the orange now', '/jar show orange'],
  ['fair', 'what marks did we give the raspberry', '/jar show raspberry'],
  ['lemon_bottled', 'how did it taste', '/jar show lemon'],
  ['lemon_bottled', 'com’era il limone', '/jar show lemon'],
])('of %s, %s: the jar tells, and nothing is recorded', async (shelf, text, read) => {
  expect(await say(text, shelf)).toMatchObject({ read, recorded: 0 })
})

it.each<[Shelf, string, string]>([
  ['fair', 'orange has been through the kitchen paper filter', '/jar filter orange'],
  ['fair', 'dripped the orange through two papers, 1.5 l left', '/jar filter orange measured:1.5 l'],
  ['fair', 'l’arancia l’ho passata nella carta, 1,4 litri', '/jar filter orange measured:1,4 litri'],
  ['fair', 'let the sloe be for ten days', '/jar later sloe until:in 10 days'],
  ['lemon_ginger', 'lascia in pace lo zenzero fino a martedì', '/jar later ginger until:martedi'],
  ['lemon', 'poke me about the lemon on tuesday, could you please', '/jar later lemon until:tuesday'],
  ['lemon', 'the lemon ought to be called Frost', '/jar rename lemon to:Frost'],
  ['fair', 'call the sloe frost and make the raspberry again', '/jar rename sloe to:frost'],
  ['lemon', 'call the lemon gin and tonic', '/jar rename lemon to:gin and tonic'],
  ['spiced', 'took out the chilli, the pears were getting fiery', '/jar take-out pear of:chilli'],
  ['spiced', 'took out the chilli and the cinnamon', '/jar take-out pear of:chilli + cinnamon'],
])('of %s, %s is recorded', async (shelf, text, read) => {
  expect(await say(text, shelf)).toMatchObject({ read, recorded: 1 })
})

it.each([
  ['what reminders have i got', '/reminders'],
  ['when will you message me next', '/reminders'],
  ['gli avvisi li vorrei alle 20 e 15', '/reminders time:20:15'],
  ['dont nudge me in here, message me privately', '/reminders place:private'],
])('%s: the reminders', async (text, read) => {
  expect(await say(text)).toMatchObject({ read, recorded: 0 })
})

it('asks nothing to be emptied but by a line', async () => {
  expect(await say('the last drop of the raspberry has gone', 'fair')).toMatchObject({
    code: 'question',
    choices: ['/jar empty raspberry'],
    recorded: 0,
  })
})

it('renames nothing that is asked', async () => {
  expect(await say('should the lemon be called Frost?', 'lemon')).toMatchObject({ recorded: 0 })
})

it.each([
  ['lemon_bottled', 'show lemon'],
  ['lemon_bottled', 'see the lemon'],
  ['lemon_bottled', 'what should I do with the lemon?'],
  ['lemon_strained', 'what do I need to do with the lemon now?'],
  ['lemon_strained', 'what’s next for the lemon?'],
  ['lemon', 'cosa devo fare con il limone?'],
  ['lemon', 'mostra limone'],
] as const)('%s: shows how a jar stands and what is next: %s', async (shelf, text) => {
  const { read } = await (await talkerFor({ after: null, shelf })).say(text)
  expect(read).toBe('/jar show lemon')
})
