// Starts the worker that reads GPX files, also on a page that only takes script addresses from named policies.

import workerAddress from './worker.ts?worker&url'

interface AddressPolicy {
  createScriptURL(address: string): string
}

interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): AddressPolicy
}

let policy: AddressPolicy | null = null

/** Throws where the browser has no workers or does not let this one start. */
export function startGpxWorker(): Worker {
  return new Worker(trusted(new URL(workerAddress, location.href).href), { type: 'module', name: 'gpx' })
}

/** The address as a policy has let it through: this one file and no other. */
function trusted(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: PolicyFactory }
  if (!trustedTypes) return address
  policy ??= trustedTypes.createPolicy('app-worker', {
    createScriptURL(wanted) {
      if (wanted !== address) throw new TypeError(`${wanted} is not the worker of this app`)
      return wanted
    },
  })
  return policy.createScriptURL(address)
}
