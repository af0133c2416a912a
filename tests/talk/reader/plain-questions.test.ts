import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const asked = async (text: string, shelf?: Shelf) =>
  (await talkerFor({ after: null, ...(shelf && { shelf }) })).say(text)

describe('somebody under eighteen', () => {
  it.each([
    'can I give it to my 15 year old?',
    'can my 15-year-old try it',
    'can my son have some? he is 12',
    'my daughter is 16, can she taste it?',
    'is it ok for a teenager',
    'can kids have it?',
    'can I give a sip to the kids',
    'posso darlo a mio figlio di 15 anni?',
    'mia figlia ha 16 anni, può assaggiarlo?',
    'va bene darlo a un quindicenne?',
    'posso farlo assaggiare a un minorenne?',
  ])('%s', async (text) => {
    expect(await asked(text)).toMatchObject({ command: 'handbook', data: { entry: 'children' } })
  })

  it.each([
    'can I drink my 3 year old sloe gin?',
    'gave my sister a bottle and my brother two',
    'can I use a 12 year old whisky',
    'my son gave me 2 kg of plums',
    'my lemon liqueur is 12 years old, can I drink it?',
  ])('is not meant by: %s', async (text) => {
    expect((await asked(text)).data.entry).not.toBe('children')
  })
})

describe('a child who had some stays an emergency', () => {
  it.each([
    'my child drank some of the limoncello',
    'my child had the limoncello',
    'could my child have had the limoncello',
    'can you help, my 3 year old had some limoncello',
    'mio figlio di 8 anni ha preso un sorso',
    'can my child have alcohol poisoning',
    'could my toddler have nicked the gin',
    'my child may have vodka in his cup',
    'il bambino ha chiesto un sorso e l’ha bevuto',
    'il bambino potrebbe aver preso un sorso',
    'ho visto il bambino bere un sorso',
    'il bambino voleva un sorso e ora è svenuto',
    'can children have limoncello, he is vomiting',
  ])('%s', async (text) => {
    expect(await asked(text)).toMatchObject({ command: 'emergency' })
  })
})

describe('what went wrong, asked whether it is still good', () => {
  it.each([
    ['my sloe gin has gone cloudy, is it safe to drink?', 'cloudy'],
    ['my plum liqueur is fizzing, can I drink it?', 'fizzing'],
    ['there is mould on my plums, is it safe?', 'mould'],
    ['my sloe gin went brown can I still drink it', 'turned brown'],
    ['it has separated, safe to drink?', 'separated into layers'],
    ['il mio limoncello è torbido, si può bere?', 'cloudy'],
    ['c’è la muffa sulle prugne, lo butto?', 'mould'],
  ])('%s', async (text, symptom) => {
    const told = await asked(text)
    expect(told.command).toBe('trouble')
    expect(told.read).toContain(symptom)
  })

  it.each(['is sloe gin safe to drink?', 'can I use frozen sloes?'])('is no trouble without one: %s', async (text) => {
    expect((await asked(text)).command).not.toBe('trouble')
  })
})

it.each([
  'it smells odd, is it safe to drink?',
  'my quince liqueur smells funny, can I drink it?',
  'ha un odore strano, si può bere?',
])('asks what it smells of: %s', async (text) => {
  const told = await asked(text)
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(told.choices[0]).toMatch(/^\/trouble /)
})

it('holds what smells of nail varnish though its spirit was bought, and tells no cause as the likeliest if not', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const { outcome } = await one.hear('the sloe tastes of nail varnish')
  if (!outcome.ok || !('reply' in outcome)) throw new Error('not answered')
  const { data, notes } = outcome.reply
  expect(data.discard).toMatchObject({ verdict: 'hold', because: 'danger', question: 'fizz' })
  expect(JSON.stringify(notes)).not.toContain('"trouble_cause"')
})

it.each(['print me a label', 'print a label for the lemon please', 'print the labels'])(
  'leaves no word out of: %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    const { outcome } = await one.hear(text)
    expect(outcome.path).toBe('jar label')
    expect(outcome.ok && 'reply' in outcome && outcome.reply.notes.map(({ key }) => key)).not.toContain('left_out')
  },
)

it('asks whether two liqueurs are a jar of each, and plans plants of one drink together', async () => {
  const two = await asked('a litre of raspberry liqueur with vodka, and orange liqueur too')
  expect(two.choices).toEqual([
    '/plan of:raspberry strength:40% bottles:1 x 1 litre',
    '/plan of:oranges strength:40% bottles:1 x 1 litre',
  ])
  expect((await asked('raspberry and orange liqueur with a litre of vodka')).read).toContain('of:raspberry + oranges')
})

it('lists no single plan in silence where both are asked for', async () => {
  const one = await talkerFor({ after: '/plan of:5 oranges spirit:1 l 95%' })
  expect((await one.say('shopping list for both')).read).not.toContain('plans:')
})

describe('what is asked with `after` puts nothing off', () => {
  it.each([
    'posso guidare dopo un limoncello?',
    'posso guidare dopo il limone?',
    'si può guidare dopo due limoncelli?',
    'can I drive after a limoncello?',
  ])('%s', async (text) => {
    const told = await asked(text, 'lemon_ginger')
    expect(told).toMatchObject({ command: 'handbook', data: { entry: 'driving' }, also: [] })
  })

  it.each([
    'posso filtrare il limone dopo 4 ore?',
    'posso filtrare lo zenzero dopo 3 giorni?',
    'si può filtrare il limone dopo una settimana?',
  ])('%s', async (text) => {
    const told = await asked(text, 'lemon_ginger')
    expect(told.read ?? '').not.toContain('later')
    expect(told.choices.join()).not.toContain('later')
    expect(told.recorded).toBe(0)
  })

  it('but what is ordered is put off', async () => {
    const told = await asked('chiedimelo dopo per il limone, tra due giorni', 'lemon_ginger')
    expect(told.read ?? '').toContain('/jar later')
  })
})

// Mould that is seen on fruit above the liquid is thrown away with all of it: the danger that core finds for `growth`.
describe('mould that was named is not asked about', () => {
  it.each([
    'mould on the floating fruit',
    'there is mould on the plums',
    'white mold over the peel',
    'mouldy plums in the jar',
    'muffa sulla frutta',
    'c’è muffa sulle scorze',
    'la frutta ammuffita galleggia',
  ])('%s', async (text) => {
    expect((await asked(text)).read).toBe('/trouble mould yes:something grows')
  })

  it.each([
    'is it mould on the fruit?',
    'it looks like mould on the fruit',
    'sembra muffa sulla frutta',
    'mould or pith?',
  ])('where it is in doubt it is: %s', async (text) => {
    expect((await asked(text)).read ?? '').not.toContain('yes:')
  })
})

describe('by what one tells', () => {
  it.each([
    ['how do I know when the sloes are done', 'steep_done'],
    ['how can I tell if the damsons have had enough', 'steep_done'],
    ['come faccio a sapere quando è pronto', 'steep_done'],
    ['how can i find out how strong my finished bottle is', 'obscuration'],
    ['is there a way to measure the strength of a sweetened liqueur', 'obscuration'],
    ['come faccio a sapere quanto è forte il liquore finito', 'obscuration'],
  ])('%s', async (text, entry) => {
    expect(await asked(text)).toMatchObject({ command: 'handbook', data: { entry } })
  })
})

describe('the usual spirit of a plant', () => {
  it.each([
    ['a damson’s usual spirit', '/botanical of:damson'],
    ['what’s the usual spirit for sloes', '/botanical of:sloes'],
    ['which spirit goes with quince', '/botanical of:quince'],
    ['what spirit do people use for rhubarb', '/botanical of:rhubarb'],
  ])('%s', async (text, read) => {
    expect(await asked(text)).toMatchObject({ read, code: null })
  })

  it('of no plant is the handbook’s', async () => {
    expect(await asked('which spirit is best for a beginner')).toMatchObject({ data: { entry: 'which_spirit' } })
  })
})
