import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { sentenceIn } from '../../../bot/talk/bits/sentence.ts'
import { featuresOf } from '../../../bot/talk/hunch/features.ts'
import type { TalkKind } from '../../../bot/talk/hunch/talk-kind.ts'
import { english } from '../../../bot/talk/lexicon/english.ts'
import { italian } from '../../../bot/talk/lexicon/italian.ts'
import { readOffTopic, type Sentence } from '../corpus.ts'
import type { Example } from './learn.ts'

const line = z.strictObject({ kind: z.string(), lang: z.enum(['en', 'it']), text: z.string().trim().min(1) })

/** What strangers say in a talk besides its matter, by somebody who had not seen the reader: sixty in English and eighteen in Italian of a kind. */
export const smallTalkLines = () =>
  readFileSync(join(import.meta.dirname, '../small-talk.jsonl'), 'utf8')
    .trim()
    .split('\n')
    .map((each) => line.parse(JSON.parse(each)))

/** The kinds of what the corpus means; null where it may be one or another. */
const KIND: Readonly<Partial<Record<Sentence['meaning']['intent'], TalkKind | null>>> = {
  more: 'more',
  explain: 'why',
  how_sure: 'how_sure',
  done: 'done',
  thanks: 'thanks',
  greeting: 'greeting',
  help: 'help',
  never_mind: 'never_mind',
  undo: 'undo',
  yes: 'yes',
  reminders_show: 'reminders_show',
  reminders_on: 'reminders_on',
  reminders: null,
  pause: null,
}

function kindOf({ also, entry, intent }: Sentence['meaning']): TalkKind | null {
  if (also !== undefined || (intent === 'explain' && entry !== undefined)) return 'other'
  return intent in KIND ? KIND[intent]! : 'other'
}

const surroundings = { lexicons: [english, italian], jars: [], today: { year: 2026, month: 11, day: 29 } }

/** The sentence by itself, whatever jars there are and whatever was said before. */
export const talkSentence = (text: string) => sentenceIn(text, surroundings)

const example = (aim: TalkKind, text: string): Example => ({ aim, features: featuresOf(talkSentence(text), undefined) })

/** Of the small things of a talk, and of its matter. */
export const examplesOfTalk = (sentences: readonly Sentence[], lines = smallTalkLines()): readonly Example[] => [
  ...lines.map(({ kind, text }) => example(kind as TalkKind, text)),
  ...sentences.flatMap(({ text, meaning }) => {
    const kind = kindOf(meaning)
    return kind === null ? [] : [example(kind, text)]
  }),
  ...readOffTopic().map(({ text }) => example('other', text)),
]
