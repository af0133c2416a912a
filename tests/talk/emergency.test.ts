import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { findHarm } from '../../bot/talk/emergency/find-harm.ts'
import { HARMS } from '../../bot/talk/emergency/harm.ts'

const root = join(import.meta.dirname, '..', '..')

interface Sentence {
  readonly lang: 'en' | 'it'
  readonly text: string
  readonly id?: string
}

const sentencesIn = (name: string): readonly Sentence[] =>
  readFileSync(join(import.meta.dirname, name), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Sentence)

const harms = sentencesIn('emergency.jsonl')

describe('somebody harmed', () => {
  it('is told of in more than 120 sentences of English and 60 of Italian, for every harm', () => {
    expect(harms.filter(({ lang }) => lang === 'en').length).toBeGreaterThanOrEqual(120)
    expect(harms.filter(({ lang }) => lang === 'it').length).toBeGreaterThanOrEqual(60)
    expect(new Set(harms.map(({ id }) => id))).toEqual(new Set(HARMS))
  })

  it('is understood in every sentence', () => {
    const others = harms.map((sentence) => ({ ...sentence, found: findHarm(sentence.text) }))
    expect(others.filter(({ id, found }) => found !== id)).toEqual([])
  })

  it.each([
    'my son drank from the jar',
    'il cane ha mangiato le ciliegie',
    'my sleeve is on fire',
    'hes not waking up',
  ])('is found in capitals, without accents, after a command, in an option and before more words: %s', (text) => {
    const harm = findHarm(text)
    expect(harm).not.toBeNull()
    const ways = [text.toUpperCase(), `/plan of:${text}`, `/jar note lemon ${text}`, `help ${text}`, `${text}!!! pls`]
    for (const way of ways) expect(findHarm(way), way).toBe(harm)
  })
})

const stories = readdirSync(join(root, 'tests', 'bot', 'stories'))
  .filter((name) => name.endsWith('.txt'))
  .flatMap((name) => readFileSync(join(root, 'tests', 'bot', 'stories', name), 'utf8').split('\n'))

const readme = readFileSync(join(root, 'README.md'), 'utf8').split('\n')

const ordinary = [
  ...sentencesIn('ordinary.jsonl').map(({ text }) => text),
  ...sentencesIn('utterances.jsonl').map(({ text }) => text),
  ...stories,
  ...[...readme.join('\n').matchAll(/larderbell> (.+)/g)].map(([, line = '']) => line),
].filter((line) => line.trim() !== '')

describe('ordinary speech', () => {
  it('is more than 400 lines, half of them near the words of harm', () => {
    expect(ordinary.length).toBeGreaterThan(400)
    expect(sentencesIn('ordinary.jsonl').length).toBeGreaterThan(200)
  })

  it('is not answered as an emergency', () => {
    expect(ordinary.filter((text) => findHarm(text) !== null)).toEqual([])
  })
})

describe('any text', () => {
  it.each(['', ' ', '\u0000\u001b[31m', '🙂'.repeat(3000), 'a'.repeat(100_000), '"'.repeat(5000), 'he '.repeat(1300)])(
    'is looked at without a fault and in time',
    (text) => {
      const start = performance.now()
      expect(findHarm(text)).toBeNull()
      expect(performance.now() - start).toBeLessThan(1000)
    },
  )
})
