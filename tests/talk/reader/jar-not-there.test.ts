import { expect, it } from 'vitest'
import { sampled } from '../../runs.ts'
import { SHELVES, type Shelf } from '../shelves.ts'
import { talker, talkerFor } from './told.ts'

const WHERE: readonly Shelf[] = ['lemon', 'lemon_strained', 'lemon_sweetened', 'lemon_bottled', 'spiced', 'fair']

/** Plants that no shelf has, and names that are no plant's. */
const NAMES = ['damson', 'quince', 'blackcurrant', 'bergamot', 'rhubarb', 'old faithful', 'Chapel Row', 'gran’s best']

// As makers say it; no source.
const DEEDS = [
  'popped a vanilla pod in the N',
  'dropped three cloves into my N',
  'a cinnamon stick went in with the N',
  'the N got another vanilla pod',
  'topped the N up with 80 ml of vodka',
  'stirred 60 ml of gin into the N',
  'carried the N down to the cellar',
  'the N is in the pantry now',
  'shook the N this morning',
  'gave the N a good shake',
  'strained the N, 640 ml at 52',
  'got 640 ml out of the N',
  'ran the N through a paper filter',
  'sweetened the N with 250 g sugar and 300 ml water',
  'put 250 g sugar and 300 ml water in the N',
  'bottled the N, 6 x 250 ml',
  'tasted the N, 3 stars',
  'took the chilli out of the N',
  'lifted the cinnamon out of the N',
  'gave the choir a bottle of the N',
  'opened a bottle of the N',
  'poured 200 ml of the N off into another jar',
  'note for the N: needs longer',
  'ho messo un baccello di vaniglia nel N',
  'ho tolto la cannella dal N',
  'ho imbottigliato il N, 6 bottiglie da 250 ml',
  'ho scosso il N',
]

const CASES = WHERE.flatMap((shelf) =>
  DEEDS.flatMap((deed) => NAMES.map((name) => ({ shelf, text: deed.replace('N', name) }))),
)

it('records nothing of a jar that is not there, whatever is told of it', async () => {
  const recorded: string[] = []
  for (const { shelf, text } of sampled(CASES, 83)) {
    const told = await (await talkerFor({ after: null, shelf })).say(text)
    if (told.recorded !== 0) recorded.push(`${shelf}: ${text} => ${told.read}`)
  }
  expect(recorded).toEqual([])
})

it.each([
  ['lemon', 'popped a vanilla pod in the lemon', '/jar add lemon of:1 vanilla pod'],
  ['lemon_ginger', 'ho messo due chiodi di garofano nello zenzero', '/jar add ginger of:2 chiodi di garofano'],
  ['lemon_ginger', 'put some ginger in with the lemon', '/jar add lemon of:ginger'],
  ['spiced', 'lifted the cinnamon stick out of the pear', '/jar take-out pear of:cinnamon stick'],
  ['lemon_ginger', 'took the peels out of the lemon', '/jar strain lemon'],
  ['lemon', 'shook the one by the window', '/jar shake lemon'],
  ['lemon_bottled', 'gave the neighbours a bottle', '/bottles lemon given:1'],
] as const)('%s: a jar that is there is meant: %s', async (shelf, text, read) => {
  const told = await (await talkerFor({ after: null, shelf })).say(text)
  expect(told.read?.replaceAll(' ', ' ')).toBe(read)
})

it.each([
  ['shook the cherry and it reeks of glue', '/trouble smells of solvent yes:smells of nail varnish'],
  ['shaken the plum, and it smells of petrol', '/trouble smells of solvent yes:smells of petrol'],
  ['ho scosso le ciliegie e puzza di colla', '/trouble smells of solvent yes:smells of nail varnish'],
  ['ho scosso le ciliegie e puzza di solvente per unghie', '/trouble smells of solvent yes:smells of nail varnish'],
  ['shook it and it smells of varnish', '/trouble smells of solvent yes:smells of nail varnish'],
  ['shook it and it reeks of glue', '/trouble smells of solvent yes:smells of nail varnish'],
])('a danger behind it is said first, and the deed is not lost: %s', async (text, read) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)
  expect(told).toMatchObject({ read, recorded: 0 })
  expect(told.also).toEqual([expect.objectContaining({ command: 'jar shake' })])
})

it.each(['lifted the vanilla out of the lemon', 'ho tolto il peperoncino dal limone'])(
  'what comes out of a jar has to be in it: %s',
  async (text) => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)
    expect(told).toMatchObject({ recorded: 0, command: 'jar take-out' })
  },
)

it.each(['shook the rose', 'strained the rose, 900 ml', 'bottled the rose'])(
  'a name that another one begins with is none of its: %s',
  async (text) => {
    const one = talker()
    await one.say('/jar start rosemary of:20 g rosemary spirit:1 l 40% when:10 days ago')
    expect(await one.say(text)).toMatchObject({ code: 'not_found', recorded: 0 })
  },
)

it.each([
  ['lemon', 'gave gran’s best a good shake', 'gran’s best'],
  ['lemon', 'gave the wife’s favourite a stir', 'wife’s favourite'],
  ['fair', 'given our midnight special a swirl', 'midnight special'],
  ['lemon', 'ho dato una scossa al mostro', 'mostro'],
  ['lemon_sweetened', 'put the old faithful in bottles', 'old faithful'],
] as const)('%s: what stands between the words of a deed is a name: %s', async (shelf, text, jar) => {
  const told = await (await talkerFor({ after: null, shelf })).say(text)
  expect(told).toMatchObject({ code: 'not_found', recorded: 0, call: { options: { jar } } })
})

it.each([
  ['gave the jar by the window a proper shake', 'lemon'],
  ['gave my liqueur a good swirl', 'lemon'],
  ['gave the lot a shake', 'all'],
  ['ho dato una bella scossa al barattolo', 'lemon'],
])('what every jar is called is no name: %s', async (text, jar) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
  expect(told).toMatchObject({ recorded: 1, call: { path: 'jar shake', options: { jar } } })
})

it('asks which of two jars something went into', async () => {
  expect(SHELVES.lemon_ginger).toHaveLength(2)
  const told = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(
    'dropped a vanilla pod in the lemon and ginger',
  )
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(told.choices).toHaveLength(2)
})

it.each(['shook the cherry, when is it ready', 'shook the cherry - how many days left'])(
  'shows no other jar for what is asked of one that is not there: %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    const told = await one.say(text)
    expect(told).toMatchObject({ code: 'not_found', recorded: 0 })
    expect(told.also).toEqual([])
  },
)
