package leadlight.app.quality;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.quality.Table;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;

/** Grades from wherever they come: tables of grades, Leadlight's reports, truth files. */
public final class GradeFiles {

  static final String TOOL = "leadlight";
  static final String TRUTH = "truth";

  private GradeFiles() {}

  public static List<Grade> read(Path path, Reading reading) {
    if (Files.isDirectory(path)) {
      return ScoredJoints.files(path, ".truth.json").isEmpty()
          ? tool(ScoredJoints.in(path))
          : truth(path);
    }
    Table table = Table.read(path);
    return ScoredJoints.isReport(table) ? tool(ScoredJoints.of(table)) : Grades.read(path, reading);
  }

  private static List<Grade> tool(List<ScoredJoints.Joint> joints) {
    return joints.stream()
        .map(j -> new Grade(j.item(), TOOL, 1, j.verdict(), j.finding().map(GradeFiles::kinds)))
        .toList();
  }

  /** "bridge 8-9; open" without the pins. */
  private static String kinds(String findings) {
    return findings.replaceAll(" \\d+-\\d+(?=;|$)", "");
  }

  private static List<Grade> truth(Path folder) {
    List<Grade> grades = new ArrayList<>();
    for (TrialPhoto photo : TruthFolder.read(folder)) {
      photo
          .truth()
          .ifPresent(
              t ->
                  t.joints()
                      .forEach(
                          j ->
                              grades.add(
                                  new Grade(
                                      t.photo() + " pin " + j.pin(),
                                      TRUTH,
                                      1,
                                      j.class2().name().toLowerCase(java.util.Locale.ROOT),
                                      finding(j)))));
    }
    return grades;
  }

  private static Optional<String> finding(JointTruth joint) {
    return joint.findings().isEmpty()
        ? Optional.empty()
        : Optional.of(String.join("; ", joint.findings()));
  }
}
