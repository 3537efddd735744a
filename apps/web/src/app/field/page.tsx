import { FieldApp } from '../../features/tonight/field-app'

/** Made at build time, without data, so that it opens offline; the address says which club, team and view. */
export default function FieldPage() {
  return <FieldApp />
}
