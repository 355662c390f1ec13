package leadlight.row;

import java.util.Optional;

/** Whether a fitted row is good enough to be reported; if not, what is wrong and what to change. */
final class Acceptance {

  private final AcceptanceTuning tuning;
  private final int leads;

  Acceptance(AcceptanceTuning tuning, int leads) {
    this.tuning = tuning;
    this.leads = leads;
  }

  /** Why the row is not reported; empty if it is. */
  Optional<String> refusal(RowFit fit, Lattice lattice) {
    Optional<String> size = refusalOfPlace(fit, lattice).or(() -> refusalOfNumber(fit));
    if (size.isEmpty() && !looksLikeLeads(fit)) {
      return Optional.of(
          ("nothing looks enough like a row of %d leads; check the number of leads, and that the"
                  + " whole row is sharp and in the picture")
              .formatted(leads));
    }
    return size;
  }

  /** Why the row lies where it cannot be scored, if so. */
  Optional<String> refusalOfPlace(RowFit fit, Lattice lattice) {
    if (fit.ends().cropped()) {
      return Optional.of(
          "the row of %d leads runs out of the picture; take the photo with the whole row in it"
              .formatted(leads));
    }
    if (Strip.pitchPx(fit.uvToPhoto(), lattice.span() / 2, 0) < tuning.leastPitchPx()) {
      return Optional.of(
          "the leads are less than 10 pixels apart; go closer or use a higher resolution");
    }
    return Optional.empty();
  }

  /** Why the row does not seem to be of the stated number of leads, if so. */
  Optional<String> refusalOfNumber(RowFit fit) {
    EndChoice ends = fit.ends();
    if (ends.inside() >= tuning.leastInside()
        && ends.outside() > tuning.mostOutside()
        && !ends.runsOut()) {
      return Optional.of(
          "a row shows, but it goes on beyond %d leads; check the number of leads"
              .formatted(leads));
    }
    if (ends.lastLead() < tuning.leastLastLead()) {
      return Optional.of(
          ("a row shows, but of fewer than %d leads; check the number of leads, and that no end of"
                  + " the row is covered or cut off")
              .formatted(leads));
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
