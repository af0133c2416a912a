import nock from 'nock'
import { afterAll, afterEach, beforeAll } from 'vitest'

/** Nothing of these tests reaches the network: what nock has no answer for fails. */
export const withoutNetwork = (): void => {
  beforeAll(() => {
    if (!nock.isActive()) nock.activate()
    nock.disableNetConnect()
  })

  afterEach(() => nock.cleanAll())

  afterAll(() => {
    nock.enableNetConnect()
    nock.restore()
  })
}
