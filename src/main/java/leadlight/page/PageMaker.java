package leadlight.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.ColourPatch;
import leadlight.model.GradedJoint;
import leadlight.model.Lead;
import leadlight.model.LegSet;
import leadlight.model.PointPx;
import leadlight.model.Reading;
import leadlight.model.Region;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.model.RowView;
import leadlight.model.ScoredPhoto;
import leadlight.model.Verdict;
import leadlight.report.LegPhotos;
import leadlight.report.StripGeometry;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/** From a scored photo to all that its page says. */
final class PageMaker {

  private static final int STRIP_WIDTH_PX = 4800;
  private static final int WHOLE_PX = 1400;
  private static final int QUALITY = 85;

  private final PageContext context;
  private final Messages words;
  private final Sentences sentences;
  private final DataWords data;
  private final String css;
  private final String script;

  PageMaker(PageContext context, String css, String script) {
    this.context = context;
    this.words = context.words();
    this.sentences = context.sentences();
    this.data = context.data();
    this.css = css;
    this.script = script;
  }

  PageView view(ScoredPhoto scored, LegPhotos legs, Frame picture) {
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
        scored.view().map(view -> typical(view, reversed)),
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
        geometry.isPresent() ? symptoms(scored, legs.set()) : List.of(),
        whole(picture, geometry, scored.joints()),
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
        tenths(middle - strip.pitchPx())
            + " "
            + tenths(toe.y() + 0.5 + plot.topUnits() * pxPerUnit)
            + " "
            + tenths(2 * strip.pitchPx())
            + " "
            + tenths(plot.heightUnits() * pxPerUnit);
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
        tenths(middle + left * pitchPx),
        tenths(toe + part.y0() * pitchPx),
        tenths((part.x1() - part.x0()) * pitchPx),
        tenths((part.y1() - part.y0()) * pitchPx));
  }

  private String bandWords(Plot plot) {
    List<Object> values = new ArrayList<>();
    plot.bands().forEach(band -> values.add(words.number(band.mean(), 2)));
    plot.bands().forEach(band -> values.add(words.number(band.typicalMean(), 2)));
    return words.get("page.band.words", values.toArray());
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static PageView.Typical typical(RowView view, boolean mirrored) {
    ColourPatch patch = view.typical();
    double unitsPerPixel = Plot.PITCH / view.pixelsPerPitch();
    Plot plot = Plot.of(view, view.joints().get(0));
    return new PageView.Typical(
        Assets.dataUri("image/jpeg", jpeg(patch)),
        Plot.PITCH * view.xFromPitch() - unitsPerPixel / 2,
        Plot.PITCH * view.yFromPitch() - unitsPerPixel / 2,
        patch.width() * unitsPerPixel,
        patch.height() * unitsPerPixel,
        mirrored,
        plot.typical());
  }

  private static byte[] jpeg(ColourPatch patch) {
    byte[] rgb = new byte[3 * patch.width() * patch.height()];
    for (int i = 0; i < patch.red().data().length; i++) {
      rgb[3 * i] = (byte) Math.round(patch.red().data()[i]);
      rgb[3 * i + 1] = (byte) Math.round(patch.green().data()[i]);
      rgb[3 * i + 2] = (byte) Math.round(patch.blue().data()[i]);
    }
    // Enlarged here, since browsers smooth small pictures less well.
    int times = 3;
    try (Frame frame = Frame.ofRgb(patch.width(), patch.height(), rgb);
        Canvas canvas = new Canvas(times * patch.width(), times * patch.height(), 0)) {
      canvas.paste(frame, 0, 0, times * patch.width(), times * patch.height());
      return canvas.jpeg(QUALITY);
    }
  }

  private List<PageView.SymptomView> symptoms(ScoredPhoto scored, LegSet legs) {
    List<PageView.SymptomView> views = new ArrayList<>();
    if (context.connector().isEmpty()) {
      return views;
    }
    for (Symptoms.AtRow at :
        Symptoms.builtIn().at(context.connector().orElseThrow(), scored.settings().row())) {
      List<String> order = new ArrayList<>();
      List<Integer> all = new ArrayList<>();
      if (at.symptom().legsFirst()) {
        order.add(words.get("symptoms.legs-first"));
      }
      for (List<Integer> group : at.pins()) {
        String pins =
            words.get(group.size() == 1 ? "pins.one" : "pins.many", ReworkView.runs(group));
        order.add(words.get(order.isEmpty() ? "symptoms.first" : "symptoms.then", pins));
        all.addAll(group);
      }
      List<Integer> faulty =
          all.stream()
              .filter(pin -> scored.joints().get(pin - 1).verdict() == Verdict.DEFECT)
              .sorted()
              .toList();
      String found =
          faulty.isEmpty()
              ? words.get("symptoms.not-found")
              : words.get(
                  "symptoms.found",
                  words.get(
                      faulty.size() == 1 ? "pins.one" : "pins.many", ReworkView.runs(faulty)));
      if (at.symptom().legsFirst() && legs.count(Verdict.DEFECT) > 0) {
        found = words.get("symptoms.legs-found", legs.count(Verdict.DEFECT)) + " " + found;
      }
      views.add(
          new PageView.SymptomView(
              data.text(at.symptom()),
              all.stream().map(String::valueOf).reduce((a, b) -> a + " " + b).orElse(""),
              String.join(", ", order) + ".",
              found,
              words.get("symptoms.source", data.basis(at.symptom()))));
    }
    return views;
  }

  private static PageView.WholePhoto whole(
      Frame picture, Optional<StripGeometry> geometry, List<GradedJoint> joints) {
    double factor =
        Math.min(1, WHOLE_PX / (double) Math.max(picture.widthPx(), picture.heightPx()));
    StringBuilder frame = new StringBuilder();
    PointPx pin1 = new PointPx(0, 0);
    List<PointPx> corners = geometry.map(StripGeometry::corners).orElse(List.of());
    for (PointPx corner : corners) {
      frame.append(tenths(factor * (corner.x() + 0.5))).append(',');
      frame.append(tenths(factor * (corner.y() + 0.5))).append(' ');
    }
    if (!corners.isEmpty()) {
      PointPx a = corners.get(0);
      PointPx b = corners.get(3);
      pin1 = new PointPx(factor * (a.x() + b.x()) / 2, factor * (a.y() + b.y()) / 2);
    }
    try (Frame small = picture.shrunk(factor);
        Canvas canvas = new Canvas(small.widthPx(), small.heightPx(), 0)) {
      canvas.paste(small, 0, 0, small.widthPx(), small.heightPx());
      return new PageView.WholePhoto(
          Assets.dataUri("image/jpeg", canvas.jpeg(QUALITY)),
          small.widthPx(),
          small.heightPx(),
          frame.toString().strip(),
          tenths(pin1.x()),
          tenths(pin1.y()),
          PinSpot.of(joints, factor));
    }
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
