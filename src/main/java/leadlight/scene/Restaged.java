package leadlight.scene;

import leadlight.scene.camera.CameraSpec;
import leadlight.scene.chance.Dice;

/**
 * How far the camera of another photo of a row stands from that of the first, at most.
 *
 * @param shiftMm of the aimed point, each way
 * @param turnDeg of the picture
 * @param scale share
 * @param tiltDeg about each axis
 * @param focus blur is divided or multiplied by up to this
 * @param exposure share
 */
record Restaged(
    double shiftMm, double turnDeg, double scale, double tiltDeg, double focus, double exposure) {

  /** A microscope on its stand: the board was touched, focus and exposure set anew. */
  static final Restaged TOUCHED = new Restaged(0.15, 1, 0.015, 0.3, 1.4, 0.1);

  /** A microscope that stands fixed: it trembles a little, and its focus creeps. */
  static final Restaged FIXED = new Restaged(0.012, 0.05, 0.001, 0, 1.5, 0.02);

  private static final double DEG = Math.PI / 180;

  CameraSpec of(CameraSpec was, Dice dice) {
    CameraSpec.Sensing s = was.sensor();
    return new CameraSpec(
        was.widthPx(),
        was.heightPx(),
        was.pxPerMm() * (1 + dice.even(-scale, scale)),
        was.aimAlongRowMm() + dice.even(-shiftMm, shiftMm),
        was.aimAlongLeadMm() + dice.even(-shiftMm, shiftMm),
        was.rotationRad() + dice.even(-turnDeg, turnDeg) * DEG,
        new double[] {
          was.tiltRad()[0] + dice.even(-tiltDeg, tiltDeg) * DEG,
          was.tiltRad()[1] + dice.even(-tiltDeg, tiltDeg) * DEG
        },
        was.distanceMm(),
        was.lens().blurred(Math.pow(focus, dice.even(-1, 1))),
        new CameraSpec.Sensing(
            s.mosaic(),
            s.noise(),
            s.redGain(),
            s.blueGain(),
            s.exposure() * (1 + dice.even(-exposure, exposure)),
            s.contrast(),
            s.saturation(),
            s.sharpen(),
            s.jpegQuality()));
  }
}
