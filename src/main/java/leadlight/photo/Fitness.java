package leadlight.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    OptionalDouble blur = BlurMeter.edgeSigmaPx(frame);
    return new PictureFacts(
        blur,
        ToneMeter.noise(frame),
        tones.shareFrom(BURNT_OUT_LEVEL),
        tones.shareUpTo(BLACK_LEVEL),
        tones.quantile(1 - TAIL) - tones.quantile(TAIL),
        blur.isEmpty() ? blur : OptionalDouble.of(resolvedShare(blur.getAsDouble())));
  }

  /** Each side holds as many sharp pixels as its blur lets through. */
  private double resolvedShare(double blurPx) {
    double side = Math.min(1, limits.sharpEdgePx().value() / blurPx);
    return side * side;
  }

  /** One sentence for each bound that is exceeded: what is wrong, and what to change. */
  public List<String> advice(PictureFacts facts) {
    List<String> advice = new ArrayList<>();
    if (facts.edgeBlurPx().isEmpty()) {
      advice.add("The picture shows no clear edges: focus on the leads and light them.");
    }
    if (facts.edgeBlurPx().orElse(0) > limits.edgeBlurPxMax().value()) {
      advice.add(
          say("Edges are soft (sigma %.1f px), so that about %.0f %% of the pixels carry detail:"
                  + " focus again, and set the camera to its real resolution without zoom.",
              facts.edgeBlurPx().getAsDouble(), 100 * facts.resolvedShare().getAsDouble()));
    }
    if (facts.burntOutShare() > limits.burntOutShareMax().value()) {
      advice.add(
          say("%.0f %% of the picture is burnt out: shorten the exposure or diffuse the lamp.",
              100 * facts.burntOutShare()));
    }
    if (facts.blackShare() > limits.blackShareMax().value()) {
      advice.add(
          say("%.0f %% of the picture is black: add light or lengthen the exposure.",
              100 * facts.blackShare()));
    }
    if (facts.contrast() < limits.contrastMin().value()) {
      advice.add("The picture has little contrast: clean the lens and light from the side.");
    }
    if (facts.noise() > limits.noiseMax().value()) {
      advice.add("The picture is noisy: add light, or lower the camera's gain.");
    }
    return advice;
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
