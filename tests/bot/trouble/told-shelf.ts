import { jarDesk } from '../commands-jar/desk.ts'

/** A strong jar that steeps, one that waits for bottles, and one in bottles. */
export const shelf = async () => {
  const desk = jarDesk('2026-09-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l vodka 40%')
  await desk.ask('/jar start sloe of:500 g sloes spirit:1 l vodka 40%')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l vodka 40%')
  desk.at('2026-11-01')
  for (const name of ['sloe', 'plum']) {
    await desk.ask(`/jar strain ${name} measured:1 l`)
    await desk.ask(`/jar sweeten ${name} sugar:200 g`)
  }
  await desk.ask('/jar bottle plum bottles:2 x 500 ml')
  desk.at('2026-11-25')
  return desk
}

/** What a step that goes on says before anything else. */
export const FIRST = /^Throw (?:lemon|sloe|small|plum) away: /
