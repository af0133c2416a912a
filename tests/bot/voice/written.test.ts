import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { BANNED } from './banned.ts'
import { UNREAD_FILES } from './exceptions.ts'

const FOLDER = join(import.meta.dirname, '..', '..', '..', 'bot', 'text', 'en')

const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))

/** Of a source: what stands between quotes, without what is put in. */
const textsIn = (source: string): readonly string[] => {
  const bare = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '')
  return [...bare.matchAll(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g)]
    .map(([text]) => text.slice(1, -1).replaceAll(/\$\{[^}]*\}/g, ' '))
    .filter((text) => text.includes(' '))
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
  const found = foundIn(name)
  const allowed = UNREAD_FILES[name] ?? 0
  expect(found.length <= allowed ? [] : found).toEqual([])
})
