package leadlight.trial.list;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.model.joint.GradedJoint;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;

/** One line per joint: truth, opinion, and the numbers that the judgement rests on. */
public final class MeasuresCsv {

  private static final List<String> FIXED =
      List.of(
          "photo",
          "lamp",
          "mask",
          "pitch_px",
          "edge_blur_px",
          "row",
          "pin",
          "condition",
          "class2",
          "true_findings",
          "side_overhang_of_lead_width",
          "wetted_from",
          "wetted_to",
          "lifted_mm",
          "bridge_to",
          "verdict",
          "findings",
          "lateral_px",
          "axial_px");

  /** Stands for the condition of a joint in a real photo: no meter has told it. */
  private static final String BY_EYE = "by-eye";

  private final List<Line> lines = new ArrayList<>();

  private record Line(List<String> fixed, Map<String, Double> features) {}

  /** Adds a photo with truth; {@code joints} holds a map for each joint, or none without a row. */
  public void add(PhotoOutcome photo, List<Map<String, Double>> joints) {
    for (int j = 0; j < photo.joints().size(); j++) {
      lines.add(new Line(fixed(photo, photo.joints().get(j)), joints.get(j)));
    }
  }

  /** Adds a real photo; its joints have no truth but a person's look at the photo. */
  public void add(NoteOutcome photo, List<Map<String, Double>> joints) {
    for (int j = 0; j < photo.joints().size(); j++) {
      lines.add(new Line(fixed(photo, j), joints.get(j)));
    }
  }

  /** Writes all photos; columns of features in the order of their first appearance. */
  public void write(Writer to) {
    Set<String> names = new LinkedHashSet<>();
    lines.forEach(line -> names.addAll(line.features.keySet()));
    try (CsvWriter csv = CsvWriter.builder().build(to)) {
      List<String> header = new ArrayList<>(FIXED);
      header.addAll(names);
      csv.writeRecord(header);
      for (Line line : lines) {
        List<String> record = new ArrayList<>(line.fixed);
        for (String name : names) {
          Double value = line.features.get(name);
          record.add(value == null ? "" : value.toString());
        }
        csv.writeRecord(record);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> fixed(NoteOutcome photo, int joint) {
    GradedJoint opinion = photo.joints().get(joint);
    return List.of(
        photo.note().photo(),
        "",
        "",
        Double.toString(photo.note().pitchPx()),
        "",
        photo.row().name(),
        Integer.toString(joint + 1),
        BY_EYE,
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        opinion.verdict().id(),
        kinds(opinion),
        "",
        "");
  }

  private static String kinds(GradedJoint opinion) {
    return String.join(
        " ", opinion.findings().stream().map(finding -> finding.kind().id()).toList());
  }

  private static List<String> fixed(PhotoOutcome photo, JointOutcome joint) {
    PhotoTruth truth = photo.truth();
    List<String> record = new ArrayList<>();
    record.add(truth.photo());
    record.add(truth.lamp());
    record.add(truth.mask());
    record.add(Double.toString(truth.pitchPx()));
    record.add(Double.toString(truth.edgeBlurPx()));
    record.add(photo.row().name());
    addTruth(record, joint.truth());
    record.add(joint.opinion().verdict().id());
    record.add(kinds(joint.opinion()));
    record.add(text(joint.lateralPx()));
    record.add(text(joint.axialPx()));
    return record;
  }

  private static void addTruth(List<String> record, JointTruth joint) {
    record.add(Integer.toString(joint.pin()));
    record.add(joint.condition());
    record.add(joint.class2().name().toLowerCase(Locale.ROOT));
    record.add(String.join(" ", joint.findings()));
    record.add(text(joint.sideOverhangOfLeadWidth()));
    record.add(joint.wetted().map(wetted -> "" + wetted.from()).orElse(""));
    record.add(joint.wetted().map(wetted -> "" + wetted.to()).orElse(""));
    record.add(text(joint.liftedMm()));
    record.add(joint.bridgeTo().isPresent() ? "" + joint.bridgeTo().getAsInt() : "");
  }

  private static String text(OptionalDouble value) {
    return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
  }
}
