import { describe, expect, test } from 'vitest'
import { talker } from './told.ts'

const told = async (...lines: readonly string[]): Promise<string | null> => {
  const one = talker()
  let read: string | null = null
  for (const line of lines) read = (await one.say(line)).read
  return read
}

describe('a number that was not so', () => {
  test.each([
    [['2 lb of figs in a quart of vodka', 'it was 2 1/4 lb not 2'], '/plan of:2 1/4 lb figs spirit:1 quart vodka 40%'],
    [['2 1/4 lb of figs in a quart of vodka', 'no, 2 lb not 2 1/4'], '/plan of:2 lb figs spirit:1 quart vodka 40%'],
    [['2 lb of figs in a quart of vodka', 'it was 800 g not 2 lb'], '/plan of:800 g figs spirit:1 quart vodka 40%'],
    [['6 limes in 2 1/2 cups of vodka', 'it was 3 3/4 cups not 2 1/2'], '/plan of:6 limes spirit:3 3/4 cups vodka 40%'],
    [['6 limes in 2 1/2 cups of vodka', 'it was 8 not 6'], '/plan of:8 limes spirit:2 1/2 cups vodka 40%'],
  ])('%j', async (lines, expected) => {
    expect(await told(...lines)).toBe(expected)
  })
})

describe('fractions of a batch', () => {
  test.each([
    [['6 limes in 1 3/4 cups of vodka', 'double it'], '/plan of:12 limes spirit:3 1/2 cups vodka 40%'],
    [['6 limes in 1 3/4 cups of vodka', 'half of that'], '/plan of:3 limes spirit:7/8 cups vodka 40%'],
    [
      ['/jar start figs of:1 1/4 lb figs spirit:3 3/4 cups 80 proof vodka', 'make the figs again but double'],
      '/again figs spirit:7 1/2 cups 80 proof vodka',
    ],
    [
      ['/jar start figs of:1 1/4 lb figs spirit:1½ cups 80 proof vodka', 'make the figs again but half as much'],
      '/again figs spirit:3/4 cups 80 proof vodka',
    ],
  ])('%j', async (lines, expected) => {
    expect(await told(...lines)).toBe(expected)
  })
})
