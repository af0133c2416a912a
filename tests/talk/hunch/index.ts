import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { LEARNT_FROM, sentencesOf } from '../corpus.ts'
import { examplesOf, examplesOffTopic } from './examples.ts'
import { examplesOfTalk } from './examples-of-talk.ts'
import { type Example, learn } from './learn.ts'

/** Keeps it where the bot reads it. */
function keep(name: string, examples: readonly Example[]): void {
  const { aims, weights } = learn(examples)
  const rows = Object.entries(weights).map((row) => row.map((part) => JSON.stringify(part)).join(': '))
  const text = `{\n"aims": ${JSON.stringify(aims)},\n"weights": {\n${rows.join(',\n')}\n}\n}\n`
  writeFileSync(join(import.meta.dirname, '../../../bot/talk/hunch', name), text)
  console.log(
    `${name}: ${examples.length} sentences, ${aims.length} aims, ${rows.length} features, ${text.length} bytes`,
  )
}

/** Learns from the sentences that are for it what sentences are after, and what is said in a talk besides. */
const sentences = LEARNT_FROM.flatMap(sentencesOf)
keep('learnt.json', [...(await examplesOf(sentences)), ...(await examplesOffTopic())])
keep('learnt-talk.json', examplesOfTalk(sentences))
