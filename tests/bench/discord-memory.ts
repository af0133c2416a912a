import { setTimeout as sleep } from 'node:timers/promises'
import { ask } from './discord-acts.ts'
import { type Side, withBot } from './discord-bot.ts'

type Row = [label: string, value: string, goal?: string]

const LONG_RUN = 100_000
/** Each of them comes back: what the first time leaves behind is no growth. */
const LONG_RUN_ASKERS = 20_000
const STEP = 20_000
const AT_ONCE = 16
/** What is remembered of pace is forgotten after a minute at most, in two looks. */
const FORGET_MS = 130_000

/** A picture one time in twenty-five, for 20,000 of them would take most of an hour. */
const paced = (turn: number): number => (turn % 5 === 0 && turn % 25 !== 0 ? turn + 1 : turn)

async function memoryRows({ fake, bot }: Side): Promise<Row[]> {
  const rows: Row[] = []
  const look = async (label: string, goal?: string): Promise<void> => {
    const { rssMb, heapMb } = await bot.used()
    const value = `${rssMb.toFixed(0)} MB resident, ${heapMb.toFixed(1)} MB of heap in use`
    // It takes many minutes: what is known is told at once.
    console.error(`${label}  ${value}`)
    rows.push(goal === undefined ? [label, value] : [label, value, goal])
  }
  await look('before')
  let turn = 0
  while (turn < LONG_RUN) {
    const upTo = turn + STEP
    // What the fake keeps is dropped while nothing is open.
    while (turn < upTo) {
      const until = Math.min(upTo, turn + 1000)
      await Promise.all(
        Array.from({ length: AT_ONCE }, async () => {
          while (turn < until) await ask(fake, paced(turn), (turn++ * 7) % LONG_RUN_ASKERS)
        }),
      )
      fake.forget()
    }
    await look(`after ${turn.toLocaleString('en-US')} interactions`)
  }
  await sleep(FORGET_MS)
  await look(`${FORGET_MS / 1000} s later`, 'no growth')
  return rows
}

/** What the process holds after many interactions of everybody in turn. */
export const benchDiscordMemory = (): Promise<{ name: string; rows: Row[] }> =>
  withBot(async (ours) => {
    await ours.bot.idle()
    return { name: 'Discord, memory of the bot after so many interactions', rows: await memoryRows(ours) }
  })
