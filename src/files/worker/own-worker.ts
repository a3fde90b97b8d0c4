// Starts a worker of this app, also on a page that only takes script addresses from named policies.
// One policy for all of them: a page lets a policy of one name be made only once.

interface AddressPolicy {
  createScriptURL(address: string): string
}

interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): AddressPolicy
}

let policy: AddressPolicy | null = null

/** `address` as `?worker&url` gives it. Throws where the browser has no workers or does not let this one start. */
export function startOwnWorker(address: string, name: string): Worker {
  return new Worker(trusted(new URL(address, location.href).href), { type: 'module', name })
}

/** The address as a policy has let it through: a file of this app and no other. */
function trusted(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: PolicyFactory }
  if (!trustedTypes) return address
  policy ??= trustedTypes.createPolicy('app-worker', {
    createScriptURL(wanted) {
      if (!wanted.startsWith(location.origin + location.pathname.replace(/[^/]*$/, '')))
        throw new TypeError(`${wanted} is not a worker of this app`)
      return wanted
    },
  })
  return policy.createScriptURL(address)
}
