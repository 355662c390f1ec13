package leadlight.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.drill.sitting.Telling;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.quality.Page;
import leadlight.quality.Page.Grid;
import leadlight.quality.Page.Text;
import leadlight.text.Messages;

/** One page to hand over: what a person has shown, and that it certifies nothing. */
public final class ShownPage {

  private final History history;
  private final Messages words;
  private final DrillWords said;

  private ShownPage(History history, Messages words) {
    this.history = history;
    this.words = words;
    this.said = new DrillWords(words);
  }

  /** The page. */
  public static Page of(History history, String toolVersion, Messages words) {
    return new ShownPage(history, words).page(toolVersion);
  }

  private Page page(String toolVersion) {
    List<Page.Block> blocks = new ArrayList<>();
    Optional<Figures> recent = history.recent();
    if (recent.isEmpty()) {
      blocks.add(text(words.get("drill.history.none")));
    } else {
      blocks.add(text(judged()));
      blocks.add(text(basis(recent.get())));
      blocks.add(figures(recent.get()));
      blocks.add(text(findings()));
    }
    blocks.add(new Text(words.get("drill.certifies-nothing"), true));
    blocks.add(text(get("made", toolVersion)));
    return new Page(get("title", history.person()), blocks);
  }

  private String get(String key, Object... values) {
    return words.get("drill.shown." + key, values);
  }

  private String judged() {
    List<History.Sat> sat = history.drills();
    String from = said.day(sat.get(0).sitting().startedAt());
    String to = said.day(sat.get(sat.size() - 1).sitting().startedAt());
    return get(
        "judged",
        history.person(),
        history.answers().size(),
        words.counted("drill.shown.sittings", sat.size()),
        from.equals(to) ? get("on", from) : get("from-to", from, to));
  }

  private String basis(Figures figures) {
    return words.counted("drill.shown.basis", history.recentSittings(), figures.judged());
  }

  private Grid figures(Figures f) {
    return new Grid(
        List.of(get("figure"), get("value")),
        List.of(
            List.of(get("defects-called-sound"), said.rate(f.missed())),
            List.of(get("sound-called-defects"), said.rate(f.falseAlarm())),
            List.of(get("not-judged"), said.rate(f.notJudged())),
            List.of(get("kappa"), said.kappa(f.kappa()))));
  }

  private String findings() {
    List<String> kinds =
        history.findings().stream().map(f -> Telling.kind(f.finding(), words)).toList();
    return get("defects", String.join(", ", kinds));
  }

  private static Text text(String words) {
    return new Text(words, false);
  }
}
