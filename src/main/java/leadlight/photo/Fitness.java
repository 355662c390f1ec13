package leadlight.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.vision.BlurMeter;
import leadlight.vision.Frame;
import leadlight.vision.ToneMeter;

/**
 * Judges a picture before its joints. The bounds are those of {@code models/photo/limits.json};
 * none refuses a picture: whether a joint can be judged is decided at the joint.
 */
public final class Fitness {

  /** JPEG leaves clipped areas a few levels off the ends. */
  private static final int BURNT_OUT_LEVEL = 250;

  /** Soft focus and stretched pixels look the same, so both are named. */
  private static final String SHARPEN =
      "focus again, and set the camera to its real resolution without zoom";

  /** Where edges are as sharp as pixels allow, more pixels for the row are what helps. */
  private static final String CLOSER = "let the row fill the picture, and focus again";

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
    ToneMeter.Tones tones = ToneMeter.tones(frame);
    return new PictureFacts(
        BlurMeter.edgeSigmaPx(frame),
        ToneMeter.noise(frame),
        tones.shareFrom(BURNT_OUT_LEVEL),
        tones.shareUpTo(BLACK_LEVEL),
        tones.quantile(1 - TAIL) - tones.quantile(TAIL));
  }

  /**
   * One sentence for each bound that is exceeded: what is wrong, and what to change.
   *
   * @param pitchPx the pitch of the row in the picture, if one was found: blur is then judged by
   *     it, else by the pixel
   */
  public List<String> advice(PictureFacts facts, OptionalDouble pitchPx) {
    List<String> advice = new ArrayList<>();
    if (facts.edgeBlurPx().isEmpty()) {
      advice.add("The picture shows no clear edges: focus on the leads and light them.");
    } else if (pitchPx.isPresent()) {
      softForPitch(facts.edgeBlurPx().getAsDouble(), pitchPx.getAsDouble()).ifPresent(advice::add);
    } else {
      softForPixels(facts.edgeBlurPx().getAsDouble()).ifPresent(advice::add);
    }
    tones(facts, advice);
    return advice;
  }

  private Optional<String> softForPitch(double blurPx, double pitchPx) {
    double blurOfPitch = blurPx / pitchPx;
    if (blurOfPitch <= limits.edgeBlurOfPitchFull().value()) {
      return Optional.empty();
    }
    return Optional.of(
        say(
            "Edges are soft (sigma %.1f px, %.3f of the pitch), %s: %s.",
            blurPx,
            blurOfPitch,
            blurOfPitch <= limits.edgeBlurOfPitchCoarse().value()
                ? "which shows coarse faults only"
                : "too soft to judge joints",
            blurPx <= limits.edgeBlurPxMax().value() ? CLOSER : SHARPEN));
  }

  private Optional<String> softForPixels(double blurPx) {
    if (blurPx <= limits.edgeBlurPxMax().value()) {
      return Optional.empty();
    }
    return Optional.of(
        say(
            "Edges are soft (sigma %.1f px); shrunk %.1f times, the picture would show as much: %s.",
            blurPx, blurPx / limits.sharpEdgePx().value(), SHARPEN));
  }

  private void tones(PictureFacts facts, List<String> advice) {
    if (facts.burntOutShare() > limits.burntOutShareMax().value()) {
      advice.add(
          say(
              "%.0f %% of the picture is burnt out: shorten the exposure or diffuse the lamp.",
              100 * facts.burntOutShare()));
    }
    if (facts.blackShare() > limits.blackShareMax().value()) {
      advice.add(
          say(
              "%.0f %% of the picture is black: add light or lengthen the exposure.",
              100 * facts.blackShare()));
    }
    if (facts.contrast() < limits.contrastMin().value()) {
      advice.add("The picture has little contrast: clean the lens and light from the side.");
    }
    if (facts.noise() > limits.noiseMax().value()) {
      advice.add("The picture is noisy: add light, or lower the camera's gain.");
    }
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
