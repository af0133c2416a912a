import { DomainError } from '../../../core/domain-error.ts'
import { isHolding } from '../../../core/jar/limits/judge-jar.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { madeOf } from '../../../core/jar/state/shares.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { type ShareRef, shareRef } from '../../calls/share-ref.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { expectDrinkableJar } from '../jar/known/jar-dangers.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { change } from '../jar/step/record-step.ts'
import { missing } from '../options/missing-option.ts'
import { planCommand } from '../plan/plan.ts'
import { begunFrom } from './count-made.ts'
import { findShare } from './find-share.ts'
import { shared } from './new-share.ts'
import { freeName, shareList } from './share-list.ts'
import { shareReply } from './share-reply.ts'
import { withdraw } from './withdraw.ts'

/** Only one of these at a time. */
const DOES = ['jar', 'withdraw', 'make'] as const

/** What there is to make it from, each as `/plan` takes it. */
type AtHand = Omit<InputOf<'share'>, (typeof DOES)[number]>

async function shareJar(typed: string, context: Context): Promise<Reply> {
  const { nowMs, userId } = context
  const view = await jarNamed(typed, context)
  const { jar, stage, story } = view
  if (stage === 'discarded') throw new DomainError('wrong_stage', 'share_discarded', { jar: story.name })
  expectDrinkableJar(story, isHolding)
  const recipe = recipeOf(story)
  const code = encodeBatch(recipe)
  const seed = `${userId} ${jar.id} ${nowMs}`
  const { share, made, free } = await change(context, (person) => {
    const one = shared(person, { jarId: jar.id, code, seed })
    return {
      person: one.person,
      made: { share: one.made, made: madeOf(jar.id, person.shares), free: freeName(one.made, one.person ?? person) },
    }
  })
  return shareReply({ view, recipe, share, made, called: free ?? share.id }, context)
}

/** The plan of what somebody shares, for whoever asks: of its owner, only the recipe goes along. */
async function makeToo(ref: ShareRef, given: AtHand, context: Context): Promise<Reply> {
  const { code, made, ids } = await findShare(ref, context.store)
  const from = { typed: `${code}@${shareRef(ref)}`, is: { recipe: decodeBatch(code), ...ref } }
  const reply = await planCommand.run(planCommand.input.parse({ from, ...given }), context)
  const own = ref.owner === context.userId ? 0 : begunFrom(ids, await context.store.read(context.userId))
  const values = { count: Math.max(0, made - own), own }
  const soFar: Message<'notes'> = { group: 'notes', key: 'share_made_so_far', values }
  return made === 0 ? reply : { ...reply, notes: [...reply.notes, soFar] }
}

export const shareCommand = defineCommand({
  ...signature('share'),
  topic: 'sharing',
  async run({ jar, withdraw: withdrawn, make, ...given }, context) {
    const asked = { jar, withdraw: withdrawn, make }
    const does = DOES.filter((option) => asked[option] !== undefined)
    const [extra] = make === undefined ? Object.keys(given) : []
    if (extra !== undefined && does.length === 0) throw missing('share', 'make', null)
    const options = [...does, ...(extra === undefined ? [] : [extra])]
    if (options.length > 1) {
      const values = { command: 'share', options }
      throw new ChatError('too_many_options', 'one_at_a_time', values, { command: 'share', option: options[1]! })
    }
    if (jar !== undefined) return shareJar(jar.is, context)
    if (withdrawn !== undefined) return withdraw(withdrawn.is, context)
    if (make !== undefined) return makeToo(make.is, given, context)
    return shareList(await context.store.read(context.userId), context)
  },
})
