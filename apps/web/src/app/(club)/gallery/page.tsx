import { notFound } from 'next/navigation'
import { drawingExamples } from '../../../drawing/drawing.examples'
import { PlainPage } from '../../../shell/club-page'
import type { Examples } from '../../../ui/example'
import { galleryOfUi } from '../../../ui/gallery'

/** All examples on one page, for eyes and for the accessibility run; only where ESPALIER_GALLERY is set to 1. */
export default function GalleryPage() {
  if (process.env.ESPALIER_GALLERY !== '1') notFound()
  const gallery: readonly (readonly [string, Examples])[] = Object.entries({
    ...galleryOfUi,
    drawing: drawingExamples,
  })
  return (
    <PlainPage title="Gallery">
      {gallery.map(([component, examples]) => (
        <section key={component} aria-label={component} className="flex flex-col gap-4 border-t border-ink pt-3">
          <h2 className="text-lead font-semibold">{component}</h2>
          {Object.entries(examples).map(([name, element]) => (
            <div key={name} data-example={name} className="flex flex-col gap-2">
              <h3 className="text-small text-ink-soft">{name}</h3>
              {element}
            </div>
          ))}
        </section>
      ))}
    </PlainPage>
  )
}
