import { isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { DoctorMoment, DoctorText, FolderHolder } from '../doctor-text.ts'
import { counted, dayText, plural } from './phrases.ts'

const UNITS = [
  ['day', 86_400_000],
  ['hour', 3_600_000],
  ['minute', 60_000],
  ['second', 1000],
] as const

/** `40 seconds`, `2 hours`: cut off, not rounded. */
const span = (ms: number): string => {
  const [unit, unitMs] = UNITS.find(([, each]) => ms >= each) ?? ['second', 1000]
  return counted(Math.floor(ms / unitMs), unit)
}

const moment = ({ day, minutes, aheadMs }: DoctorMoment): string => {
  const time = `${dayText(day)}, ${isoTime(minutes)}`
  return aheadMs > 0 ? `${time} (in ${span(aheadMs)})` : `${time} (${span(-aheadMs)} ago)`
}

const process = ({ pid, host, isHere }: FolderHolder): string =>
  isHere ? `process ${pid}` : `process ${pid} on ${host}`

/** What `npm run doctor` says. */
export const doctorText: DoctorText = {
  rows: {
    version: () => 'Version',
    node: () => 'Node',
    folder: () => 'Folder',
    rights: () => 'Rights',
    lock: () => 'Lock',
    people: () => 'People',
    jars: () => 'Jars',
    unreadable: () => 'Unreadable',
    set_aside: () => 'Set aside',
    copy: () => 'Newest copy',
    due: () => 'Next due',
    tick: () => 'Last tick',
    heard: () => 'Discord',
    sent: () => 'Last sent',
    zone: () => 'Times',
    token: () => 'Token',
  },
  rights: {
    own: () => 'I read and write, and nobody else may look in',
    shared: () => 'I read and write, but others may look in: chmod 700 takes that from them',
    read_only: () => 'I may only read, so nothing can be recorded',
  },
  lock: (holder: FolderHolder | null) => {
    if (holder === null) return 'free: no Larderbell works here'
    if (!holder.mayRun) return `left by ${process(holder)}, which is gone; the next start takes it away`
    return holder.isHere
      ? `held by ${process(holder)}, which is running`
      : `held by ${process(holder)}. I can't see from here whether it runs. If it's gone for good, empty lock/ in that folder`
  },
  jars: ({ running, all }: { readonly running: number; readonly all: number }) => `${running} running, ${all} in all`,
  unreadable: (files: number) =>
    `${counted(files, 'file')}, set aside when ${plural(files, 'its owner asks', 'their owners ask')}, or of a newer Larderbell`,
  setAside: (files: number) =>
    files === 0 ? 'none' : `${counted(files, 'file')} that could not be read, or that a copy took the place of`,
  none: () => 'none yet',
  nothingDue: () => 'nothing: no jar asks for anything',
  day: dayText,
  moment,
  heard: (when: string) => `heard of ${when}`,
  tokenShown: () => 'others on this machine can read it in .env: chmod 600 .env',
  restoreHow: () =>
    'Say whose copy, and of which day. For whoever sits at this terminal: npm run doctor -- restore local 2026-11-24',
  restored: (values: {
    readonly userId: string
    readonly day: string
    readonly jars: number
    readonly entries: number
    readonly kept: string | null
  }) => {
    const { userId, day, jars, entries, kept } = values
    const held = `${counted(jars, 'jar')} and ${entries === 1 ? '1 entry' : `${entries} entries`}`
    const before = kept === null ? '' : ` What stood there is kept as ${kept}.`
    return `The copy of ${day} is back in place for ${userId}, with ${held}.${before}`
  },
  noStatus: () => 'status.json cannot be read; a Larderbell that works here writes it anew within a minute',
  zone: ({ zone }: { readonly zone: string }) => `in ${zone}`,
  verdict: {
    well: () => 'Reminders are running.',
    left: () => 'No Larderbell works here now; its last tick is not three minutes old.',
    starting: () => 'A Larderbell is just beginning here; its first tick has not ended yet.',
    empty: () => 'There is no such folder yet: it is made when the first jar is started.',
    idle: () => 'No Larderbell has ever sent reminders from here: npm start does.',
    stopped: () => 'No reminders come: no Larderbell works here, and the last tick is older than three minutes.',
    stuck: () =>
      'No reminders come: a Larderbell holds the folder, but its last tick is older than three minutes. Start it again, and look into its log.',
    deaf: () =>
      'Nobody gets an answer in Discord, or some do not: it has not acknowledged a connection for more than three minutes. Look at the network and into the log, then start Larderbell again.',
    ahead: () => 'The last tick lies ahead of this clock: check the clocks.',
    unknown: () => 'Whether reminders run cannot be told.',
  },
}
