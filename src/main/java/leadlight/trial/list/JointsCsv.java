package leadlight.trial.list;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.row.Lead;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.Opinion;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;

/**
 * One line for every joint of the photos with truth, those of rows not found too: conditions,
 * truth, opinion (doubts by code), and where the toe was said to be with which standard
 * uncertainty. An overhang below 0, a lead inside its land, counts as none, as truth has it.
 */
public final class JointsCsv {

  private static final List<String> HEADER =
      List.of(
          "photo",
          "connector",
          "lamp",
          "mask",
          "pitch_px",
          "edge_blur_px",
          "tilt_deg",
          "row",
          "pin",
          "condition",
          "class2",
          "true_findings",
          "wetted_from",
          "wetted_to",
          "lifted_mm",
          "result",
          "verdict",
          "findings",
          "unjudged_because",
          "along_row_px",
          "u_along_row_px",
          "along_lead_px",
          "u_along_lead_px",
          "true_overhang_mm",
          "overhang_mm",
          "u_overhang_mm");

  private JointsCsv() {}

  /** Writes all joints, photo by photo, pin 1 first; fields of what is not known stay empty. */
  public static void write(List<PhotoOutcome> photos, Writer to) {
    try (CsvWriter csv = CsvWriter.builder().build(to)) {
      csv.writeRecord(HEADER);
      for (PhotoOutcome photo : photos) {
        for (int i = 0; i < photo.truth().leads(); i++) {
          csv.writeRecord(line(photo, i));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> line(PhotoOutcome photo, int i) {
    PhotoTruth truth = photo.truth();
    JointTruth joint = truth.joints().get(i);
    List<String> line = new ArrayList<>();
    line.add(truth.photo());
    line.add(truth.connector().orElse(""));
    line.add(truth.lamp());
    line.add(truth.mask());
    line.add(text(truth.pitchPx()));
    line.add(text(truth.edgeBlurPx()));
    line.add(text(Math.toDegrees(truth.tiltRad())));
    line.add(name(photo.row()));
    line.add(Integer.toString(joint.pin()));
    line.add(joint.condition());
    line.add(name(joint.class2()));
    line.add(String.join(" ", joint.findings()));
    line.add(joint.wetted().map(part -> text(part.from())).orElse(""));
    line.add(joint.wetted().map(part -> text(part.to())).orElse(""));
    line.add(text(joint.liftedMm()));
    if (photo.joints().isEmpty()) {
      line.addAll(List.of("row-not-found", "", "", photo.reason(), "", "", "", "", "", "", ""));
    } else {
      addOpinion(line, truth, photo.joints().get(i));
    }
    return line;
  }

  private static void addOpinion(List<String> line, PhotoTruth photo, JointOutcome joint) {
    Lead lead = joint.opinion().joint().lead();
    Optional<Quantity> overhang =
        Optional.ofNullable(joint.opinion().joint().measures().get(Measure.SIDE_OVERHANG));
    OptionalDouble trueOverhang = joint.truth().sideOverhangOfLeadWidth();
    line.add(name(joint.result()));
    line.add(joint.opinion().verdict().id());
    line.add(
        String.join(" ", joint.opinion().findings().stream().map(f -> f.kind().id()).toList()));
    line.add(Opinion.doubts(joint.opinion()));
    line.add(text(joint.lateralPx()));
    line.add(text(lead.uAcrossPx()));
    line.add(text(joint.axialPx()));
    line.add(text(lead.uAlongPx()));
    line.add(trueOverhang.isEmpty() ? "" : text(trueOverhang.getAsDouble() * photo.leadWidthMm()));
    line.add(overhang.map(q -> text(Math.max(0, q.value()))).orElse(""));
    line.add(overhang.map(q -> text(q.u())).orElse(""));
  }

  private static String name(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String text(OptionalDouble value) {
    return value.isPresent() ? text(value.getAsDouble()) : "";
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.5g", value);
  }
}
