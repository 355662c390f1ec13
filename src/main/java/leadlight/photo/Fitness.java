package leadlight.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.photo.limit.PhotoLimits;
import leadlight.vision.Frame;
import leadlight.vision.blur.BlurMeter;
import leadlight.vision.blur.GreyScan;
import leadlight.vision.blur.ToneMeter;

/**
 * Judges a picture before its joints. The bounds are those of {@code models/photo/limits.json};
 * none refuses a picture: whether a joint can be judged is decided at the joint.
 */
public final class Fitness {

  /** JPEG leaves clipped areas a few levels off the ends. */
  private static final int BURNT_OUT_LEVEL = 250;

  private static final int BLACK_LEVEL = 5;
  private static final double TAIL = 0.05;

  private final PhotoLimits.Fit limits;

  /** With the built-in bounds. */
  public Fitness() {
    this(PhotoLimits.standard());
  }

  Fitness(PhotoLimits limits) {
    this.limits = limits.fitness();
  }

  /** Measures a picture. */
  public PictureFacts facts(Frame frame) {
    try (GreyScan scan = new GreyScan(frame)) {
      ToneMeter.Tones tones = ToneMeter.tones(scan);
      return new PictureFacts(
          BlurMeter.edgeSigmaPx(scan),
          ToneMeter.noise(frame),
          tones.shareFrom(BURNT_OUT_LEVEL),
          tones.shareUpTo(BLACK_LEVEL),
          tones.quantile(1 - TAIL) - tones.quantile(TAIL));
    }
  }

  /**
   * One note for each bound that is exceeded.
   *
   * @param pitchPx the pitch of the row in the picture, if one was found: blur is then judged by
   *     it, else by the pixel
   */
  public List<Note> advice(PictureFacts facts, OptionalDouble pitchPx) {
    List<Note> advice = new ArrayList<>();
    if (facts.edgeBlurPx().isEmpty()) {
      advice.add(new NoteOfPhoto.NoEdges());
    } else if (pitchPx.isPresent()) {
      softForPitch(facts.edgeBlurPx().getAsDouble(), pitchPx.getAsDouble()).ifPresent(advice::add);
    } else {
      softForPixels(facts.edgeBlurPx().getAsDouble()).ifPresent(advice::add);
    }
    tones(facts, advice);
    return advice;
  }

  /** Soft focus and stretched pixels look the same; edges sharp by the pixel need more pixels. */
  private Optional<Note> softForPitch(double blurPx, double pitchPx) {
    double blurPitch = blurPx / pitchPx;
    return blurPitch <= limits.edgeBlurOfPitchFull().value()
        ? Optional.empty()
        : Optional.of(
            new NoteOfPhoto.SoftForPitch(
                blurPx, blurPitch, blurPx <= limits.edgeBlurPxMax().value()));
  }

  private Optional<Note> softForPixels(double blurPx) {
    return blurPx <= limits.edgeBlurPxMax().value()
        ? Optional.empty()
        : Optional.of(new NoteOfPhoto.SoftForPixels(blurPx, blurPx / limits.sharpEdgePx().value()));
  }

  private void tones(PictureFacts facts, List<Note> advice) {
    if (facts.burntOutShare() > limits.burntOutShareMax().value()) {
      advice.add(new NoteOfPhoto.BurntOut(facts.burntOutShare()));
    }
    if (facts.blackShare() > limits.blackShareMax().value()) {
      advice.add(new NoteOfPhoto.Black(facts.blackShare()));
    }
    if (facts.contrast() < limits.contrastMin().value()) {
      advice.add(new NoteOfPhoto.LowContrast());
    }
    if (facts.noise() > limits.noiseMax().value()) {
      advice.add(new NoteOfPhoto.Noisy());
    }
  }
}
