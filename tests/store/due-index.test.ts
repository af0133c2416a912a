import { expect, it } from 'vitest'
import { dueIndex } from '../../store/due-index.ts'

/** Two who are due, one of them named: the other waits for the next call. */
const withOneWaiting = () => {
  const index = dueIndex()
  index.set('a', 100)
  index.set('b', 200)
  expect(index.claim(300, 1, 60)).toEqual(['a'])
  return index
}

it('names nobody who was put off while waiting to be named', () => {
  const index = withOneWaiting()
  index.set('b', 900)
  expect(index.claim(300, 9, 60)).toEqual([])
  expect(index.claim(900, 9, 60)).toEqual(['a', 'b'])
})

it('names nobody who was forgotten while waiting to be named', () => {
  const index = withOneWaiting()
  index.set('b', null)
  expect(index.claim(300, 9, 60)).toEqual([])
})

it('names nobody before their time after the clock was set back', () => {
  const index = withOneWaiting()
  index.set('a', null)
  index.release('a')
  expect(index.claim(150, 9, 60)).toEqual([])
  expect(index.claim(200, 9, 60)).toEqual(['b'])
})

it('names somebody once who was set again to the same instant while waiting', () => {
  const index = withOneWaiting()
  index.set('b', 200)
  expect(index.claim(300, 9, 60)).toEqual(['b'])
  expect(index.claim(300, 9, 60)).toEqual([])
})

it('takes in who fell due meanwhile before those who wait', () => {
  const index = withOneWaiting()
  index.set('c', 150)
  expect(index.claim(300, 1, 60)).toEqual(['c'])
  expect(index.claim(300, 9, 60)).toEqual(['b'])
})
