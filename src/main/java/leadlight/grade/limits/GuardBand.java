package leadlight.grade.limits;

import java.util.List;
import leadlight.model.UserError;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.LimitCheck;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How far inside its limit a value must lie to keep it, and how far beyond to pass it (JCGM
 * 106:2012, 8.3): guarded acceptance and guarded rejection with the same band.
 *
 * @param level probability from which a limit counts as kept, or as passed
 */
public record GuardBand(double level) {

  /** Where the note says what a joint within its limit meets, in standard uncertainties inside. */
  private static final double INSIDE_U = 3;

  private static final int LEAST_PERCENT = 51;
  private static final int MOST_PERCENT = 99;

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  /**
   * The band of a level in percent.
   *
   * @throws UserError if it is not a whole number from 51 to 99
   */
  static GuardBand ofPercent(String percent) {
    int number = number(percent);
    if (number < LEAST_PERCENT || number > MOST_PERCENT) {
      throw new UserError(
          "a guard band is 51 to 99 % sure, as 95, 98 or 99, not \"" + percent + "\"");
    }
    return new GuardBand(number / 100.0);
  }

  /** 0 if it is none, or not written as one is here. */
  private static int number(String percent) {
    try {
      int number = Integer.parseInt(percent);
      return percent.equals(Integer.toString(number)) ? number : 0;
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  /** The band, standard uncertainties. */
  double bandU() {
    return NORMAL.inverseCumulativeProbability(level);
  }

  /**
   * The chance that a joint is accepted whose true value lies so far inside its limit.
   *
   * @param insideU in standard uncertainties; 0 at the limit, below 0 beyond it
   */
  double accepts(double insideU) {
    return NORMAL.cumulativeProbability(insideU - bandU());
  }

  /** What the choice of this band means, and what it changes in a row. */
  public Note note(List<GradedJoint> row, GuardBand usual) {
    return new NoteOfRow.GuardBand(
        level,
        bandU(),
        accepts(0),
        1 - accepts(INSIDE_U),
        undecided(row),
        usual.level,
        usual.undecided(row));
  }

  private int undecided(List<GradedJoint> row) {
    return (int)
        row.stream()
            .flatMap(joint -> joint.checks().stream())
            .mapToDouble(LimitCheck::kept)
            .filter(kept -> Conformance.zone(kept, level) == Conformance.Zone.NEITHER)
            .count();
  }
}
