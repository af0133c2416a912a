import { DomainError } from '../../../../core/domain-error.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { shown } from '../../../../core/quantity/read/tokens.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Context } from '../../../chat/command.ts'
import { missing } from '../../options/missing-option.ts'
import { viewOf } from './view-of.ts'

/** The jar that was meant as it stands now. Throws what `findJar` throws. */
export async function jarNamed(typed: string, context: Context): Promise<JarView<Jar>> {
  const { jars } = await context.store.read(context.userId)
  const view = viewOf(findJar(typed, jars), context)
  if (view === null) throw new DomainError('not_found', 'no_such_jar', { typed: shown(typed), nearest: null })
  return view
}

/** The only one that runs or, where none does, the only one there was; null where several may be meant. */
function onlyJar(jars: readonly Jar[]): string | null {
  const stories = jars.flatMap(({ id, entries }) => {
    const story = jarStateOf(entries)
    return story === null ? [] : [{ id, isRunning: story.ended === null }]
  })
  const running = stories.filter(({ isRunning }) => isRunning)
  const [only, another] = running.length > 0 ? running : stories
  return only === undefined || another !== undefined ? null : `#${only.id}`
}

/** The jar that is named, else the only one that can be meant. Throws what `findJar` throws, and asks where there are several. */
export async function jarMeant(typed: string | undefined, context: Context): Promise<JarView<Jar>> {
  const { jars } = await context.store.read(context.userId)
  const meant = typed ?? onlyJar(jars)
  if (meant === null) throw missing('jar show', 'jar')
  return jarNamed(meant, context)
}
