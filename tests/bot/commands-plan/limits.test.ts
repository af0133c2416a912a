import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { ask, askAny } from './desk.ts'

const UNSEEMLY = /undefined|NaN|Infinity|null|\(Illicium|, (?:dried|whole|cassia)\b/

/** The line that a refusal ends with. */
const lineIn = (message: string | undefined): string => /: (\/(?:plan|jar) .+)$/.exec(message ?? '')?.[1] ?? ''

const refused = async (line: string) => {
  const { error } = await askAny(line)
  expect(error, line).toMatchObject({ code: 'over_ceiling' })
  const message = error!.message.replaceAll('\u00a0', ' ')
  expect(message).not.toMatch(UNSEEMLY)
  return message
}

describe('amounts that had no ceiling', () => {
  it.each([
    ['/plan of:500 g genepi spirit:1 l 95%', 'For 1 l of spirit use at most 25 g genepi'],
    ['/plan from:11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3', 'For 2 l of spirit use at most 50 g genepi'],
    ['/plan of:800 g coffee beans spirit:1 l 95%', 'For 1 l of spirit use at most 620 g coffee beans'],
    ['/plan of:200 g cloves spirit:1 l 40%', 'For 1.33 l of drink use at most 33 g cloves'],
    ['/plan of:500 g star anise spirit:1 l 95%', 'at most 57 g star anise'],
    ['/plan of:500 g allspice spirit:1 l 95%', 'at most 200 g allspice'],
    ['/plan of:500 g dried chilli spirit:1 l 95%', 'at most 32 g dried chilli'],
    ['/plan of:500 g Ceylon cinnamon spirit:1 l 95%', 'at most 66 g Ceylon cinnamon'],
    ['/plan of:1 kg turmeric spirit:1 l 95%', 'at most 750 g turmeric'],
    ['/plan of:500 g lavender spirit:1 l 95%', 'at most 100 g lavender flowers'],
    ['/plan of:200 g angelica root spirit:1 l 95%', 'at most 150 g angelica root'],
    // So much drinks up all of the spirit; more spirit would not do.
    ['/plan of:2 kg liquorice spirit:1 l 40%', 'at most 20 g liquorice root'],
    ['/plan of:20 lb nutmeg spirit:1 l 40%', 'at most 1 g nutmeg'],
    ['/plan of:1000 cloves spirit:1 l 40%', 'One clove weighs'],
  ])('%s: %s, and the line that it offers is planned', async (line, most) => {
    const message = await refused(line)
    expect(message).toContain(most)
    const offered = await ask(lineIn(message))
    expect(offered.data.botanicals).toHaveLength(1)
  })

  // 63 g in a litre of drink at 16 mg/g, from memory.
  it('a code of 200 g/L of ground coffee is what its makers use, and says how much caffeine that is', async () => {
    const { cautions, notes } = await ask('/plan from:11K4PHTR0001MYJ0JNHC00VV9QPCBAHF2JVV8AKP')
    expect(cautions.map(({ text }) => text).join(' ')).toMatch(/caffeine/)
    expect(notes.find(({ key }) => key === 'plan_caffeine')?.text).toMatch(/40 ml glass .* 50 mg .* 200 mg at once/)
    const tea = await ask('/plan of:10 g black tea spirit:1 l 40%')
    expect(tea.notes.map(({ key }) => key)).not.toContain('plan_caffeine')
  })

  it('rosemary, of which no figure says where it harms, is warned of at a figure', async () => {
    const { notes } = await ask('/plan of:500 g rosemary spirit:1 l 70%')
    expect(notes.find(({ key }) => key === 'plan_above_wise')?.text).toMatch(/500.g .*40.g/)
    const usual = await ask('/plan of:40 g rosemary spirit:1 l 70%')
    expect(usual.notes.map(({ key }) => key)).not.toContain('plan_above_wise')
  })
})

describe('a refusal helps', () => {
  it('says what a stick weighs where sticks were counted', async () => {
    const message = await refused('/plan of:1 stick cassia spirit:1 l 40%')
    expect(message).toContain('One stick of cassia weighs 3 to 5 g.')
    expect(lineIn(message)).toBe('/plan of:3.3 g cassia spirit:1 l 40%')
    await ask(lineIn(message))
    expect(await refused('/plan of:2 nutmegs spirit:1 l 95%')).toContain('One nutmeg weighs 5 to 7 g.')
    expect(await refused('/plan of:10 g cassia spirit:1 l 40%')).not.toContain('One stick')
  })

  it('keeps every other word of the line, and puts all that is too much right at once', async () => {
    const line = '/plan of:2 stick cassia + 1 nutmeg + 10 lemons spirit:1 l 40% bottles:500 ml to-strength:28%'
    const offered = lineIn(await refused(line))
    expect(offered).toMatch(/^\/plan of:[\d.]+ g cassia \+ [\d.]+ g nutmeg \+ 10 lemons spirit:1 l 40% bottles:500 ml /)
    await ask(offered)
  })

  it('offers no more than is usual, though more is allowed', async () => {
    expect(lineIn(await refused('/plan of:200 g cloves spirit:1 l 95%'))).toBe('/plan of:2 g cloves spirit:1 l 95%')
  })

  it('of dried plants speaks as of dried ones', async () => {
    expect(await refused('/plan of:3 g dried sage spirit:1 l 95%')).toContain('at most 2.5 g dried sage leaves')
  })
})

test('a usual dose is never over a limit: what a plan chooses itself is planned, in weak spirit too', async () => {
  for (const { names, ceiling, form } of catalogue) {
    if (ceiling === null) continue
    const noun = names.en.find((name) => !/^(?:angelica|anise)s?$/.test(name))
    for (const strength of [45, 90]) {
      const { error } = await askAny(`/plan of:${form.state} ${noun} spirit:1 l ${strength}%`)
      expect(error?.code, `${noun} in ${strength} %`).not.toBe('over_ceiling')
    }
  }
})

test.each([
  '/plan of:star anise + aniseed + fennel seed spirit:1 l 40%',
  '/plan of:wormwood + genepi + fresh sage spirit:1 l 60%',
  '/plan of:coffee beans + black tea spirit:1 l 40%',
  '/plan of:wormwood + 15 g genepi spirit:1 l 70%',
])('%s: plants of one hazard share its limit', async (line) => {
  expect((await ask(line)).data.botanicals.every(({ massG }) => massG > 0)).toBe(true)
})

test.each([
  ['20 g star anise + 60 g fennel seed + 60 g aniseed', 'anethole'],
  ['400 g coffee beans + 150 g black tea', 'caffeine'],
  ['4 g cassia + 20 g Ceylon cinnamon', 'coumarin'],
  ['15 g genepi + 1 g wormwood', 'thujone'],
])('%s is too much %s together', async (plants, substance) => {
  expect(await refused(`/plan of:${plants} spirit:1 l 95%`)).toContain(substance)
})

// From memory: German, French and Spanish names.
test.each(['Muskatnuss', 'noix de muscade', 'nuez moscada', 'Wermut', 'absinthe', 'ajenjo', 'Kassiazimt', 'Süßholz'])(
  '50 g %s is as much as under its English name',
  async (name) => {
    await ask(lineIn(await refused(`/plan of:50 g ${name} spirit:1 l 70%`)))
  },
)
