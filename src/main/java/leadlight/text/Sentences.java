package leadlight.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Finding;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.remark.Reason;
import leadlight.model.remark.Remark;

/**
 * Sentences of codes: the one place that makes them, in each language. A remark's words stand in
 * the message files under {@code doubt.CODE} or {@code note.CODE}, its arguments as {@code {name}}.
 * Words that depend on an argument stand under the same key with more behind it: {@code .pair} if a
 * neighbour is meant, {@code .WHY} of an argument {@code why}, {@code .NAME} or {@code .not-NAME}
 * for a truth value, {@code .alone} if an argument is not known, {@code .general} for several
 * joints at once, {@code .brief} for a list.
 */
public final class Sentences {

  /** Digits behind the decimal sign; a number that is not here is a share, said as percent. */
  private static final Map<String, Integer> DECIMALS =
      Map.ofEntries(
          Map.entry("pitch_px", 0),
          Map.entry("needed_px", 0),
          Map.entry("least_px", 0),
          Map.entry("blur_px", 1),
          Map.entry("blur_pitch", 3),
          Map.entry("times", 1),
          Map.entry("band_u", 2),
          Map.entry("shift_um", 0),
          Map.entry("u_um", 0),
          Map.entry("to_um", 0),
          Map.entry("square_pitches", 3),
          Map.entry("width_pitch", 2),
          Map.entry("brighter", 2),
          Map.entry("darker", 2),
          Map.entry("value_deg", 1),
          Map.entry("wetted_deg", 0),
          Map.entry("land_px", 0),
          Map.entry("u_deg", 1),
          Map.entry("limit_deg", 1));

  private static final int SIGNAL_DECIMALS = 2;

  private final Messages words;
  private final LengthUnit unit;

  /** Sentences in the words' language. */
  public Sentences(Messages words, LengthUnit unit) {
    this.words = words;
    this.unit = unit;
  }

  /** English, in millimetres: for files and for the terminal. */
  public static Sentences english() {
    return new Sentences(Messages.of("en"), LengthUnit.MM);
  }

  /** The words that these sentences are made of. */
  Messages words() {
    return words;
  }

  /** A remark as a sentence. */
  public String of(Remark remark) {
    return words.named(key(remark), said(remark));
  }

  /** Remarks as sentences. */
  public List<String> of(List<? extends Remark> remarks) {
    return remarks.stream().map(this::of).toList();
  }

  /** Remarks in one line. */
  public String joined(List<? extends Remark> remarks) {
    return String.join("; ", of(remarks));
  }

  /** The same for several joints: without the numbers of one. */
  public String general(Remark remark) {
    String key = base(remark) + ".general";
    return words.has(key) ? words.named(key, said(remark)) : of(remark);
  }

  /** What a verdict rests on, in a few words: "seen: lead, fillet at the toe". */
  public String seen(List<Note> grounds) {
    return words.get(
        "grounds.seen",
        grounds.stream()
            .map(ground -> words.named(base(ground) + ".brief", said(ground)))
            .collect(Collectors.joining(", ")));
  }

  /** How a finding of a kind is settled at the bench. */
  String settle(FindingKind kind) {
    return words.get("settle." + kind.id());
  }

  /**
   * How a finding is settled: left alone if it is no defect, else by the user's own limits file, or
   * else as any of its kind.
   */
  public String settle(Finding finding) {
    if (finding.verdict() != Verdict.DEFECT && finding.verdict() != Verdict.UNJUDGED) {
      return words.get("settle.leave");
    }
    return finding.settleBy().isEmpty() ? settle(finding.kind()) : finding.settleBy();
  }

  /** What speaks for a finding, with its numbers; empty if it was not kept. */
  public String evidence(Finding finding) {
    return evidence(finding.measured(), finding.reasons());
  }

  /** The same of evidence that is not graded yet. */
  public String evidence(Evidence evidence) {
    return evidence(evidence.measured(), evidence.reasons());
  }

  private String evidence(Optional<Note> measured, List<Reason> reasons) {
    return measured
        .map(this::of)
        .orElseGet(
            () ->
                Messages.speaking(reasons).stream()
                    .map(
                        reason ->
                            words.get(
                                "evidence.signal",
                                words.plain(reason),
                                words.number(reason.value(), SIGNAL_DECIMALS),
                                words.number(reason.usual(), SIGNAL_DECIMALS)))
                    .collect(Collectors.joining("; ")));
  }

  /** What in the photo speaks for a finding, in plain words, or else what was measured. */
  public List<String> because(Finding finding) {
    List<String> plain = words.plain(finding.reasons());
    return plain.isEmpty() ? finding.measured().stream().map(this::of).toList() : plain;
  }

  /**
   * The findings that are spoken of: states that exclude each other are one, named by the
   * likeliest, which comes first.
   */
  public static List<Finding> spoken(List<Finding> findings) {
    List<Finding> spoken = new ArrayList<>();
    boolean shared = false;
    for (Finding finding : findings) {
      if (finding.share().isEmpty() || !shared) {
        spoken.add(finding);
      }
      shared |= finding.share().isPresent();
    }
    return spoken;
  }

  /**
   * How sure a finding is: "bridge 5-6, 97 % sure"; "no fillet, 99 % sure; rather open".
   *
   * @param name the finding's, as the reader knows it
   */
  public String sure(Finding finding, String name) {
    String percent = words.percent(finding.probability());
    return finding.share().isPresent()
        ? words.get("finding.no-fillet", percent, name)
        : words.get("finding.sure", name, percent);
  }

  private static String base(Remark remark) {
    String key = (remark instanceof Doubt ? "doubt." : "note.") + remark.code();
    if (remark.args().get("why") instanceof String why) {
      return key + "." + why;
    }
    return remark instanceof NoteOfPhoto.Advice advice ? key + "." + advice.id() : key;
  }

  private String key(Remark remark) {
    String key = base(remark);
    Map<String, Object> args = remark.args();
    if (args.get("neighbour_pin") instanceof Integer pin && pin > 0) {
      key = longer(key, "pair");
    }
    key = longer(key, truths(args));
    boolean known = args.size() == remark.getClass().getRecordComponents().length;
    return known ? key : longer(key, "alone");
  }

  private static String truths(Map<String, Object> args) {
    return args.entrySet().stream()
        .filter(arg -> arg.getValue() instanceof Boolean)
        .map(arg -> (arg.getValue().equals(true) ? "" : "not-") + arg.getKey())
        .collect(Collectors.joining("."));
  }

  private String longer(String key, String more) {
    return words.has(key + "." + more) ? key + "." + more : key;
  }

  /** The arguments in words, and what follows from them. */
  private Map<String, String> said(Remark remark) {
    Map<String, String> said = new LinkedHashMap<>();
    remark.args().forEach((name, value) -> said.put(name, said(name, value)));
    if (remark.args().get("kind") instanceof String kind) {
      said.put("kind", words.get("kind." + kind));
      said.put("settle", words.get("settle." + kind));
    }
    if (remark instanceof NoteOfPhoto.Advice advice) {
      said.put("last_pair", (advice.leads() - 1) + "-" + advice.leads());
    }
    return said;
  }

  private String said(String name, Object value) {
    if (!(value instanceof Double number)) {
      return String.valueOf(value);
    }
    if (name.endsWith("_mm")) {
      return words.lengthIn(number, unit);
    }
    Integer decimals = DECIMALS.get(name);
    if (decimals == null) {
      // A promise is rounded up: it is never said better than it is.
      return words.percent(name.equals("up_to") ? (Math.ceil(100 * number) + 0.5) / 100 : number);
    }
    // What is needed is rounded up: a little less would not do.
    return words.number(name.equals("needed_px") ? Math.ceil(number) : number, decimals);
  }
}
