import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { tell } from './stories/tell.ts'

const FOLDER = join(import.meta.dirname, 'stories')
const isRetelling = process.env.LARDERBELL_RETELL !== undefined

const stories = readdirSync(FOLDER).filter((name) => name.endsWith('.txt'))

const read = (name: string): string => readFileSync(join(FOLDER, name), 'utf8')

/** What stands between two lines that begin so. */
const between = (text: string, from: string, to: string): string => {
  const start = text.indexOf(`\n${from}`)
  const end = text.indexOf(`\n${to}`, start + 1)
  expect([from, start, to, end]).not.toContain(-1)
  return text.slice(start, end)
}

const IN_IT_NOW = /(?:strained|sweetened): ([\d.]+) (ml|l) at ([\d.]+) %/

/** Pure alcohol in what a reply says is in the jar, ml. */
const alcoholMl = (reply: string): number => {
  const [, amount, unit, percent] = IN_IT_NOW.exec(reply.replace(/\s+/g, ' ')) ?? []
  return (Number(amount) * (unit === 'l' ? 1000 : 1) * Number(percent)) / 100
}

describe('a typed conversation is answered as it stands in', () => {
  it.each(stories)('%s', async (name) => {
    const told = await tell(read(name))
    if (isRetelling) writeFileSync(join(FOLDER, name), told)
    expect(told).toBe(read(name))
    expect(told).not.toMatch(/\bNaN\b|\bundefined\b|\bnull\b|\[object|broke on my side/)
  })
})

describe('what the conversations say holds', () => {
  it.each([['lemon.txt', '> /jar strain lemon', '> /jar sweeten lemon']])(
    '%s: %s and %s hold the same alcohol, within the whole percents shown',
    (name, strained, sweetened) => {
      const text = read(name)
      const [before, after] = [
        alcoholMl(between(text, strained, sweetened)),
        alcoholMl(between(text, sweetened, '> /jar')),
      ]
      expect(before).toBeGreaterThan(200)
      expect(Math.abs(after - before) / before).toBeLessThan(0.03)
    },
  )

  it('the walnuts’ past is not asked about: in the days after their entry only what can be done is, once', () => {
    const reminded = [...read('walnut.txt').matchAll(/^~ (\S+) \S+\n(.*)/gm)].map(([, day, what]) => [day!, what!])
    expect(reminded.length).toBeGreaterThan(3)
    expect(reminded.filter(([day]) => day! <= '2026-08-28')).toEqual([
      ['2026-08-26', 'Shake walnut. Strain walnut now: it was due by 24 August.'],
    ])
  })

  it('nothing is said during the holiday, and everything once at its end', () => {
    const reminded = [...read('four-jars.txt').matchAll(/^~ (\S+)/gm)].map(([, day]) => day!)
    expect(reminded.filter((day) => day > '2026-09-08' && day <= '2026-09-22')).toEqual(['2026-09-22'])
  })
})
