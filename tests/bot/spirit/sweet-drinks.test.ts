import { describe, expect, test } from 'vitest'
import { jarDesk, numberIn, type StepJson } from '../commands-jar/desk.ts'

const deskWithJar = async () => {
  const desk = jarDesk()
  await desk.ask('/jar start m of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
  return desk
}

const sugarG = (json: StepJson): number => (numberIn(json, 'sugarGPerL') * numberIn(json, 'volumeMl')) / 1000

describe('a liqueur or a wine without its sweetness', () => {
  test.each([
    '/plan of:10 lemons spirit:500 ml orange liqueur 28%',
    '/plan of:10 lemons spirit:1 l 95% + 500 ml vermouth 16%',
    '/jar start of:10 lemons spirit:1 l 60% + 200 ml sloe gin 28%',
    '/jar add m spirit:500 ml orange liqueur 28%',
    '/jar add m spirit:500 ml red wine 13%',
    '/jar correct m entry:1 spirit:1 l 60% + 100 ml limoncello 30%',
    '/again m spirit:1 l 60% + 100 ml port 20%',
    '/mix spirit:500 ml orange liqueur 28% water:100 ml',
    '/dilute spirit:500 ml orange liqueur 28% to-strength:20%',
    '/blend parts:500 ml lemon vodka 38% + 500 ml 20% 100 g/L',
    '/syrup infusion:920 ml of:8 lemons spirit:1 l 95% + 100 ml my own liqueur 30% to-strength:20%',
  ])('%s is asked for it, with a line that runs', async (line) => {
    const desk = await deskWithJar()
    const { code, message } = await desk.refused(line)
    expect([code, message]).toEqual(['ambiguous', expect.stringMatching(/^How sweet is (?:the|your) /)])
    const [, answer] = / (\/.*)$/.exec(message)!
    expect(answer).toContain('250 g/L')
    await desk.ask(answer!)
  })
})

describe('its sugar counts', () => {
  test('in a mixture: 500 ml of 250 g/L bring 125 g', async () => {
    const mixed = await jarDesk().ask('/mix spirit:500 ml orange liqueur 28% 250 g/L + 1 l vodka 40% water:500 ml')
    expect(sugarG(mixed)).toBeCloseTo(125, 6)
    const blended = await jarDesk().ask('/blend parts:500 ml orange liqueur 28% 250 g/L + 1 l vodka 40% + 500 ml water')
    expect(sugarG(blended)).toBeCloseTo(125, 6)
  })

  test('in water that brings it down, which takes none away', async () => {
    const thinned = await jarDesk().ask('/dilute spirit:500 ml orange liqueur 28% 250 g/L to-strength:20%')
    expect(sugarG(thinned)).toBeCloseTo(125, 0)
    expect(numberIn(thinned, 'abvPercent')).toBeCloseTo(20, 1)
  })

  test('in a jar that is started, added to, put right, and begun again', async () => {
    const desk = await deskWithJar()
    const before = sugarG(await desk.ask('/jar show m'))
    await desk.ask('/jar add m spirit:200 ml orange liqueur 28% 250 g/L')
    expect(sugarG(await desk.ask('/jar show m')) - before).toBeCloseTo(50, 0)
    await desk.ask('/jar correct m entry:2 spirit:400 ml orange liqueur 28% 250 g/L')
    expect(sugarG(await desk.ask('/jar show m')) - before).toBeCloseTo(100, 0)
    // Of its strength alone: what was poured stays as sweet as it was.
    await desk.ask('/jar correct m entry:2 strength:25%')
    expect(sugarG(await desk.ask('/jar show m')) - before).toBeCloseTo(100, 0)
    const added = sugarG(await desk.ask('/jar show m'))
    await desk.ask(await desk.startLine('/again m'))
    expect(sugarG(await desk.ask('/jar show "m 2"'))).toBeCloseTo(added, 0)
    expect(await desk.textOf('/jar show "m 2"')).toMatch(/\(250 g\/L of sugar\)/)
  })

  test('in a plan, which needs that much less of it', async () => {
    const wish = 'to-strength:25% to-sweetness:200 g/L'
    const plain = await jarDesk().ask(`/plan of:10 lemons spirit:1 l 70% + 500 ml vodka 28% ${wish}`)
    const sweet = await jarDesk().ask(`/plan of:10 lemons spirit:1 l 70% + 500 ml orange liqueur 28% 250 g/L ${wish}`)
    expect(numberIn(plain, 'sugarG') - numberIn(sweet, 'sugarG')).toBeGreaterThan(100)
    expect(numberIn(sweet, 'sugarGPerL')).toBeCloseTo(200, 0)
  })

  test('in what is told to others', async () => {
    const desk = jarDesk()
    await desk.ask(
      '/jar start x of:10 lemons spirit:1 l 60% + 400 ml orange liqueur 28% 250 g/L to-strength:25% to-sweetness:200 g/L',
    )
    const [plan, shared] = [
      await desk.ask('/plan of:10 lemons spirit:1 l 60% + 400 ml 28% 250 g/L to-strength:25% to-sweetness:200 g/L'),
      await desk.ask('/share x'),
    ]
    const made = await desk.ask(`/plan from:${shared.data.code}`)
    expect(numberIn(made, 'sugarGPerL')).toBeCloseTo(numberIn(plan, 'sugarGPerL'), 0)
    expect(numberIn(made, 'volumeMl') / numberIn(plan, 'volumeMl')).toBeCloseTo(1, 1)
  })
})

test('the name on a bottle is said back once, wherever the spirit goes', async () => {
  const desk = await deskWithJar()
  for (const line of [
    '/plan of:10 lemons spirit:700 ml Allotment Pride gin 40%',
    '/jar start of:10 lemons spirit:700 ml Allotment Pride gin 40%',
    '/jar add m spirit:100 ml Allotment Pride gin 40%',
    '/mix spirit:700 ml Allotment Pride gin 40% + 100 ml Allotment Pride gin 40% water:100 ml',
    '/dilute spirit:700 ml Allotment Pride gin 40% to-strength:20%',
    '/blend parts:700 ml Allotment Pride gin 40% + 500 ml 20% 100 g/L',
    '/syrup infusion:920 ml of:8 lemons spirit:1 l Allotment Pride gin 60% to-strength:30% to-sweetness:100 g/L',
    '/again m spirit:700 ml Allotment Pride gin 60%',
    '/jar correct m entry:2 spirit:100 ml Allotment Pride gin 41%',
  ]) {
    const { notes } = await desk.ask(line)
    const said = notes.filter(({ key }) => key === 'bottle_named').map(({ text }) => text)
    expect(said, line).toEqual(['I’ve read “Allotment Pride” as the name on the bottle.'])
  }
})
