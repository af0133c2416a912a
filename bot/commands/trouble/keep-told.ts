import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { Diagnosis } from '../../../core/trouble/diagnose.ts'
import { type TroubleKept, troubleToKeep } from '../../../core/trouble/trouble-told.ts'
import type { Jar } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'
import { viewOf } from '../jar/known/view-of.ts'
import { recordStep } from '../jar/step/record-step.ts'
import { answered, type TroubleInput } from './known-facts.ts'

/** A jar as it stands once what was told of it is kept, and what that is; null where nothing had to be. */
export interface ToldAndKept {
  readonly held: JarView<Jar> | null
  readonly kept: TroubleKept | null
}

/** Keeps in the jar what its maker was told to do with it, as a note of theirs that says why; of what is only supposed nothing. */
export async function keepTold(
  diagnosis: Diagnosis,
  input: TroubleInput,
  held: JarView<Jar> | null,
  context: Context,
): Promise<ToldAndKept> {
  const { jar, symptom } = input
  if (held === null || jar === undefined || symptom === undefined) return { held, kept: null }
  if (held.story.ended !== null || input['what-if']?.is === true) return { held, kept: null }
  const kept = troubleToKeep(diagnosis, answered(input), standingTroubles(held.story))
  if (kept === null) return { held, kept }
  const happening = () => ({ kind: 'noted', note: symptom.typed.trim(), where: null, vessel: null, ...kept }) as const
  const recorded = await recordStep(context, { ...input, jar }, { happening })
  return { held: viewOf(recorded.jar, context), kept }
}
