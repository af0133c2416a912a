import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { HELD, SENTENCE_FILES, sentencesOf } from '../corpus.ts'
import { examplesOf, examplesOffTopic } from './examples.ts'
import { learn } from './learn.ts'

/** Learns from all sentences that are not held back what sentences are after, and keeps it where the bot reads it. */
const examples = [
  ...(await examplesOf(SENTENCE_FILES.filter((name) => !HELD.has(name)).flatMap(sentencesOf))),
  ...(await examplesOffTopic()),
]
const { aims, weights } = learn(examples)
const rows = Object.entries(weights).map((row) => row.map((part) => JSON.stringify(part)).join(': '))
const text = `{\n"aims": ${JSON.stringify(aims)},\n"weights": {\n${rows.join(',\n')}\n}\n}\n`
writeFileSync(join(import.meta.dirname, '../../../bot/talk/hunch/learnt.json'), text)
console.log(`${examples.length} sentences, ${aims.length} aims, ${rows.length} features, ${text.length} bytes`)
