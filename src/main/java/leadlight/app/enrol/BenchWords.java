package leadlight.app.enrol;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import leadlight.enrol.Bench;
import leadlight.enrol.Enroller;
import leadlight.enrol.LeftOut;
import leadlight.enrol.OddOnes;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Proof;

/** What is said of an enrolment in the terminal. */
public final class BenchWords {

  private BenchWords() {}

  /** What a bench was shown, what that proves, and what is missing. */
  public static List<String> of(Enrolment enrolment) {
    Bench bench = new Bench(enrolment);
    Proof proof = bench.proof();
    List<String> lines = new ArrayList<>();
    lines.add("bench " + bench.words());
    for (int i = 0; i < enrolment.photos().size(); i++) {
      int photo = i;
      Enrolment.Photo it = enrolment.photos().get(i);
      long joints = enrolment.joints().stream().filter(j -> j.photo() == photo).count();
      lines.add(
          "  %s  %s: %d joints, %s"
              .formatted(
                  it.sha256().substring(0, 12),
                  it.file(),
                  joints,
                  it.kind().name().toLowerCase(Locale.ROOT)));
    }
    lines.addAll(bench.vouches() ? proven(enrolment, proof) : missing(bench));
    if (bench.vouches() && enrolment.photos().stream().anyMatch(it -> !it.setting().general())) {
      lines.add(
          "On this make of photo the bench calls what is not soldered, and makes nothing good: it was"
              + " shown no joints with too little solder, and nothing else tells them here.");
    }
    odd(OddOnes.of(enrolment), lines);
    lines.add(
        Enroller.checkable(enrolment)
            ? "That sound and unsoldered were not swapped was checked by the general opinions."
            : "That sound is sound and unsoldered unsoldered is taken on your word: nothing in"
                + " Leadlight can check it on such photos.");
    return lines;
  }

  private static void odd(List<OddOnes.Odd> odd, List<String> lines) {
    Map<String, List<OddOnes.Odd>> photos = new LinkedHashMap<>();
    odd.forEach(it -> photos.computeIfAbsent(it.file(), key -> new ArrayList<>()).add(it));
    photos.forEach(
        (file, of) ->
            lines.add(
                "look again at %s: shown as %s, to all other photos %s like the other kind; pin %s; was it named right, and does leadlight score find its row right?"
                    .formatted(
                        file,
                        of.get(0).soldered() ? "sound" : "unsoldered",
                        of.size() == 1 ? "one joint looks" : of.size() + " joints look",
                        of.stream().map(it -> "" + it.pin()).collect(Collectors.joining(", ")))));
  }

  private static List<String> proven(Enrolment enrolment, Proof proof) {
    return List.of(
        "the border lies below all %d unsoldered joints of %d photos shown: up to %s of such joints may pass, with 95 %% confidence"
            .formatted(proof.unsoldered(), proof.unsolderedPhotos(), percent(proof.upTo())),
        "  (as far as joints of one photo are independent; counted by photos, up to %s)"
            .formatted(percent(proof.upToByPhotos())),
        "the other border lies above all %d sound joints of %d photos shown"
            .formatted(proof.sound(), proof.soundPhotos()),
        leftOut(LeftOut.of(enrolment)));
  }

  private static String leftOut(LeftOut count) {
    return count.unsoldered() + count.sound() == 0
        ? "how many of them pass where their own photo is left out: counted from three photos of a"
            + " kind on"
        : "each photo left out and judged by the others: %d of %d unsoldered joints look soldered, %d of %d sound ones unsoldered"
            .formatted(count.passed(), count.unsoldered(), count.called(), count.sound());
  }

  private static List<String> missing(Bench bench) {
    Proof proof = bench.proof();
    List<String> lines = new ArrayList<>();
    lines.add("Not enough was shown yet; until then the general rules stay. Still missing:");
    add(lines, proof.unsolderedPhotosMissing(), "photo(s) of unsoldered rows, taken anew");
    add(lines, proof.unsolderedMissing(), "more unsoldered joints, in the light you work in");
    add(lines, proof.soundPhotosMissing(), "photo(s) of sound rows, taken anew");
    add(lines, proof.soundMissing(), "more sound joints, in the light you work in");
    boolean both = proof.sound() > 0 && proof.unsoldered() > 0;
    bench.apart().filter(why -> both).ifPresent(why -> lines.add(apart(why)));
    return lines;
  }

  private static String apart(String why) {
    return why.equals("make")
        ? "  photos of one make: the general opinions count on some of these and not on others;"
            + " begin again with --anew, and enrol each make as a bench of its own"
        : "  photos of both kinds taken alike: sound and unsoldered differ in "
            + why
            + ", and nobody could tell that from solder; begin again with --anew";
  }

  private static void add(List<String> lines, int count, String what) {
    if (count > 0) {
      lines.add("  " + count + " " + what);
    }
  }

  /** Rounded up: a promise is never said better than it is. */
  private static String percent(double share) {
    return (int) Math.ceil(100 * share) + " %";
  }

  /** What changed from one version to another. */
  public static List<String> compared(Enrolment before, Enrolment now) {
    List<String> lines = new ArrayList<>();
    lines.add("bench %s: version %d to %d".formatted(now.bench(), before.version(), now.version()));
    List<String> then = before.photos().stream().map(Enrolment.Photo::sha256).toList();
    List<String> since = now.photos().stream().map(Enrolment.Photo::sha256).toList();
    now.photos().stream()
        .filter(it -> !then.contains(it.sha256()))
        .forEach(it -> lines.add("  added: " + it.file()));
    before.photos().stream()
        .filter(it -> !since.contains(it.sha256()))
        .forEach(it -> lines.add("  gone: " + it.file()));
    Proof was = new Bench(before).proof();
    Proof is = new Bench(now).proof();
    lines.add(
        "  unsoldered joints shown: %d, now %d; sound: %d, now %d"
            .formatted(was.unsoldered(), is.unsoldered(), was.sound(), is.sound()));
    lines.add("  vouches: " + yes(new Bench(before)) + ", now " + yes(new Bench(now)));
    return lines;
  }

  private static String yes(Bench bench) {
    return bench.vouches() ? "to " + percent(bench.proof().upTo()) : "not yet";
  }
}
