import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Place, Settings } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import { FOR_GOOD } from '../../calls/person-options.ts'
import type { Context } from '../../chat/command.ts'
import type { Action } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'

const inPrivate: Action = {
  label: { group: 'actions', key: 'reminders_private', values: undefined },
  call: call('reminders', { place: 'private' }),
  isButtonOnly: true,
}

const inHere: Action = {
  label: { group: 'actions', key: 'reminders_here', values: undefined },
  call: call('reminders', { place: 'here' }),
  isButtonOnly: true,
}

const isOpen = async (place: Place, { lackingAt }: Context): Promise<boolean> =>
  place.kind === 'channel' && ((await lackingAt?.(place)) ?? []).length === 0

/** A button for each place where somebody can be reminded from here; nothing at a terminal. */
export async function placeActions(context: Context): Promise<readonly Action[]> {
  if (context.place.kind === 'console') return []
  return (await isOpen(context.place, context)) ? [inPrivate, inHere] : [inPrivate]
}

/** Asks it, above those buttons. */
export const whereNote = (places: readonly Action[], { place }: Context): Message<'notes'> => ({
  group: 'notes',
  key: 'reminders_where',
  values: { isPrivate: place.kind === 'private', isHere: places.length > 1 },
})

/** What can be changed of reminders by a press: place, time, whether they come at all. */
export async function remindersActions(
  { atMinutes }: Settings,
  until: IsoDay | null,
  context: Context,
): Promise<readonly Action[]> {
  const time: Action = {
    label: { group: 'actions', key: 'reminders_time', values: undefined },
    call: call('reminders', { time: atMinutes }),
    isButtonOnly: true,
    isChangedFirst: true,
  }
  const stopOrStart: Action = {
    label: { group: 'actions', key: until === null ? 'reminders_stop' : 'reminders_start', values: undefined },
    call: call('reminders', { 'pause-until': until === null ? FOR_GOOD : null }),
    isButtonOnly: true,
  }
  return [...(await placeActions(context)), time, stopOrStart]
}
