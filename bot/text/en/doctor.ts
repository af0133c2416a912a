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
    own: () => 'I read and write, and nobody else can look in',
    shared: () => 'I read and write, but others can look in. To stop that: chmod 700',
    read_only: () => 'I can only read, so nothing can be recorded',
  },
  lock: (holder: FolderHolder | null) => {
    if (holder === null) return 'free: no Larderbell is running here'
    if (!holder.mayRun) return `left by ${process(holder)}, which is gone. The next start clears it`
    return holder.isHere
      ? `in use by ${process(holder)}, which is running`
      : `in use by ${process(holder)}. I can’t see from here whether it runs. If it’s gone for good, empty lock/ in that folder`
  },
  jars: ({ running, all }: { readonly running: number; readonly all: number }) => `${running} running, ${all} in all`,
  unreadable: (files: number) =>
    `${counted(files, 'file')}, set aside when ${plural(files, 'its owner asks', 'their owners ask')}, or of a newer Larderbell`,
  setAside: (files: number) =>
    files === 0 ? 'none' : `${counted(files, 'file')} that I couldn’t read, or that a copy replaced`,
  none: () => 'none yet',
  nothingDue: () => 'nothing is due',
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
  noStatus: () => 'I can’t read status.json. A Larderbell that’s running writes it again within a minute',
  zone: ({ zone }: { readonly zone: string }) => `in ${zone}`,
  verdict: {
    well: () => 'Reminders are running.',
    left: () => 'No Larderbell is running here now. The last tick was less than three minutes ago.',
    starting: () => 'A Larderbell is just starting here. Its first tick isn’t over yet.',
    empty: () => 'There’s no such folder yet. The first jar makes it.',
    idle: () => 'No Larderbell has ever sent reminders from here. To start one: npm start',
    stopped: () => 'No reminders: no Larderbell is running here. The last tick was more than three minutes ago.',
    stuck: () =>
      'No reminders: a Larderbell has the folder, but its last tick was more than three minutes ago. Start it again, and look in its log.',
    deaf: () =>
      'Some or all get no answer in Discord: a connection has been silent for more than three minutes. Check the network and the log, then start Larderbell again.',
    ahead: () => 'The last tick is ahead of this clock. Check the clocks.',
    unknown: () => 'I can’t tell whether reminders run.',
  },
}
