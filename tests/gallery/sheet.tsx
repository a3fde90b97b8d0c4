import { Sheet } from '../../src/components/why'

/** Lies over the page: a picture of its own. */
export function SheetSpecimen() {
  return (
    <Sheet title="Heaviest load, when you leave a stop with a very long name" onClose={() => undefined}>
      <p>The load is heaviest where the bottles are full and the food for the next days is bought.</p>
      <p class="hint">Gear 6.5 kg, food 3.1 kg, water 4.0 kg.</p>
      <button type="button" class="primary">
        Change the water
      </button>
    </Sheet>
  )
}
