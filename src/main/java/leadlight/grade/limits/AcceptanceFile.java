package leadlight.grade.limits;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.data.Basis;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;

/**
 * A limits file as it stands on disk; {@code models/schema/acceptance.schema.json} describes it.
 *
 * @param schema always {@value #SCHEMA}
 * @param id name of the set
 * @param name for people
 * @param notes what a reader of any verdict by this set must know
 * @param decision how sure a verdict against a limit has to be
 * @param limits limits in numbers
 * @param rules what each finding means
 */
record AcceptanceFile(
    @JsonProperty(required = true) String schema,
    @JsonProperty(required = true) String id,
    @JsonProperty(required = true) String name,
    List<String> notes,
    @JsonProperty(required = true) Decision decision,
    @JsonProperty(required = true) List<LimitEntry> limits,
    @JsonProperty(required = true) List<RuleEntry> rules) {

  static final String SCHEMA = "leadlight/acceptance/1";

  private static final Set<String> CLASSES = Set.of("1", "2", "3");

  AcceptanceFile {
    if (!SCHEMA.equals(schema)) {
      throw new IllegalArgumentException(
          "schema must be \"" + SCHEMA + "\", is \"" + schema + "\"");
    }
    notes = notes == null ? List.of() : List.copyOf(notes);
    limits = List.copyOf(limits);
    rules = List.copyOf(rules);
    refuseRepeats(limits);
    requireEveryFinding(rules);
  }

  private static void refuseRepeats(List<LimitEntry> limits) {
    Set<Feature> seen = EnumSet.noneOf(Feature.class);
    for (LimitEntry entry : limits) {
      if (!seen.add(entry.feature())) {
        throw new IllegalArgumentException("limits has " + entry.feature() + " twice");
      }
    }
  }

  private static void requireEveryFinding(List<RuleEntry> rules) {
    Set<FindingKind> missing = EnumSet.allOf(FindingKind.class);
    for (RuleEntry entry : rules) {
      if (!missing.remove(entry.finding())) {
        throw new IllegalArgumentException("rules has " + entry.finding().id() + " twice");
      }
    }
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException(
          "rules must cover every finding; missing: "
              + missing.stream().map(FindingKind::id).toList());
    }
  }

  private static void checkClasses(Set<String> given, Set<String> mayBe) {
    for (String productClass : given) {
      if (!mayBe.contains(productClass)) {
        throw new IllegalArgumentException(
            "by_class knows the classes 1, 2 and 3, not \"" + productClass + "\"");
      }
    }
  }

  /**
   * How sure.
   *
   * @param level probability from which a limit counts as kept, or as passed
   * @param basis where that comes from
   */
  record Decision(
      @JsonProperty(required = true) double level, @JsonProperty(required = true) Basis basis) {
    Decision {
      if (!(level > 0.5 && level < 1)) {
        throw new IllegalArgumentException("level must lie between 0.5 and 1, is " + level);
      }
    }
  }

  /** A limit; a class without an entry has none. */
  record LimitEntry(
      @JsonProperty(required = true) Feature feature,
      @JsonProperty(required = true) Bound bound,
      @JsonProperty(required = true) Map<String, LimitRule> byClass,
      @JsonProperty(required = true) Basis basis) {
    LimitEntry {
      checkClasses(byClass.keySet(), CLASSES);
      byClass = Map.copyOf(byClass);
      for (LimitRule rule : byClass.values()) {
        if (rule.unit() != feature.unit()) {
          throw new IllegalArgumentException(
              feature + " is limited in " + feature.unit() + ", not in " + rule.unit());
        }
      }
    }
  }

  /**
   * What a finding means; every class has an entry.
   *
   * @param settleBy how to settle it, in place of Leadlight's own words for its kind
   */
  record RuleEntry(
      @JsonProperty(required = true) FindingKind finding,
      @JsonProperty(required = true) Map<String, Verdict> byClass,
      Optional<String> settleBy,
      @JsonProperty(required = true) Basis basis) {
    RuleEntry {
      checkClasses(byClass.keySet(), CLASSES);
      if (byClass.size() < CLASSES.size()) {
        throw new IllegalArgumentException(
            "by_class of a finding needs all of 1, 2 and 3, has " + byClass.keySet());
      }
      byClass = Map.copyOf(byClass);
    }
  }
}
