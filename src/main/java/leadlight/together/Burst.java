package leadlight.together;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.model.Homography;
import leadlight.model.UserError;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Besides;
import leadlight.model.result.PhotoInfo;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.register.Overlay;
import leadlight.register.RegisterTuning;
import leadlight.register.Registrar;
import leadlight.vision.Frame;
import leadlight.vision.Stack;

/**
 * Frames of one row from a microscope that stands fixed, stacked over the sharpest: registered by
 * the row, noise averaged, the sharper frame counting more at each place.
 */
public final class Burst {

  private static final Homography STILL = new Homography(1, 0, 0, 0, 1, 0, 0, 0, 1);

  private final Tuning tuning = Tuning.builtIn();

  /**
   * A frame.
   *
   * @param info its file
   * @param picture stays open
   */
  public record Shot(PhotoInfo info, Frame picture) {}

  /**
   * The result.
   *
   * @param picture the stack, pixel for pixel the sharpest frame's; to be closed
   * @param alone what the sharpest frame shows by itself
   * @param scored what the stack shows, or the sharpest frame where the stack shows no row
   * @param besides the other frames
   */
  public record Result(Frame picture, ScoredPhoto alone, ScoredPhoto scored, Besides besides)
      implements AutoCloseable {
    @Override
    public void close() {
      picture.close();
    }
  }

  /** Refuses what is no burst by its number. */
  public void check(String what, int frames) {
    if (frames < tuning.leastFrames().value() || frames > tuning.mostFrames().value()) {
      throw new UserError(
          "%s holds %d photo%s; a burst is %.0f to %.0f frames of one row from a microscope that stands fixed"
              .formatted(
                  what,
                  frames,
                  frames == 1 ? "" : "s",
                  tuning.leastFrames().value(),
                  tuning.mostFrames().value()));
    }
  }

  /**
   * Stacks; the frames stay open.
   *
   * @param frames any order
   * @param scorer scores a picture as the photo that it is, or was stacked over
   * @throws UserError if a frame is given twice, the sharpest shows no row, or no other shows its
   *     view
   */
  public Result of(List<Shot> frames, BiFunction<PhotoInfo, Frame, ScoredPhoto> scorer) {
    SamePhoto.refuse(frames.stream().map(Shot::info).toList());
    List<Shot> sorted =
        frames.stream().sorted(Comparator.comparingDouble(shot -> -sharpness(shot))).toList();
    Shot first = sorted.get(0);
    ScoredPhoto alone = scorer.apply(first.info(), first.picture());
    if (!(alone.row() instanceof RowOutcome.Found row)) {
      throw new UserError(
          first.info().file()
              + ": no row was found in the sharpest frame; see leadlight score for why");
    }
    Registrar registrar =
        new Registrar(
            RegisterTuning.builtIn(), first.picture(), row, alone.settings().row().pitchMm());
    List<Stack.Layer> layers = new ArrayList<>(List.of(new Stack.Layer(first.picture(), STILL)));
    List<Besides.Other> others = new ArrayList<>();
    for (Shot frame : sorted.subList(1, sorted.size())) {
      others.add(laid(frame, registrar, row, layers));
    }
    if (layers.size() == 1) {
      throw new UserError(
          first.info().file()
              + ": no other frame shows the same view; take a burst without touching board, stand "
              + "or lamp, or join photos of one row with --same-row");
    }
    return stacked(alone, layers, others, row.pitchPx(), scorer);
  }

  /** Lays a frame over the first, as one layer more if it shows the same view. */
  private Besides.Other laid(
      Shot frame, Registrar registrar, RowOutcome.Found row, List<Stack.Layer> layers) {
    Overlay overlay = registrar.overlay(frame.picture());
    Homography map = overlay.toMoving(registrar.gridToPhoto());
    Optional<Note> refused = refused(overlay, map, row);
    if (refused.isEmpty()) {
      layers.add(new Stack.Layer(frame.picture(), map));
    }
    return new Besides.Other(
        frame.info().file(), frame.info().sha256(), Besides.Role.BURST, refused);
  }

  private double sharpness(Shot shot) {
    return Stack.sharpness(shot.picture(), tuning.quietPx().value());
  }

  private Result stacked(
      ScoredPhoto alone,
      List<Stack.Layer> layers,
      List<Besides.Other> others,
      double pitchPx,
      BiFunction<PhotoInfo, Frame, ScoredPhoto> scorer) {
    Stack.Settings settings =
        new Stack.Settings(
            tuning.quietPitch().value() * pitchPx,
            tuning.placePitch().value() * pitchPx,
            tuning.power().value(),
            tuning.floor().value());
    Frame stack = Stack.of(layers, settings);
    try {
      ScoredPhoto scored = scorer.apply(alone.photo(), stack);
      ScoredPhoto best = scored.row() instanceof RowOutcome.Found ? scored : alone;
      List<String> files = new ArrayList<>(List.of(best.photo().file()));
      others.stream().filter(o -> o.refused().isEmpty()).forEach(o -> files.add(o.file()));
      List<List<String>> seenIn = best.joints().stream().map(joint -> List.copyOf(files)).toList();
      return new Result(stack, alone, best, new Besides(others, seenIn, List.of()));
    } catch (RuntimeException | Error e) {
      stack.close();
      throw e;
    }
  }

  private Optional<Note> refused(Overlay overlay, Homography map, RowOutcome.Found row) {
    boolean alike =
        overlay.likeness() >= tuning.leastLikeness().value()
            && overlay.ownLikeness() >= tuning.leastOwn().value();
    double most = tuning.mostShiftPitch().value() * row.pitchPx();
    for (Lead lead : row.leads()) {
      alike &= map.map(lead.toePx().x(), lead.toePx().y()).distanceTo(lead.toePx()) <= most;
    }
    return alike
        ? Optional.empty()
        : Optional.of(
            new NoteOfPhoto.OtherView(
                Math.max(0, Math.min(overlay.likeness(), overlay.ownLikeness()))));
  }

  /**
   * How frames of a fixed microscope are stacked: {@code models/motion/burst.json}.
   *
   * @param leastFrames fewer are no burst
   * @param mostFrames more are not taken
   * @param leastLikeness from which two frames show one view
   * @param leastOwn the same of what is this row's own
   * @param mostShiftPitch how far the row may lie off in a frame
   * @param quietPx sigma by which noise of pixels is smoothed before the sharpest frame is chosen
   * @param quietPitch sigma by which noise is smoothed before sharpness is looked at
   * @param placePitch sigma of the surroundings whose sharpness counts for a place
   * @param power of the squared contrast that a frame's weight grows with
   * @param floor squared contrast that is no sign of sharpness, square grey levels
   */
  record Tuning(
      @JsonProperty(required = true) Figure leastFrames,
      @JsonProperty(required = true) Figure mostFrames,
      @JsonProperty(required = true) Figure leastLikeness,
      @JsonProperty(required = true) Figure leastOwn,
      @JsonProperty(required = true) Figure mostShiftPitch,
      @JsonProperty(required = true) Figure quietPx,
      @JsonProperty(required = true) Figure quietPitch,
      @JsonProperty(required = true) Figure placePitch,
      @JsonProperty(required = true) Figure power,
      @JsonProperty(required = true) Figure floor) {

    static Tuning builtIn() {
      return DataFile.builtIn("motion/burst.json").read(Tuning.class);
    }
  }
}
