package leadlight.app.quality;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import leadlight.quality.Table;
import leadlight.quality.gauge.Flips;
import leadlight.quality.gauge.GaugeInput;

/** Gauge readings from scored photos and a list that says what each photo is of. */
public final class GaugePhotos {

  /** What a photo measures of a joint that a limit or a person may ask for. */
  private static final List<String> MEASURES =
      List.of(
          "side_overhang_mm",
          "lateral_shift_mm",
          "lead_width_mm",
          "land_width_mm",
          "foot_length_mm");

  private GaugePhotos() {}

  /**
   * Joins a table (columns photo, board, operator and, if there, day) with CSV reports.
   *
   * @throws leadlight.model.UserError if a photo is listed twice or was not scored
   */
  public static GaugeInput read(Path list, Path reports) {
    Map<String, List<ScoredJoints.Joint>> byPhoto =
        ScoredJoints.in(reports).stream().collect(Collectors.groupingBy(ScoredJoints.Joint::photo));
    List<GaugeInput.Measured> readings = new ArrayList<>();
    List<Flips.Said> verdicts = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Table.Row row : Table.read(list, "photo", "board", "operator").rows()) {
      String photo = row.text("photo");
      if (!seen.add(photo)) {
        throw row.trouble(photo + " was listed before; delete one line");
      }
      List<ScoredJoints.Joint> joints = byPhoto.get(photo);
      if (joints == null) {
        throw row.trouble(
            photo + " has no scored joint in " + reports + "; score it, or leave its line out");
      }
      OptionalDouble day = GaugeInput.day(row);
      for (ScoredJoints.Joint joint : joints) {
        String part = row.text("board") + " pin " + joint.pin();
        verdicts.add(new Flips.Said(part, row.text("operator"), joint.verdict()));
        for (String measure : MEASURES) {
          if (joint.row().maybe(measure).isPresent()) {
            readings.add(
                new GaugeInput.Measured(
                    part, row.text("operator"), day, measure, joint.row().number(measure)));
          }
        }
      }
    }
    return new GaugeInput(readings, verdicts);
  }
}
