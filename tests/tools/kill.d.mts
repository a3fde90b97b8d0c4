export function killRounds(options: {
  url: string
  rounds: number
  profile: string
  executablePath?: string
}): Promise<{ acknowledged: number; losses: string[] }>

export function lossBound(losses: number, rounds: number): number
