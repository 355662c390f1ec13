package leadlight.trial;

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

  private final List<PhotoOutcome> photos = new ArrayList<>();
  private final List<List<Map<String, Double>>> features = new ArrayList<>();

  /** Adds a photo; {@code joints} holds a map for each joint, or none if no row was found. */
  public void add(PhotoOutcome photo, List<Map<String, Double>> joints) {
    photos.add(photo);
    features.add(joints);
  }

  /** Writes all photos; columns of features in the order of their first appearance. */
  public void write(Writer to) {
    Set<String> names = new LinkedHashSet<>();
    features.forEach(photo -> photo.forEach(joint -> names.addAll(joint.keySet())));
    try (CsvWriter csv = CsvWriter.builder().build(to)) {
      List<String> header = new ArrayList<>(FIXED);
      header.addAll(names);
      csv.writeRecord(header);
      for (int i = 0; i < photos.size(); i++) {
        PhotoOutcome photo = photos.get(i);
        for (int j = 0; j < photo.joints().size(); j++) {
          csv.writeRecord(record(photo, photo.joints().get(j), features.get(i).get(j), names));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> record(
      PhotoOutcome photo, JointOutcome joint, Map<String, Double> features, Set<String> names) {
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
    record.add(
        String.join(
            " ", joint.opinion().findings().stream().map(finding -> finding.kind().id()).toList()));
    record.add(text(joint.lateralPx()));
    record.add(text(joint.axialPx()));
    names.forEach(name -> record.add(features.containsKey(name) ? "" + features.get(name) : ""));
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
