import { describe, expect, test } from 'vitest'
import { eachHolds } from '../../each-holds.ts'
import { runs, sampled } from '../../runs.ts'
import { jarDesk } from '../commands-jar/desk.ts'
import { goodSpirits, undrinkableSpirits } from '../test-lines.ts'

const CODE = '11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3'

/** Every command that takes a spirit, with the text of it. */
const LINES: readonly ((spirit: string) => string)[] = [
  (spirit) => `/plan of:10 lemons spirit:${spirit}`,
  (spirit) => `/plan from:${CODE} spirit:${spirit}`,
  (spirit) => `/syrup infusion:920 ml of:8 lemons to-strength:30% to-sweetness:250 g/L spirit:${spirit}`,
  (spirit) => `/mix water:1 l spirit:${spirit}`,
  (spirit) => `/dilute to-strength:20% spirit:${spirit}`,
  (spirit) => `/blend parts:500 ml 30% 200 g/L + ${spirit}`,
  (spirit) => `/jar start new of:10 lemons spirit:${spirit}`,
  (spirit) => `/jar add m spirit:${spirit}`,
  (spirit) => `/jar correct m spirit:${spirit}`,
  (spirit) => `/jar correct m entry:2 spirit:${spirit}`,
  (spirit) => `/again m spirit:${spirit}`,
]

const deskWithJar = async () => {
  const desk = jarDesk()
  await desk.ask('/jar start m of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar add m spirit:100 ml 95%')
  return desk
}

const entriesOf = async (desk: ReturnType<typeof jarDesk>) =>
  (await desk.person()).jars.map(({ entries }) => entries.length)

test('150 phrasings are tried, before the strength and after it', () => {
  expect(undrinkableSpirits.length).toBeGreaterThan(300)
})

/** Of the commands one, another each time; all of them in the full counts. */
const linesFor = (place: number) => LINES.filter((_, at) => at % runs(11, 1) === place % runs(11, 1))

test('no command takes one of them, and nothing is recorded', async () => {
  const desk = await deskWithJar()
  for (const [place, spirit] of sampled([...undrinkableSpirits.entries()], 2)) {
    for (const line of linesFor(place)) {
      const { code, message } = await desk.refused(line(spirit))
      expect(['refused', 'ambiguous'], `${line(spirit)} → ${message}`).toContain(code)
    }
  }
  expect(await entriesOf(desk)).toEqual([2])
})

test('each is refused with its reason, and what to do if it was drunk', () =>
  eachHolds(sampled(undrinkableSpirits, 4), String, async (spirit) => {
    const { code, message } = await jarDesk().refused(`/plan of:10 lemons spirit:${spirit}`)
    // Both a grade and a question: is it sold for drinking?
    if (spirit === '1 l 100% ethanol') return expect(code).toBe('ambiguous')
    expect(code).toBe('refused')
    expect(message).toMatch(/call a poison centre or the emergency number now\./)
  }))

test.each([
  'vodka with oleander 40%',
  '40% vodka with oleander',
  'vodka with valium 40%',
  'gin with tonka beans 40%',
  'cannabis tincture 60%',
  'boiling 95%',
  'vodka in the microwave 40%',
  'flaming 95%',
])('1 l %s is refused by every command', async (words) => {
  const desk = await deskWithJar()
  for (const line of LINES) expect((await desk.refused(line(`1 l ${words}`))).code).toBe('refused')
})

describe('undrinkable alcohol is refused in other options too', () => {
  test.each([
    '/plan of:10 lemons + 500 ml methylated spirit spirit:1 l 40%',
    '/plan of:10 lemons spirit:oleander',
    '/plan of:10 lemons spirit:1 l vodka with oleander 40 x',
    '/plan of:500 ml isopropyl alcohol spirit:1 l 40%',
    '/jar add m of:500 ml hand sanitiser',
    '/jar add m water:500 ml antifreeze',
    '/jar add m water:500 ml denatured alcohol',
    '/jar add m sugar:500 g oleander',
    '/jar strain m measured:920 ml methanol',
    '/plan of:10 lemons spirit:1 l strength:95% denatured',
    '/plan of:10 lemons spirit:1 l 95% bottles:4 x 500 ml oleander',
    '/serving pour:40 ml rubbing alcohol strength:40%',
    '/jar start methylated spirit of:10 lemons spirit:1 l 95%',
    '/jar start oleander of:10 lemons spirit:1 l 95%',
    '/jar start of:10 lemons spirit:1 l 95% name:oleander 2',
    '/jar rename m to:Foxglove',
    '/again m name:meths',
    '/label strength:30% sweetness:200 g/L of:rubbing alcohol',
  ])('%s', async (line) => {
    const desk = await deskWithJar()
    expect((await desk.refused(line)).code).toBe('refused')
    expect(await entriesOf(desk)).toEqual([2])
  })

  test.each([
    '/mix spirit:1 l 95% water:1 l sugar:500 g castor sugar',
    '/jar start of:10 lemons spirit:1 l 95% when:today',
    '/plan of:10 lemons spirit:1 l 95% ready-by:24 luglio',
    '/plan of:10 lemons spirit:1 l 95% bottles:4 bottles of 500 ml',
  ])('an ordinary option is none of that: %s', async (line) => {
    await jarDesk().ask(line)
  })

  test.each(['Rue Saint-Denis', 'Yew Tree Cottage plum', 'lily of the plot', 'methodical', 'Nail and Hammer'])(
    'a jar may be called %s',
    async (name) => {
      await jarDesk().ask(`/jar start ${name} of:10 lemons spirit:1 l 95%`)
    },
  )

  test.each([
    ['put in some oleander leaves', 'oleander'],
    ['topped up with methylated spirit', 'methylated'],
  ])('a note is recorded, and says so: %s', async (note, named) => {
    const desk = await deskWithJar()
    const { cautions } = await desk.ask(`/jar taste m rating:3 note:${note}`)
    expect(cautions[0]).toMatchObject({ key: 'note_names', text: expect.stringContaining(named) })
    expect(await entriesOf(desk)).toEqual([3])
  })

  test.each([
    'smells like nail polish remover',
    'tastes like rubbing alcohol',
    'a little like oleander in bloom',
    'needs thinner syrup',
    'too much pepper, less ginger',
    'white foam of milk',
  ])('nothing is said of a note: %s', async (note) => {
    const desk = await deskWithJar()
    const { cautions } = await desk.ask(`/jar taste m rating:3 note:${note}`)
    expect(cautions.map(({ key }) => key)).not.toContain('note_names')
  })
})

test('at least 97 in 100 of the spirits that people pour are planned as they type them', async () => {
  const desk = jarDesk()
  const failed: string[] = []
  const spirits = sampled(goodSpirits, 3)
  for (const spirit of spirits) {
    const { error } = await desk.anyOf(`/plan of:1 lemon + 10 g ginger spirit:${spirit}`)
    if (error !== undefined) failed.push(`${spirit}: ${error.message}`)
  }
  expect(goodSpirits.length).toBeGreaterThan(150)
  expect(failed.length / spirits.length, failed.join('\n')).toBeLessThanOrEqual(0.03)
})

test.each(['vodka with Muskatblüte · Süßholz 40%', 'vodka with deer’s tongue : a low limit 40%', 'blah · blah 40%'])(
  'what has no text in its place ends in a question: %s',
  async (spirit) => {
    const { error } = await jarDesk().anyOf(`/plan of:10 lemons spirit:1 l ${spirit}`)
    expect(error!.code).not.toBe('internal')
  },
)
