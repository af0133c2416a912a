import { jarDesk } from '../commands-jar/desk.ts'

/** Somebody with one jar that steeps. */
export const lemonDesk = async (asker?: Parameters<typeof jarDesk>[1]) => {
  const desk = jarDesk('2026-10-01', asker)
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  return desk
}
