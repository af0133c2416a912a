import type { HappeningEntry, HappeningKind } from '../../../../core/jar/entry/entry.ts'
import { isSweetening } from '../../../../core/jar/state/syrup-wanted.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { callOfTexts } from '../../../calls/call.ts'
import type { Path } from '../../../calls/signatures.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import { lateDay } from '../step/step-reply.ts'
import { sweetenActions } from '../step/sweeten-actions.ts'

/** What a jar asks for, and what answers it. */
const COMMANDS: { readonly [Kind in HappeningKind]?: Path } = {
  shaken: 'jar shake',
  tasted: 'jar taste',
  added: 'jar add',
  strained: 'jar strain',
  sweetened: 'jar sweeten',
  filtered: 'jar filter',
  bottled: 'jar bottle',
  opened: 'jar open',
}

/** Said otherwise, or of the line that was sent and not of what happened. */
const NOT_AGAIN = ['jar', 'when', 'after', 'again', 'entry']

/** The step that was taken back, as it stood, and the syrup where that is what the jar wants now. */
export function undoneActions(stood: HappeningEntry, view: JarView, context: Context): readonly Action[] {
  const path = COMMANDS[stood.kind]
  if (path === undefined) return []
  const { strained, ended } = view.story
  const isOpen = strained !== null && ended === null && isSweetening(view.story)
  const day = lateDay(stood, context)
  const again = callOfTexts(path, [
    ['jar', jarRef(view, context)],
    ...(day === null ? [] : [['when', day] as const]),
    ...stood.typed.filter(([option]) => !NOT_AGAIN.includes(option)),
  ])
  const wanted = stood.kind === 'sweetened' && isOpen ? sweetenActions(view, context) : []
  const label = { group: 'actions', key: 'jar_enter_again', values: undefined } as const
  return again === null ? wanted : [...wanted, { label, call: again }]
}
