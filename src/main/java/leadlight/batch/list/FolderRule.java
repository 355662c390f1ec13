package leadlight.batch.list;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.connector.RowRequest;
import leadlight.model.UserError;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;

/**
 * What a photo is of, by the folders that it lies in: {@code JOB/BOARD/STAGE/photo}.
 *
 * <ul>
 *   <li>The innermost folder is the stage if it is called "as received", "after rework" or "final",
 *       with a number behind it from the second time on ("after rework 2"); else the stage is "as
 *       received".
 *   <li>Of the other folders the outermost is the job and the rest the board; a photo without a
 *       board folder is of board "1", one without any is of the job called as the given folder.
 *   <li>A folder name that ends in {@code [ID]} states the connector of all that is in it; the
 *       innermost such folder counts.
 * </ul>
 */
public final class FolderRule {

  private static final Pattern CONNECTOR = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]+)\\]\\s*");
  private static final Pattern NUMBERED = Pattern.compile("(.*?)[\\s_-]*([1-9][0-9]{0,3})");

  private final Path folder;
  private final Defaults defaults;

  public FolderRule(Path folder, Defaults defaults) {
    this.folder = folder;
    this.defaults = defaults;
  }

  /**
   * The photo with its job.
   *
   * @throws UserError if no row is stated for it
   */
  public JobPhoto of(Path photo) {
    List<String> names = new ArrayList<>();
    Path inside = folder.relativize(photo).getParent();
    if (inside != null) {
      inside.forEach(name -> names.add(name.toString()));
    }
    Optional<String> connector = Optional.empty();
    for (int i = 0; i < names.size(); i++) {
      Matcher matcher = CONNECTOR.matcher(names.get(i));
      if (matcher.matches() && !matcher.group(1).isBlank()) {
        connector = Optional.of(matcher.group(2));
        names.set(i, matcher.group(1));
      }
    }
    RowRequest row = connector.map(RowRequest::of).orElse(defaults.row());
    if (row.isEmpty()) {
      throw new UserError(
          photo
              + ": no row is stated for it; give --connector, or --leads and --pitch, or put the"
              + " connector in brackets behind the folder's name, as in \"board 1 [usb-c-16]\"");
    }
    try {
      return new JobPhoto(
          photo, subject(names), row.spec(), defaults.body(), defaults.productClass());
    } catch (UserError e) {
      throw new UserError(photo + ": " + e.getMessage());
    }
  }

  private Subject subject(List<String> names) {
    Stage stage = Stage.AS_RECEIVED;
    int attempt = 1;
    if (!names.isEmpty()) {
      String last = names.get(names.size() - 1);
      Matcher numbered = NUMBERED.matcher(last);
      Optional<Stage> plain = Stage.of(last);
      Optional<Stage> counted = numbered.matches() ? Stage.of(numbered.group(1)) : Optional.empty();
      if (plain.isPresent() || counted.isPresent()) {
        stage = plain.or(() -> counted).get();
        attempt = plain.isPresent() ? 1 : Integer.parseInt(numbered.group(2));
        names.remove(names.size() - 1);
      }
    }
    String job = names.isEmpty() ? own() : names.get(0);
    String board =
        names.size() < 2 ? Subject.ONLY_BOARD : String.join("/", names.subList(1, names.size()));
    return new Subject(job, board, stage, attempt);
  }

  private String own() {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    return name == null ? "job" : name.toString();
  }
}
