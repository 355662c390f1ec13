package leadlight.enrol.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import leadlight.enrol.learn.Enrolment.Setting;

/** Whether photos were taken alike, in all respects together: one photo must be like another. */
public final class Alike {

  private final EnrolTuning tuning;

  public Alike(EnrolTuning tuning) {
    this.tuning = tuning;
  }

  private record Respect(String name, BiPredicate<Setting, Setting> same) {}

  private record Pair(Setting one, Setting other) {}

  /**
   * In which respect sound photos differ from unsoldered ones, if no two of them are alike: what
   * tells them apart may then be that and not the solder. Also "make" if the general opinions count
   * on some photos only: they would then tell photos apart.
   */
  public Optional<String> apart(List<Setting> sound, List<Setting> unsoldered) {
    List<Pair> pairs = pairs(sound, unsoldered);
    Optional<String> lacking =
        lacking(
            pairs,
            new Respect("scale", this::sameScale),
            new Respect("focus", this::sameFocus),
            new Respect("light", this::sameLight));
    boolean mixed = pairs.stream().anyMatch(it -> !sameMake(it.one(), it.other()));
    return lacking.or(() -> mixed ? Optional.of("make") : Optional.empty());
  }

  /** In which respect a photo is not as one of those shown, if it is as none. */
  public Optional<String> notAs(Setting photo, List<Setting> shown) {
    return lacking(
        pairs(List.of(photo), shown),
        new Respect("scale", this::sameScale),
        new Respect("focus", this::notSofter),
        new Respect("light", this::sameLight),
        new Respect("make", Alike::sameMake));
  }

  private static List<Pair> pairs(List<Setting> ones, List<Setting> others) {
    List<Pair> pairs = new ArrayList<>();
    ones.forEach(one -> others.forEach(other -> pairs.add(new Pair(one, other))));
    return pairs;
  }

  /** The first respect in which none is left that was alike in those before. */
  private static Optional<String> lacking(List<Pair> pairs, Respect... respects) {
    List<Pair> left = pairs;
    for (Respect respect : respects) {
      left = left.stream().filter(it -> respect.same().test(it.one(), it.other())).toList();
      if (left.isEmpty()) {
        return Optional.of(respect.name());
      }
    }
    return Optional.empty();
  }

  private boolean sameScale(Setting a, Setting b) {
    double ratio = Math.max(a.pitchPx(), b.pitchPx()) / Math.min(a.pitchPx(), b.pitchPx());
    return ratio <= tuning.scaleTo().value();
  }

  private boolean sameFocus(Setting a, Setting b) {
    return notSofter(a, b) && notSofter(b, a);
  }

  /** Of unknown sharpness nothing is alike. */
  private boolean notSofter(Setting photo, Setting shown) {
    return photo.blurPitch().isPresent()
        && shown.blurPitch().isPresent()
        && photo.blurPitch().get() <= shown.blurPitch().get() + tuning.blurTo().value();
  }

  private boolean sameLight(Setting a, Setting b) {
    double apart = Math.max(Math.abs(a.dark() - b.dark()), Math.abs(a.bright() - b.bright()));
    return apart <= tuning.lightTo().value();
  }

  private static boolean sameMake(Setting a, Setting b) {
    return a.general() == b.general();
  }
}
