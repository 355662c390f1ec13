package leadlight.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.drill.sitting.ResultWords;
import leadlight.drill.sitting.Telling;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.quality.Page;
import leadlight.quality.Page.Grid;
import leadlight.quality.Page.Text;

/** One page to hand over: what a person has shown, and that it certifies nothing. */
public final class ShownPage {

  private ShownPage() {}

  /** The page. */
  public static Page of(History history, String toolVersion) {
    List<Page.Block> blocks = new ArrayList<>();
    Optional<Figures> recent = history.recent();
    if (recent.isEmpty()) {
      blocks.add(text("No drill with truth has been answered yet."));
    } else {
      blocks.add(text(judged(history)));
      blocks.add(text(basis(history, recent.get())));
      blocks.add(figures(recent.get()));
      blocks.add(text(findings(history)));
    }
    blocks.add(new Text(ResultWords.CERTIFIES_NOTHING, true));
    blocks.add(text("Made by Leadlight " + toolVersion + " from the record of the workshop."));
    return new Page("What " + history.person() + " has shown", blocks);
  }

  private static String judged(History history) {
    List<History.Sat> sat = history.drills();
    String from = DrillPages.day(sat.get(0).sitting().startedAt());
    String to = DrillPages.day(sat.get(sat.size() - 1).sitting().startedAt());
    return "%s judged %d joints in photos, in %s, %s. Their truth was known, and told only after."
        .formatted(
            history.person(),
            history.answers().size(),
            sat.size() == 1 ? "1 sitting" : sat.size() + " sittings",
            from.equals(to) ? "on " + from : "from " + from + " to " + to);
  }

  private static String basis(History history, Figures figures) {
    int recent = history.recentSittings();
    return "The figures are those of %s, with %d joints that count."
        .formatted(recent == 1 ? "the last one" : "the last " + recent, figures.judged());
  }

  private static Grid figures(Figures f) {
    return new Grid(
        List.of("figure", "value, with its 95 % interval"),
        List.of(
            List.of("defects called sound", DrillPages.rate(f.missed())),
            List.of("sound joints called defects", DrillPages.rate(f.falseAlarm())),
            List.of("not judged", DrillPages.rate(f.notJudged())),
            List.of(
                "kappa against the truth",
                ResultWords.value(f.kappa()) + " (" + ResultWords.range(f.kappa()) + ")")));
  }

  private static String findings(History history) {
    List<String> kinds = history.findings().stream().map(f -> Telling.kind(f.finding())).toList();
    return "Defects shown: " + String.join(", ", kinds) + ".";
  }

  private static Text text(String words) {
    return new Text(words, false);
  }
}
