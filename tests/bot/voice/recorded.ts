import type { CallOutcome } from '../../../bot/chat/run/call-outcome.ts'
import { START_MS, STEP_MS } from '../../corpus/in-terminal.ts'
import { readSessions } from '../../corpus/sessions.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { NOW_MS, somebody, typed } from '../offered/corpus.ts'
import { deskOf } from '../offered/offers.ts'
import { testDesk } from '../test-desk.ts'

/** A line that was kept, and what the bot makes of it today. */
export interface Answered {
  readonly line: string
  readonly outcome: CallOutcome
}

/** The short run types one of so many sessions and lines. */
const STEP = 2

/** The recorded sessions, each typed from its beginning on with nothing stored. */
async function* sessionsAnswered(): AsyncGenerator<Answered> {
  for (const { steps } of sampled(readSessions(), STEP)) {
    const asker = { ...newAsker(), assumedZone: 'Europe/London' }
    let nowMs = START_MS
    for (const { step } of steps) {
      if (step.kind === 'clock') nowMs = step.nowMs
      if (step.kind !== 'line') continue
      nowMs += STEP_MS
      const { line } = step
      if (/^\s*\/?(?:help|more|quit|exit)\b/i.test(line)) continue
      yield { line, outcome: await testDesk({ nowMs, asker }).run(line) }
    }
  }
}

/** What hands type to somebody who has a jar in every stage. */
async function* typedAnswered(): AsyncGenerator<Answered> {
  const person = await somebody({ kind: 'console' })
  for (const line of sampled(typed, STEP)) {
    const desk = await deskOf({ person, nowMs: NOW_MS, place: { kind: 'console' }, zone: 'UTC' })
    yield { line, outcome: await desk.run(line) }
  }
}

/** Every line that is kept, with its answer. */
export async function* everyAnswer(): AsyncGenerator<Answered> {
  yield* sessionsAnswered()
  yield* typedAnswered()
}
