import { jarDesk } from './desk.ts'

/** Sloes that were strained, 620 ml unless a test measures otherwise. */
export const strainedSloes = async (measured = 'measured:620 ml') => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start sloe of:500 g sloes spirit:700 ml 40% to-strength:25% to-sweetness:200 g/L')
  desk.at('2026-11-20')
  await desk.ask(`/jar strain sloe ${measured}`.trim())
  return desk
}

/** A jar that was bottled on 5 September 2026. */
export const bottledFair = async (of: string, { water = '200 ml', bottles = '1 x 500 ml' } = {}) => {
  const desk = jarDesk('2026-08-01')
  await desk.ask(`/jar start fair of:${of} spirit:700 ml 60%`)
  desk.at('2026-08-25')
  await desk.ask('/jar strain fair measured:650 ml')
  await desk.ask(`/jar sweeten fair water:${water} sugar:250 g`)
  desk.at('2026-09-05')
  await desk.ask(`/jar bottle fair bottles:${bottles}`)
  return desk
}
