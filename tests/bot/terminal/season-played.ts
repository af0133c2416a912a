import { playSeason } from '../../../bot/demo/play-demo.ts'
import { noPause } from '../../../bot/demo/tour.ts'
import { seasonText } from '../../../bot/text/en/demo.ts'
import { en } from '../../../bot/text/en/index.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { dutySettings } from '../../../store/due.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { commands } from '../test-desk.ts'

export const WIDTH = 80

export const stageOn = (more: { readonly out: (text: string) => void; readonly season?: typeof seasonText }) => ({
  season: seasonText,
  commands,
  language: en,
  screen: { width: WIDTH, colour: false },
  log: (text: string): void => {
    throw new Error(text)
  },
  isHeard: () => true,
  saveFile: null,
  nextDay: noPause,
  ended: new AbortController().signal,
  ...more,
})

/** The season in memory: what it prints, what it leaves, and what was late whenever the clock stopped. */
export const play = async () => {
  let printed = ''
  const late: string[] = []
  const store = memoryStore(seasonText.zone)
  const { zone } = seasonText
  const watched: typeof store = {
    ...store,
    async claimDue(untilMs, limit, leaseMs) {
      const { jars, settings } = await store.read('local')
      for (const { entries } of jars) {
        const { today } = agenda(entries, dutySettings(settings, zone), untilMs)
        for (const { kind, state } of today) if (state === 'overdue') late.push(`${jarStateOf(entries)?.name} ${kind}`)
      }
      return store.claimDue(untilMs, limit, leaseMs)
    },
  }
  const out = (text: string): void => {
    printed += text
  }
  let waits = 0
  const nextDay = async (): Promise<void> => {
    waits += 1
  }
  await playSeason({ ...stageOn({ out }), nextDay, store: watched })
  return { printed, late, waits, person: await store.read('local') }
}
