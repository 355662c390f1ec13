package leadlight.row;

import java.util.Optional;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.row.find.EndChoice;
import leadlight.row.find.RowFit;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;
import leadlight.row.tuning.AcceptanceTuning;

/** Whether a fitted row is good enough to be reported; if not, what is wrong and what to change. */
final class Acceptance {

  private final AcceptanceTuning tuning;
  private final int leads;

  Acceptance(AcceptanceTuning tuning, int leads) {
    this.tuning = tuning;
    this.leads = leads;
  }

  /** Why the row is not reported; empty if it is. */
  Optional<Note> refusal(RowFit fit, Lattice lattice) {
    Optional<Note> size = refusalOfPlace(fit, lattice).or(() -> refusalOfNumber(fit));
    if (size.isEmpty() && !looksLikeLeads(fit)) {
      return Optional.of(new NoteOfRow.NotLikeLeads(leads));
    }
    return size;
  }

  /** Why the row lies where it cannot be scored, if so. */
  Optional<Note> refusalOfPlace(RowFit fit, Lattice lattice) {
    if (fit.ends().cropped()) {
      return Optional.of(new NoteOfRow.RowCropped(leads));
    }
    if (Strip.pitchPx(fit.uvToPhoto(), lattice.span() / 2, 0) < tuning.leastPitchPx()) {
      return Optional.of(new NoteOfRow.TooSmall(tuning.leastPitchPx()));
    }
    return Optional.empty();
  }

  /** Why the row does not seem to be of the stated number of leads, if so. */
  Optional<Note> refusalOfNumber(RowFit fit) {
    EndChoice ends = fit.ends();
    if (ends.inside() >= tuning.leastInside()
        && ends.outside() > tuning.mostOutside()
        && !ends.runsOut()) {
      return Optional.of(new NoteOfRow.MoreLeads(leads));
    }
    if (ends.lastLead() < tuning.leastLastLead()) {
      return Optional.of(new NoteOfRow.FewerLeads(leads));
    }
    return Optional.empty();
  }

  private boolean looksLikeLeads(RowFit fit) {
    EndChoice ends = fit.ends();
    boolean contrast =
        ends.runsOut() || ends.inside() - 0.5 * ends.outside() >= tuning.leastContrast();
    return contrast
        && ends.inside() >= tuning.leastInside()
        && fit.zone().lock() >= tuning.leastLock();
  }
}
