import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Stage } from '../../../../core/jar/state/jar-state.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { MONTHS } from '../day-text.ts'
import { dangerWords } from '../jar/danger-sentences.ts'
import { shortDayWords } from '../jar/day-words.ts'
import { type TaskSaid, tasksText } from '../jar/duty-words.ts'
import { dayOfText } from '../jar/list-sentences.ts'
import { altList } from './alt-text.ts'

interface Jar {
  readonly name: string
  readonly stage: Stage
  readonly day: number
  readonly ofDays: number | null
  readonly tasks: readonly TaskSaid[]
  readonly danger: DangerKind | null
}

interface Shelf {
  readonly jars: readonly Jar[]
  readonly today: IsoDay
}

const counted = (count: number): string => (count === 1 ? 'one jar' : `${count} jars`)

const due = ({ tasks, danger }: Pick<Jar, 'tasks' | 'danger'>, today: IsoDay, format: Format): string =>
  [danger === null ? '' : dangerWords[danger], tasksText(tasks, today, format)].filter((text) => text !== '').join('; ')

const withTask = (jar: Jar, stands: string, today: IsoDay, format: Format): string => {
  const asked = due(jar, today, format)
  return asked === '' ? stands : `${stands}: ${asked}`
}

const empty = 'No jar stands here yet.'

/** What stands on the picture of all jars. */
export const shelfText = {
  title: () => 'My larder shelf',
  count: (count: number) => (count === 0 ? 'empty' : counted(count)),
  today: (today: IsoDay, format: Format) => `today, ${shortDayWords(today, today, format)}`,
  month: (month: number) => (MONTHS[month - 1] ?? '').slice(0, 3),
  due,
  phase: { steeping: 'steeping', straining: 'time to strain', resting: 'after straining' },
  ready: () => 'ready',
  more: (count: number) => `and ${count} more`,
  empty: () => empty,
  howToBegin: () => '/plan works out what goes into one, /jar start begins it.',
  alt: ({ jars, today }: Shelf, format: Format) => {
    const { year } = dayFromIso(today)
    const on = `${shortDayWords(today, today, format)} ${year}`
    if (jars.length === 0) return `An empty larder shelf on ${on}. ${empty}`
    const said = `${counted(jars.length)} on the larder shelf on ${on}:`
    return altList(
      said.replace(/^./, (letter) => letter.toUpperCase()),
      [
        jars.map((jar) => withTask(jar, `${jar.name}, ${jar.stage}, ${dayOfText(jar)}`, today, format)),
        jars.map((jar) => withTask(jar, jar.name, today, format)),
      ],
      (count) => `and ${count} more`,
    )
  },
}
