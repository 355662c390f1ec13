package leadlight;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Who may know whom. A new package states its directions in {@link #MAY_USE}. */
@AnalyzeClasses(
    packages = "leadlight",
    importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.NotTheArchive.class})
class ArchitectureTest {

  /** The archive on Spark is a program of its own, with a test of its own. */
  static final class NotTheArchive implements ImportOption {

    @Override
    public boolean includes(Location location) {
      return !location.contains("/leadlight/archive/");
    }
  }

  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("model", Set.of()),
          Map.entry("numeric", Set.of()),
          Map.entry("data", Set.of("model", "numeric")),
          Map.entry("vision", Set.of("model")),
          Map.entry("photo", Set.of("numeric", "model", "data", "vision")),
          Map.entry("row", Set.of("numeric", "model", "vision", "data")),
          Map.entry("joint", Set.of("numeric", "model", "vision", "data")),
          Map.entry("reader", Set.of("numeric", "model", "vision", "data")),
          Map.entry("enrol", Set.of("numeric", "model", "data")),
          Map.entry("register", Set.of("model", "vision", "data")),
          Map.entry("motion", Set.of("model", "vision", "data", "register")),
          Map.entry("together", Set.of("numeric", "model", "vision", "data", "register", "grade")),
          Map.entry(
              "rowcheck", Set.of("model", "data", "vision", "photo", "row", "joint", "reader")),
          Map.entry("connector", Set.of("model", "data")),
          Map.entry("grade", Set.of("numeric", "model", "data")),
          Map.entry(
              "app",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "connector",
                  "row",
                  "reader",
                  "rowcheck",
                  "enrol",
                  "motion",
                  "together",
                  "grade",
                  "leg",
                  "pipeline",
                  "report",
                  "text",
                  "page",
                  "record",
                  "life",
                  "summary",
                  "quality",
                  "trial",
                  "batch")),
          // A command parses, calls, prints: of the stages it knows no more than their results.
          Map.entry(
              "cli",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "connector",
                  "reader",
                  "enrol",
                  "together",
                  "grade",
                  "leg",
                  "pipeline",
                  "report",
                  "text",
                  "page",
                  "scene",
                  "record",
                  "life",
                  "summary",
                  "statistics",
                  "quality",
                  "trial",
                  "drill",
                  "desk",
                  "batch",
                  "app")),
          Map.entry("leg", Set.of("numeric", "model", "data", "vision", "grade", "connector")),
          Map.entry("report", Set.of("model", "data", "vision", "text")),
          Map.entry("text", Set.of("model")),
          Map.entry(
              "page",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "connector",
                  "report",
                  "text",
                  "record",
                  "summary",
                  "quality")),
          Map.entry("scene", Set.of("numeric", "model", "data", "connector")),
          Map.entry(
              "pipeline",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "row",
                  "joint",
                  "reader",
                  "rowcheck",
                  "grade",
                  "enrol")),
          Map.entry("record", Set.of("model", "data", "text")),
          Map.entry(
              "life",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "connector",
                  "pipeline",
                  "grade",
                  "enrol",
                  "report",
                  "record",
                  "text")),
          Map.entry("serve", Set.of("model")),
          Map.entry("statistics", Set.of("model", "data")),
          Map.entry("trial", Set.of("numeric", "model", "vision", "statistics")),
          Map.entry("quality", Set.of("model", "data", "statistics")),
          Map.entry("summary", Set.of("model", "data", "record", "text", "statistics")),
          Map.entry(
              "drill",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "pipeline",
                  "grade",
                  "trial",
                  "statistics",
                  "record",
                  "quality",
                  "text",
                  "page",
                  "serve")),
          Map.entry(
              "desk",
              Set.of(
                  "model",
                  "data",
                  "vision",
                  "photo",
                  "connector",
                  "grade",
                  "enrol",
                  "motion",
                  "report",
                  "text",
                  "page",
                  "record",
                  "summary",
                  "life",
                  "serve")),
          Map.entry(
              "batch",
              Set.of(
                  "model",
                  "data",
                  "connector",
                  "photo",
                  "vision",
                  "pipeline",
                  "enrol",
                  "grade",
                  "report",
                  "record")));

  /**
   * The rooms of each house that has several, in order: a room may use those that stand before it.
   * The dot is the package of the house itself; other houses may enter where a star stands.
   */
  private static final Map<String, String> ROOMS =
      Map.ofEntries(
          Map.entry("app", ". record* output* score* enrol* trial* quality*"),
          Map.entry("batch", "list* .*"),
          Map.entry(
              "cli",
              "terminal option drill bench batch connector quality record trial scene score ."),
          Map.entry("connector", ".* footprint*"),
          Map.entry("drill", "skill* pool* set* sitting* .*"),
          Map.entry("enrol", "learn* .*"),
          Map.entry("grade", "limits* .*"),
          Map.entry("joint", "cut dirt place signal judge .*"),
          Map.entry("leg", "find* read .*"),
          Map.entry("model", ".* picture* remark* row* joint* result*"),
          Map.entry("page", "words* look photo* .*"),
          Map.entry("photo", "jpeg limit header .*"),
          Map.entry(
              "quality", ".* grades* agreement* bench* chart* gauge.variance gauge* sampling*"),
          Map.entry("record", "said* scoring* engine* file* book .*"),
          Map.entry("report", "words* json paint* strip* picture* .*"),
          Map.entry("row", "tuning strip find place .*"),
          Map.entry("scene", "chance camera plan* light solids board draw* render* legs* .*"),
          Map.entry("summary", "board* day*"),
          Map.entry("trial", "truth* outcome* .* list* sets*"),
          Map.entry("vision", "load .* blur* decode*"));

  @ArchTest
  static final ArchRule nothing_depends_on_the_commands =
      noClasses()
          .that()
          .resideOutsideOfPackage("leadlight.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("leadlight.cli..");

  @ArchTest
  static final ArchRule each_package_knows_only_what_it_may =
      classes().should(knowOnlyWhatTheyMay());

  @ArchTest
  static final ArchRule each_package_has_stated_directions =
      classes()
          .should()
          .resideInAnyPackage(
              MAY_USE.keySet().stream().map(ArchitectureTest::tree).toArray(String[]::new));

  @ArchTest
  static final ArchRule houses_form_no_cycle =
      slices().matching("leadlight.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule rooms_are_entered_as_stated = classes().should(enterRoomsAsStated());

  @ArchTest
  static final ArchRule rooms_form_no_cycle =
      slices().matching("leadlight.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule the_model_needs_the_jdk_alone =
      classes()
          .that()
          .resideInAPackage("leadlight.model..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("leadlight.model..", "java..");

  @ArchTest
  static final ArchRule opencv_stays_in_vision = only("vision", "org.opencv..", "nu.pattern..");

  @ArchTest static final ArchRule picocli_stays_in_the_commands = only("cli", "picocli..");

  @ArchTest
  static final ArchRule databases_stay_in_the_record =
      only(
          "record",
          "java.sql..",
          "javax.sql..",
          "org.sqlite..",
          "org.postgresql..",
          "org.jdbi..",
          "org.flywaydb..");

  @ArchTest
  static final ArchRule streams_belong_to_the_entry_point =
      noClasses().that(not(isEntryPoint())).should(ACCESS_STANDARD_STREAMS);

  @ArchTest
  static final ArchRule exit_belongs_to_the_entry_point =
      noClasses()
          .that(not(isEntryPoint()))
          .should()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "exit", int.class)
          .orShould()
          .callMethod(Runtime.class, "halt", int.class);

  @ArchTest
  static final ArchRule failures_have_a_kind = noClasses().should(THROW_GENERIC_EXCEPTIONS);

  @ArchTest
  static void all_classes_were_looked_at(JavaClasses scanned) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      long written =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".java") && !name.equals("package-info.java"))
              .count();
      long looked = scanned.stream().filter(JavaClass::isTopLevelClass).count();
      assertThat(looked).isGreaterThanOrEqualTo(written).isGreaterThan(30);
    }
  }

  private static ArchCondition<JavaClass> knowOnlyWhatTheyMay() {
    return new ArchCondition<>("know only what MAY_USE allows") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        String from = packageOf(type);
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
          JavaClass target = dependency.getTargetClass();
          String to = packageOf(target);
          if (target.getPackageName().startsWith("leadlight.")
              && !to.equals(from)
              && !MAY_USE.getOrDefault(from, Set.of()).contains(to)) {
            events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
          }
        }
      }
    };
  }

  private static ArchCondition<JavaClass> enterRoomsAsStated() {
    return new ArchCondition<>("enter rooms as ROOMS says") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        if (place(type) < 0) {
          events.add(
              SimpleConditionEvent.violated(
                  type, type.getName() + " is in a room without a place"));
        }
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
          JavaClass target = dependency.getTargetClass();
          if (target.getPackageName().startsWith("leadlight.") && !mayEnter(type, target)) {
            events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
          }
        }
      }
    };
  }

  private static boolean mayEnter(JavaClass from, JavaClass to) {
    return packageOf(from).equals(packageOf(to)) ? place(to) <= place(from) : isDoor(to);
  }

  /** Which room of its house, counted from 0; negative if none is stated. */
  private static int place(JavaClass type) {
    return rooms(type).map(room -> room.replace("*", "")).toList().indexOf(roomOf(type));
  }

  private static boolean isDoor(JavaClass type) {
    return rooms(type).anyMatch(room -> room.equals(roomOf(type) + "*"));
  }

  private static Stream<String> rooms(JavaClass type) {
    return Stream.of(ROOMS.getOrDefault(packageOf(type), ".*").split(" "));
  }

  /** The part after the house's name; a dot for the house itself. */
  private static String roomOf(JavaClass type) {
    String room = type.getPackageName().replaceFirst("^leadlight\\.[^.]+\\.?", "");
    return room.isEmpty() ? "." : room;
  }

  /** The part after "leadlight.", without what lies below it. */
  private static String packageOf(JavaClass type) {
    return type.getPackageName().replaceFirst("^leadlight\\.", "").replaceFirst("\\..*", "");
  }

  private static ArchRule only(String name, String... library) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(tree(name))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(library);
  }

  private static DescribedPredicate<JavaClass> isEntryPoint() {
    return DescribedPredicate.describe(
        "the entry point", type -> type.getName().equals("leadlight.cli.Main"));
  }

  private static String tree(String name) {
    return "leadlight." + name + "..";
  }
}
