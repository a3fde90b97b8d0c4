// The link as a code, black on white in every theme: cameras read nothing else well.

import './share.css'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import { type Code, codeOf, modulePx, QUIET } from './code'

export function CodePicture({ link }: { link: string }) {
  const box = useRef<HTMLDivElement>(null)
  const [room, setRoom] = useState(320)
  const [{ size, path }] = useState((): Code => codeOf(link))
  useLayoutEffect(() => {
    const look = () => setRoom(box.current?.clientWidth || 320)
    look()
    addEventListener('resize', look)
    return () => removeEventListener('resize', look)
  }, [])
  const modules = size + 2 * QUIET
  const px = modules * modulePx(modules, room, devicePixelRatio || 1)
  return (
    <div class="code" ref={box}>
      <svg
        role="img"
        aria-label="QR code that holds the link to this plan. The same link can be copied above."
        width={px}
        height={px}
        viewBox={`${-QUIET} ${-QUIET} ${modules} ${modules}`}
        shape-rendering="crispEdges"
      >
        <rect x={-QUIET} y={-QUIET} width={modules} height={modules} fill="#fff" />
        <path d={path} fill="#000" />
      </svg>
    </div>
  )
}
