package leadlight.drill.set;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;
import leadlight.data.Hash;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.pool.PoolRow;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.FindingKind;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.text.Messages;

/** Makes the specimens of what was drawn: pictures, truth, and the tool's opinion. */
public final class SetMaker {

  private final SetRequest request;
  private final AcceptanceSet limits;
  private final Map<Path, List<ToolSaid>> asked = new HashMap<>();
  private final Map<String, byte[]> pictures = new LinkedHashMap<>();
  private final List<Specimen> specimens = new ArrayList<>();

  private SetMaker(SetRequest request, AcceptanceSet limits) {
    this.request = request;
    this.limits = limits;
  }

  /**
   * Draws and makes a set.
   *
   * @param pool what to draw from
   * @param draw how
   * @param request what the set is to be like
   * @param limits by which the tool judges
   * @param progress hears how many specimens are done
   * @throws leadlight.model.UserError if the pool has too little, or a photo cannot be read
   */
  public static MadeSet make(
      List<PoolJoint> pool,
      SetDraw draw,
      SetRequest request,
      AcceptanceSet limits,
      IntConsumer progress) {
    SetMaker maker = new SetMaker(request, limits);
    if (request.rows()) {
      for (PoolRow row : draw.rows(pool)) {
        maker.add(row, pool.stream().filter(j -> j.row().equals(row)).toList());
        progress.accept(maker.specimens.size());
      }
    } else {
      for (PoolJoint joint : draw.joints(pool)) {
        maker.add(joint.row(), List.of(joint));
        progress.accept(maker.specimens.size());
      }
    }
    PracticeSet set =
        new PracticeSet(
            PracticeSet.FORMAT,
            request.name(),
            maker.about(),
            request.seed(),
            request.productClass(),
            maker.specimens);
    return new MadeSet(set, maker.pictures);
  }

  private String about() {
    Messages words = request.words();
    List<String> parts = new ArrayList<>();
    parts.add(words.get(request.rows() ? "drill.set.rows" : "drill.set.joints"));
    parts.add(words.get("drill.set." + request.level().name().toLowerCase(Locale.ROOT)));
    parts.add(words.get("drill.set.class", request.productClass()));
    request.findings().stream().sorted().map(FindingKind::id).forEach(parts::add);
    request.lamps().stream()
        .sorted()
        .map(lamp -> words.get("drill.set.lamp", lamp))
        .forEach(parts::add);
    return String.join(", ", parts);
  }

  private void add(PoolRow row, List<PoolJoint> joints) {
    specimens.add(new Deadline().reading(row.photo(), photo -> specimen(row, joints, photo)));
  }

  private Specimen specimen(PoolRow row, List<PoolJoint> joints, Photo photo) {
    List<ToolSaid> tool = asked.computeIfAbsent(row.photo(), r -> tool(row, photo));
    Window window =
        request.rows()
            ? Window.row(row.place(), row.pitchMm())
            : Window.joint(row.place(), row.pitchMm(), joints.get(0).pin());
    Spots maker = new Spots(row.file(), row.pitchMm(), row.place(), window);
    List<Spot> spots = new ArrayList<>();
    for (PoolJoint joint : joints) {
      Optional<ToolSaid> said =
          tool.isEmpty() ? Optional.empty() : Optional.of(tool.get(joint.pin() - 1));
      spots.add(maker.of(joint.pin(), Optional.of(joint.known()), said));
    }
    String name = MadeSet.pictureName(specimens.size() + 1);
    byte[] jpeg = window.jpeg(photo.frame());
    pictures.put(name, jpeg);
    return specimen(name, jpeg, window, spots);
  }

  public static Specimen specimen(String name, byte[] jpeg, Window window, List<Spot> spots) {
    List<Spot> leftFirst = new ArrayList<>(spots);
    leftFirst.sort(Comparator.comparingDouble(Spot::xPx));
    return new Specimen(name, Hash.sha256(jpeg), window.widthPx(), window.heightPx(), leftFirst);
  }

  /** What the tool says of a row, as it would say it of any photo; empty if it finds none. */
  private List<ToolSaid> tool(PoolRow row, Photo photo) {
    if (!row.toldBefore().isEmpty()) {
      return row.toldBefore();
    }
    int leads = row.place().leads().size();
    RowSpec spec =
        RowSpec.plain(leads, row.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    Settings settings = new Settings(spec, request.productClass(), limits.id(), Optional.empty());
    String known = limits.builtIn() ? limits.fileId() : "";
    return new PhotoScorer(settings, limits)
        .score(photo).joints().stream()
            .map(joint -> ToolSaid.of(joint, known, request.words()))
            .toList();
  }
}
