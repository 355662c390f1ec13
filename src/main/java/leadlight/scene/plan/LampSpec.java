package leadlight.scene.plan;

/**
 * One lamp, in the camera's frame (it tilts with the microscope).
 *
 * @param kind shape
 * @param elevationDeg above the focal plane; 90 is along the view
 * @param spreadDeg full width in elevation (ring) or diameter (patch, coaxial)
 * @param azimuthDeg picture direction the light comes from (patch): 0 right, 90 down
 * @param count single light-emitting diodes in a ring, 0 for an even ring
 * @param power irradiance on a level plane, relative
 * @param red colour
 * @param green colour
 * @param blue colour
 */
public record LampSpec(
    Kind kind,
    double elevationDeg,
    double spreadDeg,
    double azimuthDeg,
    int count,
    double power,
    double red,
    double green,
    double blue) {

  /** The shapes of light. */
  public enum Kind {
    /** A circle of light round the lens. */
    RING,
    /** Light through the lens. */
    COAXIAL,
    /** Light from everywhere. */
    DOME,
    /** A patch of light to one side: bench lamp, window or a phone's torch. */
    PATCH
  }

  /** The same lamp, standing elsewhere and brighter or darker. */
  public LampSpec shifted(double moreElevationDeg, double moreAzimuthDeg, double times) {
    return new LampSpec(
        kind,
        Math.min(90, elevationDeg + moreElevationDeg),
        spreadDeg,
        azimuthDeg + moreAzimuthDeg,
        count,
        power * times,
        red,
        green,
        blue);
  }
}
