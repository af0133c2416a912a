import { DomainError } from '../../../../core/domain-error.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import { shown } from '../../../../core/quantity/read/tokens.ts'
import type { Jar } from '../../../../store/person.ts'
import type { Context } from '../../../chat/command.ts'
import { viewOf } from './view-of.ts'

/** The jar that was meant as it stands now. Throws what `findJar` throws. */
export async function jarNamed(typed: string, context: Context): Promise<JarView<Jar>> {
  const { jars } = await context.store.read(context.userId)
  const view = viewOf(findJar(typed, jars), context)
  if (view === null) throw new DomainError('not_found', 'no_such_jar', { typed: shown(typed), nearest: null })
  return view
}
