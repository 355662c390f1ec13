package leadlight.app.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.remark.Note;
import leadlight.model.result.Nudge.Moved;
import leadlight.motion.NudgeJudge;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/** The leads that are still to be pushed, in order; those that a photo tells of are ticked off. */
public final class PushList {

  private final List<Integer> left;

  public PushList(List<Integer> pins) {
    this.left = new ArrayList<>(pins);
  }

  public boolean done() {
    return left.isEmpty();
  }

  /** Ticks off the lead that a photo tells of; one line on what it says. */
  public String took(NudgeJudge.Read read, Messages words) {
    String photo = read.pushed().file() + ": ";
    Optional<Note> why = read.pushed().reason().or(() -> read.lead().flatMap(Moved::reason));
    if (read.lead().isEmpty()) {
      return photo + why.map(new Sentences(words, LengthUnit.MM)::of).orElse("");
    }
    Moved lead = read.lead().get();
    return switch (lead.motion()) {
      case MOVES -> ticked(photo, lead, "watch.nudge.moves", words);
      case FIRM -> ticked(photo, lead, "watch.nudge.firm", words);
      case CANNOT_TELL, NOT_TOUCHED ->
          photo
              + words.get("desk.nudge.unclear", lead.pin())
              + why.map(note -> " (" + new Sentences(words, LengthUnit.MM).of(note) + ")")
                  .orElse("");
    };
  }

  private String ticked(String photo, Moved lead, String said, Messages words) {
    left.remove((Integer) lead.pin());
    return photo
        + words.get(said, lead.pin(), um(lead.shiftUm().orElse(0)), um(lead.uUm().orElse(0)));
  }

  private static String um(double value) {
    return String.format(Locale.ROOT, "%.0f", Math.abs(value));
  }

  /** Which lead comes next, and which after it. */
  public String next(Messages words) {
    if (left.isEmpty()) {
      return words.get("watch.nudge.done");
    }
    String after = left.stream().skip(1).map(String::valueOf).collect(Collectors.joining(", "));
    return after.isEmpty()
        ? words.get("watch.nudge.last", left.get(0))
        : words.get("watch.nudge.next", left.get(0), after);
  }
}
