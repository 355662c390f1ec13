package leadlight.enrol;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.enrol.learn.Enrolment;
import leadlight.model.UserError;

/**
 * The folder of a shop's benches: a folder each, with a file for each version, {@code NAME/1.json}
 * and so on; the greatest number is in use. Taken back is renamed, never deleted.
 */
public final class BenchFolder {

  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");
  private static final Pattern VERSION = Pattern.compile("([1-9][0-9]{0,8})\\.json");
  private static final String PROPOSED = "proposed.json";
  private static final Pattern EVER = Pattern.compile("([1-9][0-9]{0,8})(\\.taken-back)?\\.json");

  private final Path folder;
  private final String bench;

  /**
   * Takes where benches lie.
   *
   * @throws UserError if the name would be no file name
   */
  public BenchFolder(Path benches, String bench) {
    if (!NAME.matcher(bench).matches()) {
      throw new UserError(
          "a bench's name has letters, digits, dots and dashes, as ring-lamp; is \""
              + bench
              + "\"");
    }
    if (file(bench)) {
      throw new UserError(
          "a bench's name does not end in .json, as files do; is \"" + bench + "\"");
    }
    this.folder = benches.resolve(bench);
    this.bench = bench;
  }

  /**
   * An enrolment by the name of its bench, or by its file.
   *
   * @throws UserError if there is none
   */
  public static Enrolment find(Path benches, String nameOrFile) {
    return file(nameOrFile)
        ? read(Path.of(nameOrFile))
        : new BenchFolder(benches, nameOrFile).inUse();
  }

  private static boolean file(String nameOrFile) {
    return nameOrFile.toLowerCase(Locale.ROOT).endsWith(".json");
  }

  private static Enrolment read(Path file) {
    DataFile data = DataFile.at(file);
    try {
      return data.read(Enrolment.class);
    } catch (UserError e) {
      throw new UserError(e.getMessage() + "; enrol the bench again from its photos (--anew)");
    }
  }

  /** The versions that were not taken back, oldest first. */
  List<Integer> versions() {
    return versions(VERSION);
  }

  /** The number of the next version: reports name versions, so none is given twice. */
  public int next() {
    return 1 + versions(EVER).stream().reduce(0, Math::max);
  }

  private List<Integer> versions(Pattern named) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> named.matcher(String.valueOf(file.getFileName())))
          .filter(Matcher::matches)
          .map(matcher -> Integer.parseInt(matcher.group(1)))
          .sorted(Comparator.naturalOrder())
          .toList();
    } catch (IOException | UncheckedIOException e) {
      throw new UserError(folder + " cannot be read; check its permissions");
    }
  }

  /** The version in use, if the bench was enrolled. */
  public Optional<Enrolment> latest() {
    return versions().stream().reduce((older, newer) -> newer).map(this::version);
  }

  /**
   * The version in use.
   *
   * @throws UserError if the bench was not enrolled
   */
  public Enrolment inUse() {
    return latest().orElseThrow(this::none);
  }

  private UserError none() {
    return new UserError(
        "no bench \"%s\" in %s; enrol it: leadlight enrol %s --sound PHOTO... --unsoldered PHOTO..."
            .formatted(bench, folder.toAbsolutePath().getParent(), bench));
  }

  /**
   * A version.
   *
   * @throws UserError if there is none, or if its file tells of another one
   */
  public Enrolment version(int version) {
    if (versions().isEmpty()) {
      throw none();
    }
    if (!versions().contains(version)) {
      throw new UserError(
          "bench %s has no version %d; there is %s"
              .formatted(
                  bench,
                  version,
                  versions().stream().map(String::valueOf).collect(Collectors.joining(", "))));
    }
    Enrolment enrolment = read(file(version));
    if (enrolment.version() != version || !enrolment.bench().equals(bench)) {
      throw new UserError(
          "%s tells of bench %s, version %d; put it where it belongs, or name it as a file: --bench FILE.json"
              .formatted(file(version), enrolment.bench(), enrolment.version()));
    }
    return enrolment;
  }

  /** Where a version lies. */
  Path file(int version) {
    return folder.resolve(version + ".json");
  }

  /** Writes a new version; its folder is made. */
  public Path write(Enrolment enrolment) {
    return written(file(enrolment.version()), enrolment);
  }

  private Path written(Path file, Enrolment enrolment) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UserError(folder + " cannot be made; choose another folder with --benches");
    }
    DataFile.write(file, enrolment);
    return file;
  }

  /** Keeps a version that is not adopted yet, in place of the last that was proposed. */
  public Path propose(Enrolment enrolment) {
    return written(folder.resolve(PROPOSED), enrolment);
  }

  /**
   * Puts the version into use that was proposed.
   *
   * @throws UserError if none was, or if it was made of a version that is not in use any more
   */
  public Path adopt() {
    Path proposed = folder.resolve(PROPOSED);
    if (!Files.exists(proposed)) {
      throw new UserError(
          "nothing is proposed for bench %s; leadlight enrol %s --from-record proposes a version"
              .formatted(bench, bench));
    }
    Enrolment enrolment = read(proposed);
    if (enrolment.version() != next() || !enrolment.bench().equals(bench)) {
      throw new UserError(
          "%s was made before the version now in use; propose anew: --from-record"
              .formatted(proposed));
    }
    Path file = file(enrolment.version());
    try {
      WholeFile.move(proposed, file);
    } catch (IOException e) {
      throw new UserError(proposed + " cannot be renamed; check its permissions");
    }
    return file;
  }

  /**
   * Takes the version in use back, whatever its file holds: it is kept under another name. What was
   * proposed on top of it goes.
   *
   * @throws UserError if there is none
   */
  public Path takeBack() {
    int version = versions().stream().reduce((older, newer) -> newer).orElseThrow(this::none);
    Path file = file(version);
    Path aside = file.resolveSibling(version + ".taken-back.json");
    try {
      Files.deleteIfExists(folder.resolve(PROPOSED));
      WholeFile.move(file, aside);
    } catch (IOException e) {
      throw new UserError(file + " cannot be renamed; check its permissions");
    }
    return aside;
  }
}
