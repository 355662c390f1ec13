package leadlight.model.result;

import java.util.List;
import java.util.OptionalInt;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;

/**
 * The anchor legs of a connector beside its row: what each photo shows, and what follows for each.
 *
 * @param photos the photos of legs, in the order given
 * @param legs one a leg of the part, by number; legs that photos do not tell apart have none and
 *     stand in the order of their places
 */
public record LegSet(List<Shown> photos, List<Joined> legs) {

  /** Copies the lists. */
  public LegSet {
    photos = List.copyOf(photos);
    legs = List.copyOf(legs);
  }

  /**
   * A photo of legs.
   *
   * @param photo the file
   * @param side the side that it shows
   * @param legs what was found in it
   */
  public record Shown(PhotoInfo photo, BoardSide side, List<GradedLeg> legs) {

    /** Copies the list. */
    public Shown {
      legs = List.copyOf(legs);
    }
  }

  /**
   * What follows for one leg.
   *
   * @param number 1 to n; empty if photos do not tell which it is
   * @param verdict of all photos that show it
   * @param seen in which it was found
   * @param doubts why it is not judged; empty if it is
   */
  public record Joined(OptionalInt number, Verdict verdict, List<Seen> seen, List<Doubt> doubts) {

    /** Copies the lists. */
    public Joined {
      seen = List.copyOf(seen);
      doubts = List.copyOf(doubts);
    }
  }

  /**
   * A leg in one photo.
   *
   * @param file name of the photo
   * @param side the side that it shows
   * @param leg what was made of it
   */
  public record Seen(String file, BoardSide side, GradedLeg leg) {}

  /** The worst of the legs. */
  public Verdict verdict() {
    return legs.stream().map(Joined::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED);
  }

  /** How many legs have a verdict. */
  public int count(Verdict verdict) {
    return (int) legs.stream().filter(leg -> leg.verdict() == verdict).count();
  }
}
