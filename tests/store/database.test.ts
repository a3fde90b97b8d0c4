import { IDBDatabase as FakeDatabase, IDBFactory } from 'fake-indexeddb'
import { get, set, setMany } from 'idb-keyval'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { createDatabase, DATABASE, faultOf, patientDatabase } from '../../src/store/database'

afterEach(() => {
  vi.restoreAllMocks()
  vi.useRealTimers()
})

/** Makes the next `times` openings of a transaction fail as a browser would. */
function failTransactions(times: number, name: string) {
  const original = FakeDatabase.prototype.transaction
  let left = times
  return vi.spyOn(FakeDatabase.prototype, 'transaction').mockImplementation(function (
    this: InstanceType<typeof FakeDatabase>,
    ...args: Parameters<typeof original>
  ) {
    // The fake opens its upgrade transactions by the same door.
    if (args[1] !== 'versionchange' && left-- > 0) throw new DOMException('from the test', name)
    return original.apply(this, args)
  })
}

/** How often a transaction was asked for, but for the fake's own. */
const asked = (spy: ReturnType<typeof failTransactions>) =>
  spy.mock.calls.filter(([, mode]) => mode !== 'versionchange').length

describe('a transaction', () => {
  test('asks for strict durability', async () => {
    const spy = vi.spyOn(FakeDatabase.prototype, 'transaction')
    await set('a', 1, createDatabase({ factory: new IDBFactory() }))
    expect(spy).toHaveBeenCalledWith('documents', 'readwrite', { durability: 'strict' })
  })

  test('is done only when it is complete', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    const order: string[] = []
    await use('readwrite', store => {
      store.transaction.addEventListener('complete', () => order.push('complete'))
      store.put(1, 'a')
    })
    order.push('done')
    expect(order).toEqual(['complete', 'done'])
  })

  test('rejects with the cause when it is aborted after its callback was content', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    const writing = use('readwrite', store => {
      store.put(1, 'a')
      queueMicrotask(() => store.transaction.abort())
    })
    await expect(writing).rejects.toMatchObject({ name: 'AbortError' })
    expect(await get('a', use)).toBeUndefined()
  })

  test('writes nothing when its callback fails half-way', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    const writing = use('readwrite', store => {
      store.put(1, 'a')
      throw new Error('half-way')
    })
    await expect(writing).rejects.toThrow('half-way')
    expect(await get('a', use)).toBeUndefined()
  })

  test('writes several records or none', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    await expect(
      setMany(
        [
          ['a', 1],
          ['b', () => {}],
        ],
        use,
      ),
    ).rejects.toMatchObject({ name: 'DataCloneError' })
    expect(await get('a', use)).toBeUndefined()
  })
})

describe('a lost connection', () => {
  test.each(['InvalidStateError', 'UnknownError'])('%s: opens anew once and does the work', async name => {
    const factory = new IDBFactory()
    const use = createDatabase({ factory })
    await set('a', 1, use)
    const open = vi.spyOn(factory, 'open')
    failTransactions(1, name)
    await set('a', 2, use)
    expect(open).toHaveBeenCalledTimes(1)
    expect(await get('a', use)).toBe(2)
  })

  test('is given up after one retry, and tried afresh by the next call', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    const spy = failTransactions(2, 'UnknownError')
    await expect(set('a', 1, use)).rejects.toMatchObject({ name: 'UnknownError' })
    expect(asked(spy)).toBe(2)
    await set('a', 3, use)
    expect(await get('a', use)).toBe(3)
  })

  test('no other error is tried again', async () => {
    const use = createDatabase({ factory: new IDBFactory() })
    const spy = failTransactions(1, 'QuotaExceededError')
    await expect(set('a', 1, use)).rejects.toMatchObject({ name: 'QuotaExceededError' })
    expect(asked(spy)).toBe(1)
  })

  test('another tab may change the version: the connection closes and a newer database is left alone', async () => {
    const factory = new IDBFactory()
    const use = createDatabase({ factory })
    await set('a', 1, use)
    const upgraded = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = factory.open(DATABASE, 2)
      request.onsuccess = () => resolve(request.result)
      request.onblocked = () => reject(new Error('blocked'))
    })
    upgraded.close()
    await expect(set('a', 2, use)).rejects.toMatchObject({ fault: 'newer' })
    const version = (await factory.databases()).find(({ name }) => name === DATABASE)?.version
    expect(version).toBe(2)
  })

  test('after a failure that is not tried again, the next call opens anew', async () => {
    const factory = new IDBFactory()
    const use = createDatabase({ factory })
    await set('a', 1, use)
    const open = vi.spyOn(factory, 'open')
    failTransactions(1, 'QuotaExceededError')
    await expect(set('a', 2, use)).rejects.toMatchObject({ name: 'QuotaExceededError' })
    await set('a', 3, use)
    expect(open).toHaveBeenCalledTimes(1)
  })

  test('a database found empty that was not is reported, a new one is not', async () => {
    const factory = new IDBFactory()
    const lost: string[] = []
    const use = createDatabase({ factory, onLost: how => lost.push(how) })
    await set('a', 1, use)
    const db = await use('readonly', store => store.transaction.db)
    db.close()
    await new Promise(resolve => {
      factory.deleteDatabase(DATABASE).onsuccess = resolve
    })
    expect(lost).toEqual([])
    await set('a', 2, use)
    expect(lost).toEqual(['cleared'])
  })

  test('a connection the browser closed is opened again', async () => {
    const factory = new IDBFactory()
    const use = createDatabase({ factory })
    const db = await use('readonly', store => store.transaction.db)
    const open = vi.spyOn(factory, 'open')
    db.onclose?.(new Event('close'))
    await set('a', 1, use)
    expect(open).toHaveBeenCalledTimes(1)
  })
})

describe('a database that does not open', () => {
  test('where there is none, the error says so', async () => {
    const error = await get('a', createDatabase({ factory: undefined })).catch(error => error)
    expect(faultOf(error)).toBe('absent')
  })

  test('one that never answers is given up after five seconds, and asked again by the next call', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const factory = new IDBFactory()
    const open = vi.spyOn(factory, 'open').mockReturnValueOnce({} as IDBOpenDBRequest)
    const use = createDatabase({ factory })
    const reading = get('a', use).catch(error => error)
    await vi.advanceTimersByTimeAsync(4999)
    const early = await Promise.race([reading, Promise.resolve('still waiting')])
    expect(early).toBe('still waiting')
    await vi.advanceTimersByTimeAsync(1)
    expect(faultOf(await reading)).toBe('no-answer')
    await set('a', 1, use)
    expect(open).toHaveBeenCalledTimes(2)
  })

  /** A factory whose openings answer only when told to, in the order they were asked for. */
  function slowly() {
    const factory = new IDBFactory()
    const real = factory.open.bind(factory)
    const answers: (() => Promise<void>)[] = []
    const open = vi.spyOn(factory, 'open').mockImplementation((...args) => {
      const request = {} as Omit<IDBOpenDBRequest, 'result'> & { result: IDBDatabase }
      answers.push(
        () =>
          new Promise(resolve => {
            const asked = real(...args)
            asked.onupgradeneeded = event => {
              request.result = asked.result
              request.onupgradeneeded?.(event)
            }
            asked.onsuccess = event => {
              request.result = asked.result
              request.onsuccess?.(event)
              resolve()
            }
          }),
      )
      return request
    })
    return { factory, open, answers }
  }

  test('one that takes six seconds is let in when it comes, and it is told', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const { factory, open, answers } = slowly()
    const onLate = vi.fn()
    const use = createDatabase({ factory, onLate })
    const reading = get('a', use).catch(faultOf)
    await vi.advanceTimersByTimeAsync(6000)
    expect(await reading).toBe('no-answer')
    await answers[0]!()
    expect(onLate).toHaveBeenCalledTimes(1)
    await set('a', 1, use)
    expect(await get('a', use)).toBe(1)
    expect(open).toHaveBeenCalledTimes(1)
  })

  test('one that comes late serves those who have asked again meanwhile', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
    const { factory, answers } = slowly()
    const use = createDatabase({ factory })
    const reading = get('a', use).catch(faultOf)
    await vi.advanceTimersByTimeAsync(5000)
    expect(await reading).toBe('no-answer')
    const writing = set('a', 1, use)
    await vi.advanceTimersByTimeAsync(1000)
    await answers[0]!()
    await writing
    await answers[1]!()
    expect(await get('a', use)).toBe(1)
  })

  test('a failed opening is not kept', async () => {
    const factory = new IDBFactory()
    vi.spyOn(factory, 'open').mockImplementationOnce(() => {
      throw new DOMException('not now', 'SecurityError')
    })
    const use = createDatabase({ factory })
    await expect(get('a', use)).rejects.toMatchObject({ name: 'SecurityError' })
    await set('a', 1, use)
    expect(await get('a', use)).toBe(1)
  })
})

test('what a transaction keeps waiting for more than eight seconds is refused as no answer', async () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
  const hangs = patientDatabase(() => new Promise(() => {}))
  const heard = get('a', hangs).catch(faultOf)
  await vi.advanceTimersByTimeAsync(8000)
  expect(await heard).toBe('no-answer')
  await expect(
    patientDatabase(() => Promise.reject(new Error('full')))('readonly', () => {}),
  ).rejects.toThrow('full')
})
