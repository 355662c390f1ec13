package leadlight.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.cli.Run;

/** Pages of the played day, written by the commands that people type. */
final class DayPages {

  private final Path record;
  private final Path folder;
  private Optional<Path> day = Optional.empty();

  DayPages(Path record, Path folder) {
    this.record = record;
    this.folder = folder;
  }

  /** A board's life. */
  Path board(int job, String language) {
    return written("record", "board", BenchDay.JOBS.get(job), "--language", language).orElseThrow();
  }

  /** The customer's sheet, if there is one. */
  Optional<Path> sheet(int job, String language) {
    return written("sheet", BenchDay.JOBS.get(job), "--language", language);
  }

  /** The summary of the day, written once. */
  Path day() {
    day = day.or(() -> written("record", "day"));
    return day.orElseThrow();
  }

  /** The chart of defects by pin. */
  Path chart() {
    return written("chart", "--kind", "p", "--per", "pin").orElseThrow();
  }

  private Optional<Path> written(Object... command) {
    List<Object> words = new ArrayList<>(List.of(command));
    words.addAll(List.of("--record", record, "--out", folder));
    return Run.of(words.toArray())
        .out()
        .lines()
        .map(String::strip)
        .filter(line -> line.startsWith("wrote ") && line.endsWith(".html"))
        .map(line -> Path.of(line.substring("wrote ".length())))
        .findFirst();
  }
}
