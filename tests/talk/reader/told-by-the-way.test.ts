import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

// The sentences are ours; no source.
it.each([
  ['the lemon’s in the pantry now, I forgot to mention', '/jar note lemon where:pantry'],
  ['gave the sloe a tumble', '/jar shake sloe'],
  ['in the sloe I lobbed a vanilla pod', '/jar add sloe of:1 vanilla pod'],
])('records what is told by the way, and no trouble: %s', async (text, read) => {
  const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
  expect(told).toMatchObject({ read, recorded: 1, also: [] })
})

it.each(['chuck the sloe jar, I’m fed up with it', 'junk the sloe jar, sick of the sight of it'])(
  'throws nothing away by a sentence: %s',
  async (text) => {
    const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
    expect(told).toMatchObject({ choices: ['/jar discard sloe'], recorded: 0 })
  },
)

it('still takes a jar for forgotten that was', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('forgot to strain it for a year')
  expect(told.command).toBe('trouble')
})

it.each([
  ['tag for the lemon please, my children want to know what’s in it', 'jar tag'],
  ['print me a tag for the sloe, the grandchildren always ask about it', 'jar tag'],
])('takes children who only ask for nobody who drinks: %s', async (text, command) => {
  expect((await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).command).toBe(command)
})

it.each(['print me a label, the kids ask for a sip', 'can the kids ask for a sip, print me a label'])(
  'answers about children who ask for it: %s',
  async (text) => {
    expect((await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).data.entry).toBe('children')
  },
)

it('answers about children where they are to drink, whatever is printed', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(
    'print a tag for the sloe, can my kids have a sip?',
  )
  expect(told.data.entry).toBe('children')
})

it.each([
  'show me all I’ve ever made',
  'everything we have made over the years please',
  'let me see all the batches, good and bad',
])('shows the notebook: %s', async (text) => {
  expect((await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).command).toBe('notebook')
})
