import type { KeptJar } from '../../../../core/jar/state/jar-state.ts'
import { type JarView, viewJar } from '../../../../core/jar/tasks/jar-view.ts'
import { isoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import { dutySettings } from '../../../../store/due.ts'
import type { Context } from '../../../chat/command.ts'

/** The day it is where the person lives. */
export const todayOf = ({ nowMs, zone }: Pick<Context, 'nowMs' | 'zone'>) => isoDay(dayAt(zone, nowMs))

/** A jar as its person sees it now; null where its start was undone. */
export const viewOf = <Held extends KeptJar>(
  jar: Held,
  { nowMs, settings, assumedZone }: Pick<Context, 'nowMs' | 'settings' | 'assumedZone'>,
): JarView<Held> | null => viewJar(jar, dutySettings(settings, assumedZone), nowMs)
