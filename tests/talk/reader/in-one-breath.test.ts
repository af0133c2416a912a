import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** A deed and what is told, ordered or asked behind it, each heard by itself; none of these stands in the corpus. */
describe.each<readonly [shelf: Shelf, text: string, heard: readonly string[]]>([
  // Labels behind what was filled.
  [
    'lemon_sweetened',
    'bottled the lemon, 4 x 500 ml, labels now please',
    ['/jar bottle lemon bottles:4 x 500 ml', '/jar label lemon'],
  ],
  [
    'lemon_sweetened',
    'lemon bottled, 3 x 750 ml. we’ll want some tags too',
    ['/jar bottle lemon bottles:3 x 750 ml', '/jar tag lemon'],
  ],
  [
    'lemon_sweetened',
    'imbottigliato il limone, 6 da 250 ml, ora mi servono le etichette',
    ['/jar bottle lemon bottles:6 x 250 ml', '/jar label lemon'],
  ],
  // Pieces and little ones are bottles.
  [
    'lemon_sweetened',
    'lemon bottled, 6 pcs of 250 ml and 2 minis of 50 ml',
    ['/jar bottle lemon bottles:6 x 250 ml + 2 x 50 ml'],
  ],
  // What goes in next is said with what was strained.
  [
    'lemon',
    'lemon strained, 31 fl oz at 172 proof, what sugar does it take',
    ['/jar strain lemon measured:31 fl oz strength:172 proof'],
  ],
  [
    'lemon',
    'filtrato il limone, 930 ml a 87, che sciroppo gli serve?',
    ['/jar strain lemon measured:930 ml strength:87%'],
  ],
  [
    'lemon',
    'strained the lemon, call it 900 ml, remind me friday to do the syrup',
    ['/jar strain lemon measured:900 ml', '/jar later lemon until:friday'],
  ],
  // Ounces of what runs through a cloth are fluid.
  [
    'lemon',
    'drained the lemon today. 28 ounces, hydrometer says 170 proof',
    ['/jar strain lemon measured:28 fl oz strength:170 proof'],
  ],
  // What is left is said with what was given.
  ['fair', 'gave two raspberry bottles to mum so how many does that leave me?', ['/bottles raspberry given:2']],
  [
    'fair',
    'two raspberry bottles gone to the vicar and one opened for us',
    ['/bottles raspberry given:2', '/bottles raspberry opened:1'],
  ],
  // A place, and what was done on the way there.
  ['fair', 'shook the sloe, then moved it to the barn', ['/jar shake sloe', '/jar note sloe where:barn']],
  ['fair', 'the sloes stand now in the laundry room', ['/jar note sloe where:laundry room']],
  ['fair', 'il lampone resta nel ripostiglio', ['/jar note raspberry where:ripostiglio']],
  // Putting in, taking out and parting, in whatever verb.
  ['lemon_ginger', 'sloshed another 200 ml of the 60% into the ginger', ['/jar add ginger spirit:200 ml 60%']],
  ['spiced', 'yanked the chilli outta the pear', ['/jar take-out pear of:chilli']],
  ['spiced', 'il peperoncino l’ho tirato fuori dalle pere', ['/jar take-out pear of:peperoncino']],
  ['lemon_ginger', 'I have took out the lemon peel, 900 ml', ['/jar strain lemon measured:900 ml']],
  // When it was, and how it looked, names no jar.
  ['lemon', 'came in at nine and gave the lemon a good swirl before bed', ['/jar shake lemon']],
  ['lemon', 'jar with lemons shaked, all fine', ['/jar shake lemon']],
  ['lemon', 'scosso prima di uscire a correre', ['/jar shake lemon']],
  ['lemon_ginger', 'shook the lemon b4 bed', ['/jar shake lemon']],
])('with the jars of %s', (shelf, text, heard) => {
  it(`${text}: each is heard`, async () => {
    const told = await (await talkerFor({ after: null, shelf })).say(text)
    expect([told, ...told.also].map(({ read, code }) => code ?? read)).toEqual(heard)
  })
})

const LEMONS = '/plan of:10 lemons spirit:1 l 95%'
const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'
const STRAINED = '/jar strain lemon measured:930 ml strength:87%'

/** What was said before, what is said then, and its line. */
describe.each<readonly [shelf: Shelf | undefined, before: string, text: string, read: string]>([
  // What was measured is put right, and no wish is made of it.
  [undefined, SYRUP, 'the strength was actually 40%', SYRUP.replace('82%', '40%')],
  [undefined, SYRUP, 'volume was 940', SYRUP.replace('920 ml', '940 ml')],
  [undefined, SYRUP, 'la gradazione era 79', SYRUP.replace('82%', '79%')],
  [undefined, SYRUP, '28% instead', SYRUP.replace('30%', '28%')],
  ['lemon', STRAINED, 'hang on, no, 910 ml', '/jar correct lemon measured:910 ml'],
  ['lemon', STRAINED, 'aspetta, no, 915', '/jar correct lemon measured:915 ml'],
  // Several, each with its amount, in the place of all there were; one that goes and one that comes is still a swap.
  [
    undefined,
    LEMONS,
    'make that 6 lemons, 3 oranges and 2 limes instead',
    LEMONS.replace('10 lemons', '6 lemons + 3 oranges + 2 limes'),
  ],
  [undefined, LEMONS, 'invece metto 8 limoni e 2 arance', LEMONS.replace('10 lemons', '8 limoni + 2 arance')],
  [undefined, LEMONS, 'swap the lemons for limes', LEMONS.replace('10 lemons', '10 limes')],
  // A name ends where another thing is to be done.
  [undefined, LEMONS, 'call it midwinter and get it going', '/jar start midwinter of:10 lemons spirit:1 l 95%'],
  [undefined, LEMONS, 'yeah name it fair and off we go', '/jar start fair of:10 lemons spirit:1 l 95%'],
  [undefined, LEMONS, 'in cups please, our scale gave up the ghost', LEMONS],
  [undefined, LEMONS, 'how far can I trust these numbers', LEMONS],
  [undefined, '/serving pour:40 ml strength:28%', 'what about a 3 oz shot', '/serving pour:3 fl oz strength:28%'],
  [
    undefined,
    '/plan of:cinnamon spirit:1 l 40%',
    'the Ceylon kind only, not the hard one',
    '/plan of:ceylon cinnamon spirit:1 l 40%',
  ],
])('after another answer', (shelf, after, text, read) => {
  it(`${text}: ${read}`, async () => {
    expect(await (await talkerFor({ after, shelf })).say(text)).toMatchObject({ read, code: null })
  })
})

describe('reminders, in other words', () => {
  it.each([
    ['nudge me 6.45am every day', '/reminders time:6.45am'],
    ['8pm suits us for reminders', '/reminders time:8pm'],
    ['please no reminders until 9 January, we drive to the coast', '/reminders pause-until:9 january'],
    ['i’d rather not be reminded about shaking', '/reminders shake:off'],
    ['what have you got me down for by way of nudges', '/reminders'],
  ])('%s', async (text, read) => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
    expect(told).toMatchObject({ read, code: null, recorded: 0 })
  })

  it.each([
    ['on tuesday please tell me about the lemon', '/jar later lemon until:tuesday'],
    ['dammi uno squillo domenica per il limone', '/jar later lemon until:domenica'],
  ])('%s', async (text, read) => {
    expect(await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).toMatchObject({ read, recorded: 1 })
  })

  it('reads where they are to come, whatever takes them there', async () => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('text me in private, not in the group')
    expect(told).toMatchObject({ read: '/reminders place:private', recorded: 0 })
  })

  it('tells of a plant on no day', async () => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('tell me about lemon')
    expect(told).toMatchObject({ command: 'botanical', recorded: 0 })
  })

  it('still answers whether one may drive', async () => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('we drive home after two glasses of it')
    expect(told.data).toMatchObject({ entry: 'driving' })
  })
})

describe('thanks', () => {
  it.each(['cheers, you’re an absolute star', 'thanks loads', 'grazie mille, sei un angelo'])('%s', async (text) => {
    expect(await (await talkerFor({ after: LEMONS, shelf: undefined })).say(text)).toMatchObject({
      command: 'talk',
      recorded: 0,
    })
  })
})
