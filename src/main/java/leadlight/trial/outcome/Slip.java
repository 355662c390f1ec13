package leadlight.trial.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.trial.truth.JointTruth;

/**
 * A joint that was judged wrongly or not at all, in words.
 *
 * @param photo the photo's file name
 * @param pin the joint
 * @param result what the verdict was worth
 * @param truth what is true, as "open, floats 0.07 mm"
 * @param opinion what was said, as "acceptable; open 0.31, insufficient 0.12"
 */
public record Slip(String photo, int pin, JointResult result, String truth, String opinion) {

  /** The results that are slips, gravest first. */
  public static final List<JointResult> KINDS =
      List.of(JointResult.MISSED, JointResult.FALSE_CALL, JointResult.UNJUDGED);

  /** All slips of a photo, pin 1 first. */
  public static List<Slip> of(PhotoOutcome photo) {
    List<Slip> slips = new ArrayList<>();
    for (JointOutcome joint : photo.joints()) {
      if (KINDS.contains(joint.result())) {
        slips.add(
            new Slip(
                photo.truth().photo(),
                joint.truth().pin(),
                joint.result(),
                truth(joint.truth()),
                Opinion.words(joint.opinion())));
      }
    }
    return slips;
  }

  private static String truth(JointTruth truth) {
    StringBuilder text = new StringBuilder(truth.condition());
    truth.findings().stream()
        .filter(finding -> !finding.equals(truth.condition()))
        .forEach(finding -> text.append(", ").append(finding));
    truth.bridgeTo().ifPresent(pin -> text.append(" to ").append(pin));
    truth
        .liftedMm()
        .ifPresent(mm -> text.append(String.format(Locale.ROOT, ", floats %.3f mm", mm)));
    truth
        .wetted()
        .ifPresent(
            part ->
                text.append(
                    String.format(
                        Locale.ROOT,
                        ", wetted %.0f-%.0f %% from toe",
                        100 * part.from(),
                        100 * part.to())));
    if (truth.sideOverhangOfLeadWidth().orElse(0) > 0) {
      text.append(
          String.format(
              Locale.ROOT,
              ", overhang %.0f %% W",
              100 * truth.sideOverhangOfLeadWidth().getAsDouble()));
    }
    return text.toString();
  }
}
