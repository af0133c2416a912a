import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const firstLineOf = async (line: string): Promise<string> => {
  const text = await testDesk({ width: 400 }).firstOf(line)
  return text.split('\n').find((each) => each !== '' && !each.startsWith('read as'))!
}

// Ethyl acetate, fake spirit and fuel are not to be tasted to find out: published guidance named in `core/trouble/sources.ts`.
it.each([
  'tastes like paint thinner',
  'it has a chemical smell',
  'smells like turpentine',
  'smells like magic marker',
  'puzza di acquaragia',
])('says in its first line not to taste what smells of solvent: %s', async (line) => {
  expect(await firstLineOf(line)).toMatch(/^Don’t taste it yet: .*\? If not, throw it away\.$/)
})

// Where nobody knows how strong it is, every answer would end so.
it.each([
  'the quince reeks of nail varnish',
  'it smells of acetone',
  'smells like superglue',
  'my plum brandy smells of pear drops',
  'smells like a nail salon',
  'odora di smalto',
  'sa di colla',
  '/trouble smells of glue',
  '/trouble nail varnish',
])('has what smells of nail varnish thrown away without a question: %s', async (line) => {
  expect(await firstLineOf(line)).toBe('Throw it away: that smell comes from spoiled or fake spirit.')
})

it('asks of what smells of nail varnish in a strong jar', async () => {
  expect(await firstLineOf('/trouble smells of glue strength:30%')).toMatch(
    /^Don’t taste it yet: was its spirit bought/,
  )
  expect(await firstLineOf('/trouble smells of petrol strength:30%')).toBe(
    'Throw it away: it smells of fuel or thinner.',
  )
})

it.each(['smells like gasoline', 'the peach smells of paint thinner', 'puzza di benzina', 'smells like a gas station'])(
  'has fuel thrown away at once: %s',
  async (line) => {
    expect(await firstLineOf(line)).toBe('Throw it away: it smells of fuel or thinner.')
  },
)

it('asks of what only burns like fuel', async () => {
  expect(await firstLineOf('it tastes like gasoline')).toMatch(/^Don’t taste it yet/)
})

it.each([
  ['/trouble smells of vinegar', /Under 20 %, throw it away\.$/],
  ['/trouble smells of rotten eggs', /If so, throw it away\.$/],
  ['/trouble musty', /If so, throw it away\.$/],
  ['/trouble skin on top', /If so, throw it away\.$/],
])('says by which answer it goes: %s', async (line, ending) => {
  const first = await firstLineOf(line)
  expect(first).toMatch(/^Don’t taste it yet: /)
  expect(first).toMatch(ending)
})

it('takes what smells of nail varnish for no harmless thing unless its strength says so', async () => {
  expect(await testDesk().firstOf('it smells of nail varnish')).not.toMatch(/Nothing’s wrong|not dangerous/)
  expect(await testDesk().firstOf('/trouble smells of acetone strength:70% yes:varnish')).toContain('strong alcohol')
})

const told = async (lines: readonly string[]): Promise<string> => {
  const desk = testDesk({ width: 400 })
  let text = ''
  for (const line of lines) text = await desk.firstOf(line)
  return text.replace(/^read as .*\n+/, '')
}

const BARE = '/jar start of:10 lemons spirit:1 l 95% name:lemon'
const SWEETENED = ['/jar strain lemon measured:900 ml', '/jar sweeten lemon sugar:500 g water:1.5 l']

// What clouds, tastes bitter or leaves dregs is hardly ever the spirit; the rank of each cause is that of `core/trouble`.
it.each([
  [
    'the lemon is cloudy',
    /^Most likely: fine bits and juice of the plant\. But was its spirit bought .*\? If not, throw/,
  ],
  [
    'the lemon tastes bitter',
    /^Most likely: pith, seeds or whole slices\. But was its spirit bought .*\? If not, throw/,
  ],
  ['there is sediment in the lemon', /^Most likely: fine plant matter .*\. But is the glass chipped .*\? If so, throw/],
])('says first what is likely, and asks in the same breath: %s', async (line, first) => {
  expect(await told([BARE, line])).toMatch(first)
})

it('asks about no label where the drink’s own figures tell what clouds it, and still names it', async () => {
  const cloudy = await told([BARE, ...SWEETENED, 'the lemon is cloudy'])
  expect(cloudy).toMatch(/^Keep it: that cloud is oil/)
  expect(cloudy).not.toMatch(/Rule this out|\?/)
  expect(cloudy).toContain('But throw it away if it has unlabelled spirit')
  expect(await told([BARE, ...SWEETENED, 'the lemon smells of paint thinner'])).toMatch(/^Throw it away: it smells/)
})
