import { findEntry, rankEntries } from '../../bot/talk/handbook/find-entry.ts'
import { findLikelierSymptom, findLikelySymptom, findSymptomTold } from '../../bot/talk/handbook/find-symptom-told.ts'
import { findEntryRespelt } from '../../bot/talk/handbook/respell.ts'
import { type Hunch, hunch, hunchBy } from '../../bot/talk/hunch/hunch.ts'
import { english } from '../../bot/talk/lexicon/english.ts'
import { italian } from '../../bot/talk/lexicon/italian.ts'
import { readSentence } from '../../bot/talk/reader/read-sentence.ts'
import { en } from '../../bot/text/en/index.ts'
import { lazily } from '../../core/once.ts'
import { saidText } from '../../core/quantity/said/said-text.ts'
import { HELD, readOffTopic, SENTENCE_FILES, type Sentence, sentencesOf } from '../talk/corpus.ts'
import { examplesOf, examplesOffTopic } from '../talk/hunch/examples.ts'
import { type Example, learn } from '../talk/hunch/learn.ts'
import { talker, talkerFor } from '../talk/reader/told.ts'
import { isWronglyRecorded, TOPICS, type Verdict, verdictOn } from '../talk/reader/verdict.ts'

type Row = [label: string, value: string, goal?: string]

export const isTalkSet = (name: string): name is (typeof SENTENCE_FILES)[number] =>
  SENTENCE_FILES.some((each) => each === name)
const AMOUNTS = new Set(
  'plan recipe ideas season dose time_to_ready steep_time syrup dilute mix blend adjust serving servings freeze_check cost measure_boil_off measure_two_instruments cautions plant_info'.split(
    ' ',
  ),
)

const kindOf = ({ meaning: { intent } }: Sentence): string =>
  intent === 'trouble'
    ? 'symptoms'
    : AMOUNTS.has(intent)
      ? 'amounts'
      : TOPICS.has(intent)
        ? 'handbook'
        : 'jars, follow-ups'

type Counts = Record<Verdict, number> & { recorded: number }

const share = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`

const written = ({ right, asked, lost, wrong, recorded }: Counts): string => {
  const all = right + asked + lost + wrong
  return `${all}: right ${share(right, all)}, asked ${share(asked, all)}, lost ${share(lost, all)}, wrong ${share(wrong, all)}, wrongly recorded ${recorded}`
}

/** One letter swapped with its neighbour in the longest word. */
const slipped = (text: string): string => {
  const longest = text.match(/\p{L}{5,}/gu)?.toSorted((one, other) => other.length - one.length)[0]
  if (longest === undefined) return text
  const at = Math.floor(longest.length / 2)
  return text.replace(longest, longest.slice(0, at - 1) + longest[at] + longest[at - 1] + longest.slice(at + 1))
}

async function counted(
  sentences: readonly Sentence[],
  hunch: Hunch,
  change: (text: string) => string = (text) => text,
) {
  const counts = new Map<string, Counts>()
  for (const sentence of sentences) {
    const told = await (await talkerFor(sentence)).say(change(sentence.text), hunch)
    const verdict = verdictOn(told, sentence)
    for (const key of ['all', `${sentence.lang}, ${kindOf(sentence)}`]) {
      const count = counts.get(key) ?? { right: 0, asked: 0, lost: 0, wrong: 0, recorded: 0 }
      count[verdict]++
      if (isWronglyRecorded(told, sentence)) count.recorded++
      counts.set(key, count)
    }
  }
  return counts
}

type SetName = (typeof SENTENCE_FILES)[number]

/** Of every set that may be learnt from, so that each is read by a hunch that has not seen it, as the sentences of a stranger are. */
const learntFrom = lazily(async () => {
  const sets: { readonly set: SetName | 'off-topic'; readonly examples: readonly Example[] }[] = []
  for (const set of SENTENCE_FILES.filter((name) => !HELD.has(name)))
    sets.push({ set, examples: await examplesOf(sentencesOf(set)) })
  return [...sets, { set: 'off-topic', examples: await examplesOffTopic() }] as const
})

const hunchFrom = (examples: readonly Example[]): Hunch => {
  const learnt = learn(examples)
  return hunchBy(() => learnt)
}

/** How long reading alone takes, beside taking the words apart. */
function timed(texts: readonly string[]) {
  const knows = {
    lexicons: [english, italian],
    jars: [],
    today: { year: 2026, month: 11, day: 29 },
    findEntry: (text: string) => findEntry(text, en.handbook),
    findRespelt: (text: string) => findEntryRespelt(text, en.handbook),
    rankEntries: (text: string) => rankEntries(text, en.handbook),
    findSymptom: findSymptomTold,
    findLikelySymptom,
    findLikelierSymptom,
    hunch,
  }
  for (const text of texts.slice(0, 50)) readSentence(text, knows)
  const times = texts.map((text) => {
    const begin = performance.now()
    readSentence(text, knows)
    return performance.now() - begin
  })
  const begin = performance.now()
  for (const text of texts) saidText(text)
  const alone = (performance.now() - begin) / texts.length
  return { mean: times.reduce((sum, each) => sum + each, 0) / times.length, worst: Math.max(...times), alone }
}

/** What is understood of sentences, in full and with one slip, by whoever wrote them and what they are about. */
export async function benchTalk(named: readonly string[] = []): Promise<{ name: string; rows: readonly Row[] }> {
  const chosen = named.filter(isTalkSet)
  const files = chosen.length > 0 ? chosen : SENTENCE_FILES.filter((name) => !HELD.has(name))
  const rows: Row[] = []
  for (const name of files) {
    const sentences = sentencesOf(name)
    const unseen = hunchFrom((await learntFrom()).filter(({ set }) => set !== name).flatMap(({ examples }) => examples))
    const counts = await counted(sentences, unseen)
    const goal = name.startsWith('open') ? 'right ≥ 95 %' : 'right ≥ 85 %, wrong ≤ 3 %, wrongly recorded 0'
    rows.push([name, written(counts.get('all')!), goal])
    for (const [key, count] of [...counts].sort()) if (key !== 'all') rows.push([`  ${key}`, written(count)])
    rows.push(['  one slip', written((await counted(sentences, unseen, slipped)).get('all')!), '8 points less at most'])
    rows.push(['  greeted', written((await counted(sentences, unseen, (text) => `hi there! ${text}`)).get('all')!)])
  }
  let answered = 0
  for (const { text } of readOffTopic()) if ((await talker().say(text)).code !== 'not_understood') answered++
  rows.push(['off-topic answered', share(answered, readOffTopic().length), '≤ 5 %'])
  const { mean, worst, alone } = timed(files.flatMap((name) => sentencesOf(name).map(({ text }) => text)))
  rows.push([
    'reading one',
    `${mean.toFixed(2)} ms, worst ${worst.toFixed(1)} ms (its words alone ${alone.toFixed(3)} ms)`,
    'mean < 5 ms, worst < 50 ms',
  ])
  return { name: 'Sentences understood', rows }
}
