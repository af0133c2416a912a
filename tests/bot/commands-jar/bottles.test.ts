import fc from 'fast-check'
import { expect, it, test } from 'vitest'
import { runs, SEED } from '../../runs.ts'
import { jarDesk } from './desk.ts'

/** Five bottles of half a litre and two of a fifth of one. */
const shelf = async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  desk.at('2026-10-20')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar sweeten lemon water:1.56 l sugar:520 g')
  desk.at('2026-11-01')
  await desk.ask('/jar bottle lemon bottles:4 x 500 ml + 2 x 200 ml')
  desk.at('2026-12-20')
  return desk
}

interface Stock {
  readonly volumeMl: number
  readonly filled: number
  readonly given: number
  readonly opened: number
  readonly left: number
}

const stockIn = (data: { readonly [name: string]: unknown }): readonly Stock[] => data.bottles as readonly Stock[]

it('counts what is given away and what is opened, and what is left', async () => {
  const desk = await shelf()
  expect(stockIn((await desk.ask('/bottles jar:lemon given:2')).data)).toEqual([
    { volumeMl: 500, filled: 4, given: 2, opened: 0, left: 2 },
    { volumeMl: 200, filled: 2, given: 0, opened: 0, left: 2 },
  ])
  const { data } = await desk.ask('/bottles jar:lemon opened:1 x 200 ml')
  expect(stockIn(data)[1]).toMatchObject({ opened: 1, left: 1 })
  const shown = await desk.ask('/bottles')
  expect((shown.data.jars as readonly { readonly bestUntil: string }[])[0]).toMatchObject({ bestUntil: '2027-11-01' })
  expect(await desk.textOf('/bottles')).toContain(
    'Lemon: 2 of 4 bottles of 500 ml left, 2 given away. 1 of 2 bottles of 200 ml left, 1 opened. Best until about November 2027.',
  )
})

it('is undone, and stays out of the liquid', async () => {
  const desk = await shelf()
  const before = (await desk.ask('/jar show lemon')).data.volumeMl
  expect((await desk.ask('/bottles jar:lemon given:3')).data.volumeMl).toBe(before)
  await desk.ask('/jar undo lemon')
  const { data } = await desk.ask('/bottles jar:lemon')
  expect(stockIn((data.jars as readonly { readonly [name: string]: unknown }[])[0]!)[0]).toMatchObject({ left: 4 })
})

it('offers to empty the jar once the last bottle is gone', async () => {
  const desk = await shelf()
  await desk.ask('/bottles jar:lemon given:4 x 500 ml')
  expect(await desk.textOf('/bottles jar:lemon opened:2 x 200 ml')).toContain('/jar empty lemon')
})

test.each([
  ['/bottles jar:lemon given:5 x 500 ml', 'There are only 4 of the 500 ml bottles of lemon left. How many was it?'],
  [
    '/bottles jar:lemon given:1 x 700 ml',
    'Lemon has no bottles of 700 ml, only of 500 ml or 200 ml. Which ones, and how many?',
  ],
  ['/bottles given:2', 'Which jar? For example: /bottles lemon given:2'],
  ['/lable lemon', 'I don’t know “lable”. Did you mean /label lemon'],
  ['/lable pear', 'I don’t know “lable”. Did you mean /label? See: /help label'],
  ['/bottles lemon gifen:99', 'I don’t know what to do with “gifen:”. Did you mean given:? See: /help bottles'],
  ['/bottles jar:lemon given:1 opened:1', 'Given away or opened? Say one after the other.'],
])('asks back of %s', async (line, message) => {
  expect((await (await shelf()).refused(line)).message).toBe(message)
})

it('says that no bottles are left, whatever was left over when they were filled', async () => {
  const desk = await shelf()
  await desk.ask('/bottles jar:lemon given:4 x 500 ml')
  await desk.ask('/bottles jar:lemon opened:2 x 200 ml')
  expect(await desk.textOf('/bottles')).toContain('No bottles left on the shelf.')
})

it('has nothing to give of what is not in bottles', async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  expect((await desk.refused('/bottles jar:lemon given:1')).code).toMatch(/wrong_stage|not_found/)
  expect(await desk.textOf('/bottles')).toContain('Nothing’s bottled yet.')
})

it('never gives more than there were, in any order of steps', async () => {
  const step = fc.record({ use: fc.constantFrom('given', 'opened'), count: fc.integer({ min: 1, max: 3 }) })
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 6 }), async (steps) => {
      const desk = await shelf()
      let left = 4
      for (const { use, count } of steps) {
        const { error } = await desk.anyOf(`/bottles jar:lemon ${use}:${count} x 500 ml when:19 December 2026`)
        expect(error === undefined).toBe(count <= left)
        if (error === undefined) left -= count
      }
      const { data } = await desk.ask('/bottles jar:lemon')
      expect(stockIn((data.jars as readonly { readonly [name: string]: unknown }[])[0]!)[0]!.left).toBe(left)
    }),
    { seed: SEED, numRuns: runs(4, 60) },
  )
}, 120_000)

it('says of what is past its best that it is, and to drink it next', async () => {
  const desk = await shelf()
  desk.at('2028-02-01')
  expect(await desk.textOf('/bottles')).toContain('It was at its best until about November 2027: drink it next.')
  await desk.ask('/bottles jar:lemon given:4 x 500 ml')
  await desk.ask('/bottles jar:lemon given:2 x 200 ml')
  expect(await desk.textOf('/bottles')).not.toContain('drink it next')
})
