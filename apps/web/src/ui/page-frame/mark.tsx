/** Three wires and one line trained along them. */
export function Mark({ className }: { readonly className?: string }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true" className={className} fill="none">
      <g className="stroke-wire" strokeWidth="1.4">
        <line x1="1" x2="23" y1="5.5" y2="5.5" />
        <line x1="1" x2="23" y1="12" y2="12" />
        <line x1="1" x2="23" y1="18.5" y2="18.5" />
      </g>
      <path
        d="M5 23 v-1.5 q0 -3 3 -3 h5.5 q3 0 3 -3 v-.5 q0 -3 3 -3 h3.5"
        className="stroke-frame"
        strokeWidth="2.2"
        strokeLinecap="round"
      />
    </svg>
  )
}
