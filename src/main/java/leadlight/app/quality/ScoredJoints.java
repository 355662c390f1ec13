package leadlight.app.quality;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadlight.model.PointPx;
import leadlight.model.UserError;
import leadlight.quality.Table;

/** The joints of a folder of Leadlight's own CSV reports. */
public final class ScoredJoints {

  /**
   * A joint as a report has it.
   *
   * @param photo file name of the photo
   * @param pin place in the row
   * @param verdict the tool's
   * @param finding the tool's, if any
   * @param toe open end of the lead, photo pixels
   * @param heel other end of the foot
   * @param row its line
   */
  public record Joint(
      String photo,
      int pin,
      String verdict,
      Optional<String> finding,
      PointPx toe,
      PointPx heel,
      Table.Row row) {

    public String item() {
      return photo + " pin " + pin;
    }
  }

  private ScoredJoints() {}

  /** Whether a table is a report of Leadlight's. */
  static boolean isReport(Table table) {
    return table.has("photo") && table.has("pin") && table.has("toe_x_px");
  }

  /**
   * All joints of the reports in a folder, by file name.
   *
   * @throws UserError if there are none
   */
  public static List<Joint> in(Path folder) {
    List<Joint> joints = new ArrayList<>();
    for (Path file : files(folder, ".csv")) {
      Table table = Table.read(file);
      if (isReport(table)) {
        joints.addAll(of(table));
      }
    }
    if (joints.isEmpty()) {
      throw new UserError(
          folder
              + " has no CSV report of scored joints; run leadlight score first, or name the folder of"
              + " one board and stage in a batch's run");
    }
    return joints;
  }

  /** The joints of one report; a photo without a row has none. */
  static List<Joint> of(Table table) {
    List<Joint> joints = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      if (row.maybe("pin").isPresent()) {
        joints.add(
            new Joint(
                row.text("photo"),
                row.count("pin"),
                row.text("verdict"),
                row.maybe("findings"),
                new PointPx(row.number("toe_x_px"), row.number("toe_y_px")),
                new PointPx(row.number("heel_x_px"), row.number("heel_y_px")),
                row));
      }
    }
    return joints;
  }

  /** Photos of the reports in a folder whose row was not found: they have no joints. */
  public static List<String> withoutRow(Path folder) {
    List<String> photos = new ArrayList<>();
    for (Path file : files(folder, ".csv")) {
      Table table = Table.read(file);
      if (isReport(table) && of(table).isEmpty()) {
        photos.add(table.rows().get(0).text("photo"));
      }
    }
    return photos;
  }

  /** Files of a folder by name. */
  static List<Path> files(Path folder, String ending) {
    if (!Files.isDirectory(folder)) {
      throw new UserError(folder + " is not a folder; name the folder with the reports");
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UserError(folder + " cannot be listed; check that you may read it");
    }
  }
}
