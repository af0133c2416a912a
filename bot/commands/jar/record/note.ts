import { dangersNoted } from '../../../../core/botanical/drink/named-danger.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isLeftAsItIs, saysNoSugar } from '../../../../core/jar/state/left-unsweetened.ts'
import { standingTroubles } from '../../../../core/jar/state/standing-troubles.ts'
import { type VesselFit, vesselFit } from '../../../../core/jar/state/vessel-fit.ts'
import { isFreezer, vesselMl } from '../../../../core/jar/state/where-it-stands.ts'
import { symptomsNoted } from '../../../../core/trouble/noted-trouble.ts'
import { settledBy } from '../../../../core/trouble/settled-by.ts'
import { wasNothing } from '../../../../core/trouble/was-nothing.ts'
import { call } from '../../../calls/call.ts'
import { signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { freezerOf, freezerSaid } from '../../reply/outcome-reply.ts'
import { keptOfNote } from '../known/kept-of-note.ts'
import { swallowedNotes } from '../known/note-swallowed-option.ts'
import { toldHeld } from '../known/told-trouble.ts'
import { expectJar, recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'

/** What says of itself that something is wrong lets nothing off: it is a note like any other. */
const isStillTold = (was: string): boolean =>
  !wasNothing(was) && (symptomsNoted(was).length > 0 || dangersNoted(was).length > 0)

/** What stands of a jar and was nothing, by what it was. Throws `nothing_told` where nothing stands that it may be. */
function settledIn(story: JarState, was: string) {
  const standing = standingTroubles(story)
  if (standing.length === 0) throw new ChatError('wrong_stage', 'nothing_told', { jar: story.name }, { option: 'was' })
  const settled = settledBy(was, standing)
  const [worst] = standing
  if (settled.length === 0 && worst !== undefined) throw toldHeld(story, worst)
  return { settled: settled.map(({ symptom }) => symptom) }
}

/** What a freezer makes of it, and room for ice; nothing of an empty jar. */
function frozenSaid(story: JarState, context: Context) {
  const { outcome, isEmpty } = contentsOf(story)
  if (isEmpty) return null
  const { state, freezerC } = freezerSaid(outcome, freezerOf(context))
  const { value, plusMinus } = outcome.freezesAtC
  return {
    said: [{ group: 'headlines', key: 'jar_in_freezer', values: { state } }] as const,
    data: { state, freezerC, freezesAtC: value, freezesAtCPlusMinus: plusMinus },
  }
}

/** How what it stands in suits it; null where nobody said how much that holds. */
function fitSaid(story: JarState, vessel: string): VesselFit | null {
  const volumeMl = vesselMl(vessel)
  return volumeMl === null ? null : vesselFit(story, volumeMl)
}

/** What becomes of what is to have no sugar. */
const noSugarSaid = ({ happened }: JarState) =>
  [{ group: 'headlines', key: 'jar_no_sugar', values: { isAsItIs: isLeftAsItIs(happened) } }] as const

export const jarNoteCommand = defineCommand({
  ...signature('jar note'),
  topic: 'jars',
  async run(input, context) {
    const { jar, where, vessel, was, note } = input
    if (where === undefined && vessel === undefined && was === undefined && note === undefined) {
      await expectJar(context, jar)
      const example = lineOf(call('jar note', { jar: jar.is, where: 'cellar' }))
      throw new ChatError('missing_option', 'nothing_given', { command: 'jar note', example }, { option: 'note' })
    }
    const recorded = await recordStep(context, input, {
      happening: (before) => ({
        kind: 'noted',
        note: note?.is ?? was?.is ?? null,
        where: where?.is ?? null,
        vessel: vessel?.is ?? null,
        ...(was === undefined || isStillTold(was.is)
          ? keptOfNote(note?.is ?? was?.is ?? null, before, context)
          : settledIn(before, was.is)),
      }),
    })
    const { story } = recorded
    const cold = where !== undefined && isFreezer(where.is) ? frozenSaid(story, context) : null
    const isWish = note !== undefined && saysNoSugar(note.is)
    const fit = vessel === undefined ? null : fitSaid(story, vessel.is)
    const reply = stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      under: [
        ...(isWish ? noSugarSaid(story) : []),
        ...(cold?.said ?? []),
        ...(fit === null ? [] : [{ group: 'headlines', key: 'jar_vessel', values: fit } as const]),
      ],
      isNextSaid: isWish || cold !== null || fit !== null,
      notes: swallowedNotes(note, ['where', 'vessel', 'was', 'when']),
    })
    return {
      ...reply,
      data: { ...reply.data, freezer: cold?.data ?? null, vessel: fit === null ? null : { ...fit } },
    }
  },
})
