package leadlight.grade.limits;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.data.Basis;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.model.FindingKind;
import leadlight.model.UserError;

/**
 * A set of workmanship limits by product class, read from {@code models/acceptance} or a user's own
 * file. Immutable.
 */
public final class AcceptanceSet {

  /** The set that is used unless another is asked for. */
  public static final String DEFAULT_ID = "ipc-a-610";

  private static final List<String> BUILT_IN = List.of(DEFAULT_ID, "nasa-8739-2");

  private final AcceptanceFile file;
  private final String fileSha256;
  private final Optional<GuardBand> chosen;
  private final Map<Feature, AcceptanceFile.LimitEntry> limits = new EnumMap<>(Feature.class);
  private final Map<FindingKind, AcceptanceFile.RuleEntry> rules = new EnumMap<>(FindingKind.class);

  private AcceptanceSet(AcceptanceFile file, String fileSha256, Optional<GuardBand> chosen) {
    this.file = file;
    this.fileSha256 = fileSha256;
    this.chosen = chosen;
    file.limits().forEach(entry -> limits.put(entry.feature(), entry));
    file.rules().forEach(entry -> rules.put(entry.finding(), entry));
  }

  /** Ids of the built-in sets, the default first. */
  public static List<String> builtInIds() {
    return BUILT_IN;
  }

  /**
   * A built-in set by id, or a user's own by the path of its file; {@code @99} behind either takes
   * the guard band at which a limit is kept, or passed, with 99 %.
   *
   * @throws UserError if there is no such set, the file does not fit, or the band is narrower than
   *     the limits' own
   */
  public static AcceptanceSet load(String idOrFile) {
    int at = idOrFile.endsWith(".json") ? -1 : idOrFile.lastIndexOf('@');
    return at < 0
        ? find(idOrFile)
        : find(idOrFile.substring(0, at)).at(GuardBand.ofPercent(idOrFile.substring(at + 1)));
  }

  /** Whoever chooses a band may leave more to the bench than the limits do, never less. */
  private AcceptanceSet at(GuardBand band) {
    if (band.level() < usualBand().level()) {
      throw new UserError(
          "a guard band may be surer than the limits' own %d %%, not %d %%"
              .formatted(Math.round(100 * usualBand().level()), Math.round(100 * band.level())));
    }
    return band.equals(usualBand()) ? this : new AcceptanceSet(file, fileSha256, Optional.of(band));
  }

  private static AcceptanceSet find(String idOrFile) {
    if (BUILT_IN.contains(idOrFile)) {
      return read(carried(idOrFile));
    }
    if (!idOrFile.endsWith(".json")) {
      throw new UserError(
          "no limits named \""
              + idOrFile
              + "\"; choose one of "
              + String.join(", ", BUILT_IN)
              + " or give the path of a .json file");
    }
    return read(DataFile.at(idOrFile));
  }

  private static DataFile carried(String id) {
    return DataFile.builtIn("acceptance/" + id + ".json");
  }

  private static AcceptanceSet read(DataFile file) {
    return new AcceptanceSet(file.read(AcceptanceFile.class), file.sha256(), Optional.empty());
  }

  /**
   * Tells whether two runs judged by the same limits: the hash of the file, or of that and the
   * guard band chosen.
   */
  public String sha256() {
    return chosen
        .map(band -> Hash.sha256((fileSha256 + suffix()).getBytes(StandardCharsets.UTF_8)))
        .orElse(fileSha256);
  }

  /** Name of the set in files and reports: {@link #load} takes that of a built-in one. */
  public String id() {
    return file.id() + suffix();
  }

  /** Name of the file's set, without the guard band chosen. */
  public String fileId() {
    return file.id();
  }

  /** Whether the file is one of Leadlight's own; a user's may bear the same id. */
  public boolean builtIn() {
    return BUILT_IN.contains(file.id()) && carried(file.id()).sha256().equals(fileSha256);
  }

  private String suffix() {
    return chosen.map(band -> "@" + Math.round(100 * band.level())).orElse("");
  }

  /** The guard band chosen in place of the file's own, if one was. */
  public Optional<GuardBand> chosenBand() {
    return chosen;
  }

  /** The file's own guard band. */
  public GuardBand usualBand() {
    return new GuardBand(file.decision().level());
  }

  /** Name of the set for people. */
  public String name() {
    return file.name();
  }

  /** What a reader of any verdict by this set must know. */
  public List<String> notes() {
    return file.notes();
  }

  /** Probability from which a limit counts as kept, or as passed, for {@link Conformance#zone}. */
  public double decisionLevel() {
    return chosen.orElseGet(this::usualBand).level();
  }

  /** Where the level of the file comes from. */
  Basis decisionBasis() {
    return file.decision().basis();
  }

  /**
   * The limit for one joint.
   *
   * @param productClass 1, 2 or 3
   * @return nothing if the set sets none for this class, or if it depends on a length of the joint
   *     that is not known
   */
  public Optional<Limit> limit(Feature feature, int productClass, JointGeometry joint) {
    AcceptanceFile.LimitEntry entry = limits.get(feature);
    LimitRule rule = entry == null ? null : entry.byClass().get(key(productClass));
    OptionalDouble value = rule == null ? OptionalDouble.empty() : rule.value(joint);
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(new Limit(value.getAsDouble(), feature.unit(), entry.bound(), entry.basis()));
  }

  /**
   * What a finding means once it is established.
   *
   * @param productClass 1, 2 or 3
   */
  public Rule rule(FindingKind finding, int productClass) {
    AcceptanceFile.RuleEntry entry = rules.get(finding);
    return new Rule(entry.byClass().get(key(productClass)), entry.basis(), entry.settleBy());
  }

  private static String key(int productClass) {
    if (productClass < 1 || productClass > 3) {
      throw new IllegalArgumentException("productClass must lie in [1, 3], is " + productClass);
    }
    return Integer.toString(productClass);
  }
}
