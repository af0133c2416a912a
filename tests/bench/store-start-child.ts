import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { openStore } from '../../store/open/open-store.ts'
import { ZONE } from './store-people.ts'

/**
 * Measures what a process of the rules `kind` needs until it knows who is due, or, with `bare`, to read and parse the same
 * files and keep nothing. Prints one object: seconds, megabytes at the peak, the longest time that nothing else got its turn, and
 * milliseconds of a tick that finds nothing.
 */
const [folder = '', kind = ''] = process.argv.slice(2)

const peakMb = (): number => process.resourceUsage().maxRSS / 1024
const sinceS = (startMs: number): number => (performance.now() - startMs) / 1000

const bare = () => {
  const startMs = performance.now()
  const users = join(folder, 'users')
  for (const name of readdirSync(users)) JSON.parse(readFileSync(join(users, name), 'utf8'))
  return { readyS: sinceS(startMs), peakMb: peakMb() }
}

const store = async (rules: string) => {
  const delay = monitorEventLoopDelay({ resolution: 1 })
  delay.enable()
  const startMs = performance.now()
  const opened = openStore({ folder, assumedZone: ZONE, rules, nowMs: Date.now, log: console.error })
  const named = await opened.claimDue(0, 1000, 1)
  const readyS = sinceS(startMs)
  delay.disable()
  if (named.length > 0) throw new Error('somebody was due before 1970')
  const TICKS = 1000
  const ticksMs = performance.now()
  for (let tick = 0; tick < TICKS; tick++) await opened.claimDue(tick, 1000, 1)
  const tickMs = (1000 * sinceS(ticksMs)) / TICKS
  await opened.close()
  return { readyS, peakMb: peakMb(), blockedMs: delay.max / 1e6, tickMs }
}

console.log(JSON.stringify(kind === 'bare' ? bare() : await store(kind)))
