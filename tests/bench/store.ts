import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { claimRows } from './store-claim.ts'
import { ENTRIES, JARS, RULES, writeMakers } from './store-people.ts'
import { updateRows } from './store-update.ts'

type Row = [label: string, value: string, goal?: string]

const PEOPLE = 100_000
const TASKS = 10_000

/** What a program of ours prints, in a process of its own. */
const childSays = (program: string, ...argv: string[]): Record<string, number> => {
  const path = join(import.meta.dirname, program)
  return JSON.parse(execFileSync(process.execPath, ['--import', 'tsx', path, ...argv], { encoding: 'utf8' }))
}

/** The quicker of two turns of each, one after the other, so that all meet the same machine. */
function starts(folder: string) {
  const kinds = { bare: 'bare', stamped: RULES, otherRules: 'of another program' }
  const turn = () =>
    Object.entries(kinds).map(([name, kind]) => [name, childSays('store-start-child.ts', folder, kind)])
  const [first, second] = [Object.fromEntries(turn()), Object.fromEntries(turn())]
  const quicker = (name: keyof typeof kinds) => (first[name].readyS < second[name].readyS ? first : second)[name]
  return { bare: quicker('bare'), stamped: quicker('stamped'), otherRules: quicker('otherRules') }
}

function startRows(folder: string): Row[] {
  writeMakers(folder, PEOPLE)
  const { bare, stamped, otherRules } = starts(folder)
  const who = `${PEOPLE.toLocaleString('en-US')} people with ${JARS} jars of ${ENTRIES} entries`
  const shown = ({ readyS, peakMb }: Record<string, number>): string =>
    `${readyS!.toFixed(1)} s, ${peakMb!.toFixed(0)} MB at the peak`
  return [
    [`start with ${who}, files just written (cache warm)`, shown(stamped), 'below 20 s and 1,000 MB'],
    ['  the longest that nothing else got its turn', `${stamped.blockedMs!.toFixed(0)} ms`],
    ['  the same files read and parsed, nothing else', shown(bare)],
    ['  start / read and parsed', (stamped.readyS! / bare.readyS!).toFixed(2), 'at most 0.50'],
    ['  start with all stamps of other rules / read and parsed', (otherRules.readyS! / bare.readyS!).toFixed(2)],
    [
      `tick with nothing due among ${(PEOPLE * JARS).toLocaleString('en-US')} jars`,
      `${stamped.tickMs!.toFixed(4)} ms`,
      'below 1 ms',
    ],
  ]
}

function cronRows(): Row[] {
  const [each, one] = [childSays('store-cron-child.ts', String(TASKS)), childSays('store-cron-child.ts', '1')]
  const shown = ({ setUpMs, grownMb }: Record<string, number>): string =>
    `${setUpMs!.toFixed(0)} ms, ${grownMb!.toFixed(0)} MB`
  return [
    [`node-cron, a task for each of ${TASKS.toLocaleString('en-US')} jars`, shown(each)],
    ['node-cron, one task a minute for all', shown(one)],
  ]
}

/** The folder of data beside what it could at least cost, and beside other ways of keeping the same. */
export const benchStore = async (): Promise<{ name: string; rows: Row[] }> => {
  const folder = mkdtempSync(join(tmpdir(), 'larderbell-bench-'))
  try {
    const rows = [
      ...(await updateRows(join(folder, 'update'))),
      ...(await claimRows(join(folder, 'claim'))),
      ...startRows(join(folder, 'start')),
      ...cronRows(),
    ]
    return { name: `store (load ${loadavg()[0]!.toFixed(1)} at the end)`, rows }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
