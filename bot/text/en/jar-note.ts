import type { FreezerState } from '../../../core/liquid/freezer.ts'

/** What a freezer makes of it. */
export const inFreezer = ({ state }: { readonly state: FreezerState }): string => {
  const room = 'Leave room in a glass bottle: don’t fill it to the brim.'
  if (state === 'solid') return 'It would freeze there, and the glass may burst. Better put it in the fridge.'
  const so = {
    pours: 'It won’t freeze there.',
    should_pour: 'It should stay liquid there.',
    slush: 'It goes slushy there, so the fridge suits it better.',
  }[state]
  return `${so} ${room}`
}

/** What becomes of a jar whose maker wants no sugar in it. */
export const noSugarSaid = ({ isAsItIs }: { readonly isAsItIs: boolean }): string =>
  isAsItIs
    ? 'It goes into bottles as it is. Changed your mind? Sweeten it any time.'
    : 'It still wants water, as it’s too strong to drink neat.'

/** Of such a jar, once it is strained. */
export const UNSWEETENED = (): string => 'No sugar, as you wished: it goes into bottles as it is.'
