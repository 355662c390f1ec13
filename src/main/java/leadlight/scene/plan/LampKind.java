package leadlight.scene.plan;

/** The shapes of light. */
public enum LampKind {
  /** A circle of light round the lens. */
  RING,
  /** Light through the lens. */
  COAXIAL,
  /** Light from everywhere. */
  DOME,
  /** A patch of light to one side: bench lamp, window or a phone's torch. */
  PATCH
}
