import type { Path } from '../../calls/signatures.ts'
import { frames } from '../frames/frames.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'

export type Question = Extract<TalkReading, { kind: 'question' }>

/** Said as done, asked once more and answered with yes. */
const doesOf = (command: Path): 'compute' | 'record' =>
  /^jar (?!list|show|tag|label)/.test(command) ? 'record' : 'compute'

/** What no sentence does, no answer does either. */
const isOnlyTyped = (command: Path): boolean => {
  const own = frames.filter((frame) => frame.command === command)
  return own.length > 0 && own.every(({ does }) => does === 'never')
}

/** What was asked about, with its answer. */
export const run = (call: CallRead): TalkReading =>
  isOnlyTyped(call.command)
    ? { kind: 'only_typed', call }
    : { kind: 'call', call, does: doesOf(call.command), leftOut: [] }

/** A question once more; what is only worked out asks it itself, but for a question with an example of its own. */
export const askedAgain = (question: Question): TalkReading => {
  const { choices, call, about } = question
  const isOwn = about.kind === 'lacks' && about.sample !== undefined
  return choices.length === 0 && !isOwn && doesOf(call.command) === 'compute' ? run(call) : question
}

/** What was chosen, with its answer; how a taste was is asked, since the mark of the line is only an example. */
export const ranOrAsked = (choice: CallRead, about: Question['about']): TalkReading =>
  about.kind === 'which_done' && choice.command === 'jar taste'
    ? {
        kind: 'question',
        call: { command: choice.command, options: { jar: choice.options.jar ?? '' } },
        about: { kind: 'lacks', option: 'rating' },
        choices: [],
        leftOut: [],
      }
    : run(choice)
