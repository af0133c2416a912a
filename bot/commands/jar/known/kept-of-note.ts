import type { TroubleTold } from '../../../../core/jar/entry/told.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type StandingTrouble, standingTroubles } from '../../../../core/jar/state/standing-troubles.ts'
import { diagnoseAll } from '../../../../core/trouble/diagnose.ts'
import { factsOfJar } from '../../../../core/trouble/facts-of-jar.ts'
import { saysOver, symptomsNoted } from '../../../../core/trouble/noted-trouble.ts'
import { settledBy } from '../../../../core/trouble/settled-by.ts'
import { signOfSolvent } from '../../../../core/trouble/signs-in-words.ts'
import { troubleToKeep } from '../../../../core/trouble/trouble-told.ts'
import { wasNothing } from '../../../../core/trouble/was-nothing.ts'
import type { Context } from '../../../chat/command.ts'
import { freezerOf } from '../../reply/outcome-reply.ts'
import { todayOf } from './view-of.ts'

/** What a note tells of that has to be cleared up; nothing where it tells of nothing, or the jar has ended. */
export function troubleNoted(
  note: string | null,
  story: JarState,
  context: Context,
): { readonly trouble?: TroubleTold } {
  const symptoms = note === null || story.ended !== null ? [] : symptomsNoted(note)
  if (note === null || symptoms.length === 0) return {}
  const sign = symptoms.includes('solvent') ? signOfSolvent(note) : null
  const answered = sign === null ? {} : { [sign]: true }
  const facts = factsOfJar(story, { today: todayOf(context), freezerC: freezerOf(context) })
  const [diagnosis] = diagnoseAll(symptoms, { ...facts, signs: { ...facts.signs, ...answered } }, answered)
  const kept = troubleToKeep(diagnosis, answered, standingTroubles(story))
  return kept?.trouble === undefined ? {} : { trouble: kept.trouble }
}

/** What stands and a note says was nothing, or is over: only what was nothing lets off what is to be thrown away. */
function settledByNote(note: string, standing: readonly StandingTrouble[]): readonly StandingTrouble[] {
  if (wasNothing(note)) return settledBy(note, standing)
  return saysOver(note) ? standing.filter(({ verdict }) => verdict !== 'throw_away') : []
}

/** The same, or what of what stands it says was nothing. */
export function keptOfNote(note: string | null, story: JarState, context: Context) {
  const settled = note === null || story.ended !== null ? [] : settledByNote(note, standingTroubles(story))
  return settled.length > 0 ? { settled: settled.map(({ symptom }) => symptom) } : troubleNoted(note, story, context)
}
