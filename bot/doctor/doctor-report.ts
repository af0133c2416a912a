import { dayFromIso } from '../../core/quantity/time/calendar-day.ts'
import { dayAt, minutesAt } from '../../core/quantity/time/zone.ts'
import type { StoreFacts } from '../../store/maintenance.ts'
import { columns } from '../terminal/show/columns.ts'
import { wrap } from '../terminal/show/wrap.ts'
import { clean } from '../text/clean.ts'
import type { DoctorText } from '../text/doctor-text.ts'
import { isFine, verdictOn } from './reminder-health.ts'

export interface Checkup {
  readonly version: string
  readonly node: string
  readonly folder: string
  /** Null: there is no folder. */
  readonly facts: StoreFacts | null
  readonly zone: string
  readonly nowMs: number
  /** Whether others may read the token. */
  readonly isTokenShown: boolean
}

type Row = readonly [label: keyof DoctorText['rows'], text: string]

const folderRows = (facts: StoreFacts, { zone, nowMs }: Checkup, text: DoctorText): readonly Row[] => {
  const { rights, holder, people, jars, unreadable, setAside, newestCopy, nextDueMs, status } = facts
  const moment = (ms: number): string =>
    text.moment({ day: dayAt(zone, ms), minutes: minutesAt(zone, ms), aheadMs: ms - nowMs })
  const known = status.kind === 'status' ? status.status : null
  const tick = status.kind === 'unreadable' ? text.noStatus() : text.none()
  return [
    ['rights', text.rights[rights]()],
    ['lock', text.lock(holder)],
    ['people', String(people)],
    ['jars', text.jars(jars)],
    ...(unreadable === 0 ? [] : [['unreadable', text.unreadable(unreadable)] as const]),
    ['set_aside', text.setAside(setAside)],
    ['copy', newestCopy === null ? text.none() : text.day(dayFromIso(newestCopy))],
    ['due', nextDueMs === null ? text.nothingDue() : moment(nextDueMs)],
    ['tick', known === null ? tick : moment(known.tickMs)],
    ...(known?.heardMs == null ? [] : [['heard', text.heard(moment(known.heardMs))] as const]),
    ['sent', known?.sentMs == null ? text.none() : moment(known.sentMs)],
    ['zone', text.zone({ zone })],
  ]
}

/** How the bot is, in lines of at most `width` columns; exit code 1 where no reminders come that should. */
export function doctor(
  checkup: Checkup,
  text: DoctorText,
  width: number,
): { readonly text: string; readonly code: 0 | 1 } {
  const { version, node, folder, facts, nowMs, isTokenShown } = checkup
  const rows: readonly Row[] = [
    ['version', version],
    ['node', node],
    ['folder', clean(folder)],
    ...(isTokenShown ? [['token', text.tokenShown()] as const] : []),
    ...(facts === null ? [] : folderRows(facts, checkup, text)),
  ]
  const verdict = verdictOn(facts, nowMs)
  const shown = columns(
    rows.map(([label, value]) => [text.rows[label](), clean(value)]),
    width,
  )
  return {
    text: [...wrap(text.verdict[verdict](), width), '', ...shown, ''].join('\n'),
    code: isFine(verdict) ? 0 : 1,
  }
}
