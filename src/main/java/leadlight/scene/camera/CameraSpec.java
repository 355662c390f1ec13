package leadlight.scene.camera;

/**
 * Camera.
 *
 * @param widthPx picture width
 * @param heightPx picture height
 * @param pxPerMm scale at the aimed point
 * @param aimAlongRowMm aimed point along the row
 * @param aimAlongLeadMm aimed point along the leads
 * @param rotationRad turn of the picture; 0 has the body above
 * @param tiltRad tilt about the picture's x axis, then its y axis
 * @param distanceMm lens to aimed point
 * @param lens what the optics do to the light
 * @param sensor what becomes of the light
 */
public record CameraSpec(
    int widthPx,
    int heightPx,
    double pxPerMm,
    double aimAlongRowMm,
    double aimAlongLeadMm,
    double rotationRad,
    double[] tiltRad,
    double distanceMm,
    Lens lens,
    Sensing sensor) {

  /**
   * Optics.
   *
   * @param k1 radial distortion at half the picture's diagonal
   * @param blurPx defocus, standard deviation
   * @param blurSlope change of the defocus from the left to the right edge, share of blurPx
   * @param vignette loss of light in the corner, 0 to 1
   * @param fadeRight light lost from the middle to the right edge (gained to the left): a lamp that
   *     stands nearer to one side
   * @param fadeDown light lost from the middle to the lower edge
   * @param glow share of the light that glass and dust scatter widely
   * @param fringe lateral chromatic aberration: red is this share larger, blue as much smaller
   */
  public record Lens(
      double k1,
      double blurPx,
      double blurSlope,
      double vignette,
      double fadeRight,
      double fadeDown,
      double glow,
      double fringe) {

    /** The same lens, focused otherwise. */
    public Lens blurred(double times) {
      return new Lens(k1, blurPx * times, blurSlope, vignette, fadeRight, fadeDown, glow, fringe);
    }
  }

  /**
   * Sensor and the camera's own processing.
   *
   * @param mosaic one colour a pixel under a Bayer pattern, the others interpolated
   * @param noise noise at full white, standard deviation as a share of white
   * @param redGain error of the white balance
   * @param blueGain error of the white balance
   * @param exposure mean level wanted, 0 to 1 linear
   * @param contrast strength of the S-shaped curve, 0 none to 1
   * @param saturation distance of colours from grey, 1 as they are
   * @param sharpen the camera's own sharpening, 0 for none
   * @param jpegQuality 0 to 1
   */
  public record Sensing(
      boolean mosaic,
      double noise,
      double redGain,
      double blueGain,
      double exposure,
      double contrast,
      double saturation,
      double sharpen,
      double jpegQuality) {}
}
