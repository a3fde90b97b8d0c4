// Starts a worker of this app, also on a page that only takes script addresses from named policies.
// One policy for all of them: a page lets a policy of one name be made only once.

interface AddressPolicy {
  createScriptURL(address: string): string
}

interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): AddressPolicy
}

/** The module of a worker, which the page imports for its address alone: so both share the files that it imports. */
export type WorkerModule = () => Promise<{ address: string }>

let policy: AddressPolicy | null = null

/** Rejects where the module cannot be had, and where the browser has no workers or does not let this one start. */
export async function startOwnWorker(module: WorkerModule, name: string): Promise<Worker> {
  const { address } = await module()
  return new Worker(trusted(address), { type: 'module', name })
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
