package leadlight.together;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.Grader;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.vision.Frame;

/**
 * The photo taken before soldering joined into the report of the one after. A joint that is as it
 * was set down is open, whatever it looks like. A joint that changed is not thereby sound: solder
 * came, and whether it wets, the photo after must show.
 */
public final class PlacedJoin {

  private final Placed placed = new Placed();
  private final AcceptanceSet limits;

  /** Takes the limits to judge by. */
  public PlacedJoin(AcceptanceSet limits) {
    this.limits = limits;
  }

  /** The report of the photo after, with the one before in view; frames stay open. */
  public JoinedRow.Result of(JoinedRow.View after, JoinedRow.View before) {
    Optional<Placed.Compared> compared = compared(after, before);
    Optional<Note> refused =
        compared.isEmpty() ? Optional.of(noRow(after, before)) : compared.flatMap(this::refused);
    List<Besides.Change> changes = new ArrayList<>();
    List<GradedJoint> joints = new ArrayList<>();
    Rule open = limits.rule(FindingKind.OPEN, after.scored().settings().productClass());
    for (GradedJoint joint : after.scored().joints()) {
      Besides.Change change =
          compared
              .filter(c -> refused.isEmpty())
              .map(c -> change(placed.soldered(c.signals().get(joint.pin() - 1))))
              .orElseGet(() -> new Besides.Change(OptionalDouble.empty(), refused));
      boolean unchanged =
          change.soldered().isPresent() && placed.unchanged(change.soldered().getAsDouble());
      changes.add(change);
      joints.add(unchanged ? unchanged(joint, change.soldered().getAsDouble(), open) : joint);
    }
    Besides.Other other =
        new Besides.Other(
            before.scored().photo().file(),
            before.scored().photo().sha256(),
            Besides.Role.PLACED,
            refused);
    return new JoinedRow.Result(
        with(after.scored(), joints), new Besides(List.of(other), List.of(), changes));
  }

  private Besides.Change change(OptionalDouble known) {
    if (known.isEmpty()) {
      return new Besides.Change(known, Optional.of(new NoteOfPhoto.ChangeNotSeen()));
    }
    double soldered = known.getAsDouble();
    boolean clear = placed.unchanged(soldered) || placed.changed(soldered);
    return new Besides.Change(
        known, clear ? Optional.empty() : Optional.of(new NoteOfPhoto.ChangeUnclear(soldered)));
  }

  private Optional<Placed.Compared> compared(JoinedRow.View after, JoinedRow.View before) {
    return after.scored().row() instanceof RowOutcome.Found afterRow
            && before.scored().row() instanceof RowOutcome.Found beforeRow
        ? Optional.of(
            compare(after.picture(), afterRow, before.picture(), beforeRow, after.scored()))
        : Optional.empty();
  }

  private Placed.Compared compare(
      Frame after,
      RowOutcome.Found afterRow,
      Frame before,
      RowOutcome.Found beforeRow,
      ScoredPhoto scored) {
    return placed.compare(after, afterRow, before, beforeRow, scored.settings().row());
  }

  private static Note noRow(JoinedRow.View after, JoinedRow.View before) {
    return after.scored().row() instanceof RowOutcome.NotFound none
        ? none.reason()
        : ((RowOutcome.NotFound) before.scored().row()).reason();
  }

  private Optional<Note> refused(Placed.Compared compared) {
    if (!compared.oneRow()) {
      return Optional.of(new NoteOfPhoto.OtherRow(Math.max(0, compared.likeness())));
    }
    return placed.otherLight(compared)
        ? Optional.of(new NoteOfPhoto.OtherLight())
        : Optional.empty();
  }

  /** A missing lead stays what it is: nothing was set down there. */
  private static GradedJoint unchanged(GradedJoint joint, double soldered, Rule open) {
    if (joint.findings().stream().anyMatch(f -> f.kind() == FindingKind.MISSING_LEAD)) {
      return joint;
    }
    return OpenByJoin.of(joint, 1 - soldered, new NoteOfPhoto.Unchanged(soldered), open);
  }

  private ScoredPhoto with(ScoredPhoto was, List<GradedJoint> joints) {
    return new ScoredPhoto(
        was.photo(),
        was.settings(),
        was.row(),
        was.view(),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        new Grader(limits, was.settings().productClass(), was.settings().opinions())
            .notes(was.rowNotes(), joints),
        was.fitness(),
        was.notVisible(),
        was.cautions());
  }
}
