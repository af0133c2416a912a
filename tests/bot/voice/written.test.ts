import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { BANNED } from './banned.ts'

const FOLDER = join(import.meta.dirname, '..', '..', '..', 'bot', 'text', 'en')

const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))

/** A warning in capitals, as labels have it. */
const isInCapitals = (text: string): boolean => text === text.toUpperCase()

/** Of a source: what stands between quotes, without what is put in; ways in which a maker asks are not the bot's words. */
const textsIn = (source: string): readonly string[] => {
  const bare = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    .replace(/\basked: \[[^\]]*\]/g, '')
  return [...bare.matchAll(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g)]
    .map(([text]) => text.slice(1, -1).replaceAll(/\$\{[^}]*\}/g, ' '))
    .filter((text) => text.includes(' ') && !isInCapitals(text))
}

const foundIn = (name: string): readonly string[] =>
  textsIn(readFileSync(join(FOLDER, name), 'utf8')).flatMap((text) =>
    BANNED.filter(([phrase]) => phrase.test(text)).map(([phrase, instead]) => `${phrase} (${instead}): ${text}`),
  )

it('reads all there is', () => {
  expect(files.length).toBeGreaterThan(25)
  expect(files.flatMap((name) => textsIn(readFileSync(join(FOLDER, name), 'utf8'))).length).toBeGreaterThan(2000)
})

it.each(files)('%s says what it says in plain words', (name) => {
  expect(foundIn(name)).toEqual([])
})
