package leadlight.scene.plan;

/**
 * A box behind the leads, and a second, higher one behind it (a metal shell).
 *
 * @param gapMm from the heel to the body's face
 * @param heightMm top of the body; 0 where there is none
 * @param exitMm height of the lead's upper side where it leaves the body
 * @param overEndMm how far the body runs past the end leads' middles
 * @param material plastic or metal
 * @param shellBackMm from the body's face back to the shell's; negative for none
 * @param shellHeightMm top of the shell
 * @param pockets share of the places for recesses and ejector marks that have one
 */
public record BodySpec(
    double gapMm,
    double heightMm,
    double exitMm,
    double overEndMm,
    Material material,
    double shellBackMm,
    double shellHeightMm,
    double pockets) {

  /** The place of a body that is not there. */
  public BodySpec absent() {
    return new BodySpec(gapMm, 0, 0, overEndMm, material, -1, 0, 0);
  }

  public boolean there() {
    return heightMm > 0;
  }
}
