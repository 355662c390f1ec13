package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.PointPx;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.picture.RowView;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.page.look.Assets;
import leadlight.page.look.Plot;
import leadlight.page.look.StripView;
import leadlight.page.words.DataWords;
import leadlight.page.words.PageContext;
import leadlight.page.words.PhotoEnds;
import leadlight.page.words.SafeText;
import leadlight.page.words.Verdicts;
import leadlight.report.picture.LegPhotos;
import leadlight.report.strip.StripGeometry;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.vision.Frame;

/** From a scored photo to all that its page says. */
public final class PageMaker {

  private static final int STRIP_WIDTH_PX = 4800;

  private final PageContext context;
  private final Messages words;
  private final Sentences sentences;
  private final DataWords data;
  private final String css;
  private final String script;

  public PageMaker(PageContext context, String css, String script) {
    this.context = context;
    this.words = context.words();
    this.sentences = context.sentences();
    this.data = context.data();
    this.css = css;
    this.script = script;
  }

  public PageView view(ScoredPhoto scored, LegPhotos legs, Frame picture) {
    RowSpec row = scored.settings().row();
    Optional<StripGeometry> geometry =
        scored.row() instanceof RowOutcome.Found found
            ? Optional.of(new StripGeometry(found, row, scored.joints(), STRIP_WIDTH_PX))
            : Optional.empty();
    List<StripView> strips = geometry.map(g -> strips(g, scored, picture)).orElse(List.of());
    boolean reversed = geometry.map(StripGeometry::reversed).orElse(false);
    String style = css + places(strips);
    String file = SafeText.of(scored.photo().file());
    return new PageView(
        words,
        Assets.policy(style, script),
        style,
        script,
        words.get("page.title", file),
        file,
        legs.pictures().isEmpty()
            ? Verdicts.headline(scored, words)
            : Verdicts.headline(scored, legs.set(), words),
        scored.verdict().id(),
        Verdicts.counts(scored, legs.set(), words),
        facts(scored),
        strips,
        scored.view().map(view -> PagePictures.typical(view, reversed)),
        pins(scored, strips, geometry, reversed),
        legs.pictures().isEmpty()
            ? Optional.empty()
            : Optional.of(LegsView.of(legs, words, sentences)),
        geometry.map(
            g ->
                ReworkView.of(
                    Rework.of(scored.joints(), row, context.connector()),
                    legs.set(),
                    PhotoEnds.of((RowOutcome.Found) scored.row()),
                    words,
                    data)),
        geometry.isPresent() ? new SymptomLines(context).of(scored, legs.set()) : List.of(),
        PagePictures.whole(picture, geometry, scored.joints()),
        scored.row() instanceof RowOutcome.NotFound none
            ? Optional.of(sentences.of(none.reason()))
            : Optional.empty(),
        sentences.of(scored.rowNotes()),
        lists(scored),
        words.get(
            "page.made",
            context.toolVersion(),
            file,
            scored.photo().sha256(),
            context.limits().name(words),
            scored.settings().productClass()),
        reversed ? row.leads() : 1);
  }

  private List<PinView.Line> facts(ScoredPhoto scored) {
    RowSpec row = scored.settings().row();
    List<PinView.Line> facts = new ArrayList<>();
    String name =
        context.connector().map(c -> SafeText.of(data.name(c))).orElse(words.get("page.plain-row"));
    facts.add(new PinView.Line(words.get("page.connector"), name));
    facts.add(
        new PinView.Line(
            words.get("page.row"),
            words.get(
                "page.joints-at", row.leads(), words.lengthIn(row.pitchMm(), context.unit()))));
    facts.add(new PinView.Line(words.get("page.class"), "" + scored.settings().productClass()));
    facts.add(new PinView.Line(words.get("page.limits"), context.limits().name(words)));
    scored
        .photo()
        .takenAt()
        .ifPresent(at -> facts.add(new PinView.Line(words.get("page.taken"), SafeText.of(at))));
    return facts;
  }

  private static List<StripView> strips(StripGeometry geometry, ScoredPhoto scored, Frame picture) {
    List<StripView> strips = new ArrayList<>();
    for (int i = 0; i < geometry.strips().size(); i++) {
      strips.add(
          StripView.of(geometry, i, scored.joints(), scored.settings().row().pitchMm(), picture));
    }
    return strips;
  }

  /** Style rules that put each pin's column in its place: the policy allows no style attributes. */
  private static String places(List<StripView> strips) {
    StringBuilder rules = new StringBuilder();
    for (StripView strip : strips) {
      for (int i = 0; i < strip.pins().size(); i++) {
        rules
            .append("#tab-" + (strip.pins().get(i) + 1))
            .append("{left:" + percent(strip.leftPercent(i)))
            .append(";width:" + percent(strip.widthPercent(i)) + "}\n");
      }
      rules.append("#" + strip.id() + "-box{--pins:" + strip.pins().size() + "}\n");
    }
    return rules.toString();
  }

  private static String percent(double value) {
    return Math.round(value * 1000) / 1000.0 + "%";
  }

  private List<PinView> pins(
      ScoredPhoto scored,
      List<StripView> strips,
      Optional<StripGeometry> geometry,
      boolean reversed) {
    PinView.Maker maker = new PinView.Maker(context, data, scored.settings().row());
    Optional<PhotoEnds> ends =
        scored.row() instanceof RowOutcome.Found found
            ? Optional.of(PhotoEnds.of(found))
            : Optional.empty();
    List<PinView> pins = new ArrayList<>();
    for (int i = 0; i < scored.joints().size(); i++) {
      int index = i;
      Optional<PinView.CloseUp> closeUp =
          scored
              .view()
              .map(
                  view ->
                      closeUp(
                          view,
                          scored.joints().get(index),
                          strips,
                          geometry.orElseThrow(),
                          reversed));
      pins.add(maker.of(scored.joints().get(i), ends.orElseThrow(), closeUp));
    }
    return pins;
  }

  private PinView.CloseUp closeUp(
      RowView view,
      GradedJoint joint,
      List<StripView> strips,
      StripGeometry geometry,
      boolean reversed) {
    int index = joint.pin() - 1;
    StripView strip =
        strips.stream().filter(s -> s.pins().contains(index)).findFirst().orElseThrow();
    Plot plot = Plot.of(view, view.joints().get(index));
    Lead lead = joint.joint().lead();
    PointPx toe = geometry.toPhoto(strip.pins()).inverse().map(lead.toePx().x(), lead.toePx().y());
    double pxPerUnit = strip.pitchPx() / Plot.PITCH;
    double middle = geometry.acrossPx(strip.pins(), index);
    String viewBox =
        PagePictures.tenths(middle - strip.pitchPx())
            + " "
            + PagePictures.tenths(toe.y() + 0.5 + plot.topUnits() * pxPerUnit)
            + " "
            + PagePictures.tenths(2 * strip.pitchPx())
            + " "
            + PagePictures.tenths(plot.heightUnits() * pxPerUnit);
    String bandWords = bandWords(plot);
    return new PinView.CloseUp(
        strip.id(),
        viewBox,
        plot,
        words.get("page.profile.alt", joint.pin(), bandWords),
        bandWords,
        joint
            .joint()
            .byReader()
            .flatMap(Reading::moved)
            .map(part -> box(part, middle, toe.y() + 0.5, strip.pitchPx(), reversed)));
  }

  private static PinView.Box box(
      Region part, double middle, double toe, double pitchPx, boolean reversed) {
    double left = reversed ? -part.x1() : part.x0();
    return new PinView.Box(
        PagePictures.tenths(middle + left * pitchPx),
        PagePictures.tenths(toe + part.y0() * pitchPx),
        PagePictures.tenths((part.x1() - part.x0()) * pitchPx),
        PagePictures.tenths((part.y1() - part.y0()) * pitchPx));
  }

  private String bandWords(Plot plot) {
    List<Object> values = new ArrayList<>();
    plot.bands().forEach(band -> values.add(words.number(band.mean(), 2)));
    plot.bands().forEach(band -> values.add(words.number(band.typicalMean(), 2)));
    return words.get("page.band.words", values.toArray());
  }

  private List<PageView.TitledList> lists(ScoredPhoto scored) {
    List<PageView.TitledList> lists = new ArrayList<>();
    add(lists, "cautions", "page.cautions", sentences.of(scored.cautions()));
    add(lists, "not-visible", "page.not-visible", sentences.of(scored.notVisible()));
    add(lists, "fitness", "page.fitness", sentences.of(scored.fitness()));
    add(lists, "provenance", "page.provenance", context.limits().notes(words));
    return lists;
  }

  private void add(List<PageView.TitledList> lists, String id, String title, List<String> said) {
    if (!said.isEmpty()) {
      lists.add(
          new PageView.TitledList(id, words.get(title), said.stream().map(SafeText::of).toList()));
    }
  }
}
