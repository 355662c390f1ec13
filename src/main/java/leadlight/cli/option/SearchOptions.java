package leadlight.cli.option;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.record.scoring.Search;
import leadlight.text.Likeness;
import picocli.CommandLine.Option;

/** Which scorings of the record are meant. */
public final class SearchOptions {

  @Option(names = "--job", paramLabel = "NAME", description = "Of this job.")
  private String job;

  @Option(names = "--board", paramLabel = "NAME", description = "Of this board.")
  private String board;

  @Option(names = "--from", paramLabel = "YYYY-MM-DD", description = "Scored on this day or later.")
  private LocalDate from;

  @Option(names = "--to", paramLabel = "YYYY-MM-DD", description = "Scored on this day or before.")
  private LocalDate to;

  @Option(names = "--connector", paramLabel = "ID", description = "Of this connector.")
  private String connector;

  @Option(names = "--finding", paramLabel = "KIND", description = "With this finding.")
  private String finding;

  @Option(names = "--latest", description = "Leave out what a later scoring replaced.")
  private boolean latest;

  public Search search() {
    return new Search(
        Optional.ofNullable(job),
        Optional.ofNullable(board),
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        Optional.ofNullable(connector),
        Optional.ofNullable(finding).map(SearchOptions::kind),
        Optional.empty(),
        latest);
  }

  public static FindingKind kind(String name) {
    return Arrays.stream(FindingKind.values())
        .filter(kind -> kind.id().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new UserError(
                    "no finding is called "
                        + name
                        + Likeness.nearest(
                                name,
                                Arrays.stream(FindingKind.values()).map(FindingKind::id).toList())
                            .map(near -> "; did you mean " + near + "?")
                            .orElse("")
                        + "; there are "
                        + Arrays.stream(FindingKind.values())
                            .map(FindingKind::id)
                            .collect(Collectors.joining(", "))));
  }
}
