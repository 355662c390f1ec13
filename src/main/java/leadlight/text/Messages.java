package leadlight.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.model.Evidence;
import leadlight.model.Finding;
import leadlight.model.GradedJoint;
import leadlight.model.Reason;
import leadlight.model.UserError;

/**
 * The words of one language. A message may hold {0}, {1} ... for what is put in. Sentences that
 * come from data files ({@code models/}) are translated by a key made of their own English words,
 * and stay English where a language has no such key.
 */
public final class Messages {

  /** Languages that Leadlight speaks, the first by default. */
  public static final List<String> LANGUAGES = List.of("en", "de");

  private static final int LONGEST_KEY = 60;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  /** In front of a signal's name: how far the joint stands from its row. */
  private static final String AGAINST_ROW = "row_";

  /** In front of a signal's name: what the whole row shows. */
  private static final String OF_ROW = "typical_";

  private final String language;
  private final Properties words = new Properties();

  private Messages(String language) {
    this.language = language;
    String file = "messages-" + language + ".properties";
    try (InputStream in = Messages.class.getResourceAsStream(file)) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The messages of a language.
   *
   * @param language one of {@link #LANGUAGES}
   * @throws UserError if it is none of them
   */
  public static Messages of(String language) {
    if (!LANGUAGES.contains(language)) {
      throw new UserError(
          "no language \"" + language + "\"; choose one of " + String.join(", ", LANGUAGES));
    }
    return new Messages(language);
  }

  /** Language tag, as "de". */
  public String language() {
    return language;
  }

  /** All keys. */
  public Set<String> keys() {
    return words.stringPropertyNames();
  }

  /** Whether there is a message of that key. */
  public boolean has(String key) {
    return words.containsKey(key);
  }

  /**
   * A message.
   *
   * @param values put in for {0}, {1} ...
   * @throws IllegalArgumentException if there is none of that key: a fault of ours
   */
  public String get(String key, Object... values) {
    String text = words.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("no message " + key + " in " + language);
    }
    for (int i = 0; i < values.length; i++) {
      text = text.replace("{" + i + "}", String.valueOf(values[i]));
    }
    return text;
  }

  /** One of two messages: {@code key.one} for 1, {@code key.many} for every other count. */
  public String counted(String key, int count, Object... more) {
    Object[] values = new Object[more.length + 1];
    values[0] = count;
    System.arraycopy(more, 0, values, 1, more.length);
    return get(key + (count == 1 ? ".one" : ".many"), values);
  }

  /** A sentence of a data file in this language; itself if it has no translation. */
  public String data(String english) {
    String said = words.getProperty(dataKey(english));
    return said == null ? dataWithNumbers(english) : said;
  }

  /** A sentence with numbers is kept under a key with "n" for each, and {0}, {1} ... for them. */
  private String dataWithNumbers(String english) {
    Matcher number = NUMBER.matcher(english);
    String said = words.getProperty(dataKey(number.replaceAll("n")));
    if (said == null) {
      return english;
    }
    List<String> numbers = number.reset().results().map(MatchResult::group).toList();
    for (int i = 0; i < numbers.size(); i++) {
      said = said.replace("{" + i + "}", localised(numbers.get(i)));
    }
    return said;
  }

  /** The key under which a data file's sentence is translated. */
  public static String dataKey(String english) {
    String slug =
        english.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]+", "-").replaceAll("^-|-$", "");
    return "data." + slug.substring(0, Math.min(LONGEST_KEY, slug.length()));
  }

  /** A number with the language's decimal sign, rounded half up. */
  public String number(double value, int decimals) {
    return localised(
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString());
  }

  private String localised(String number) {
    return number.replace(".", get("number.decimal")).replace("-", "\u2212");
  }

  /** A share as whole percent, rounded down, so that 99.9 % never reads as certain. */
  public String percent(double share) {
    return get("number.percent", (int) Math.floor(100 * share));
  }

  /** A length without its unit. */
  public String length(double mm, LengthUnit unit) {
    return number(unit.of(mm), unit.decimals());
  }

  /** A length with its unit. */
  public String lengthIn(double mm, LengthUnit unit) {
    return length(mm, unit) + " " + unit.symbol();
  }

  /**
   * What a signal says, in plain words. A signal that was taken against the row or is the row's own
   * says so; one whose words are not known is named by its own name.
   */
  public String plain(Reason reason) {
    String name = base(reason);
    String key = "signal." + name + (reason.value() < reason.usual() ? ".less" : ".more");
    String said = has(key) ? get(key) : name.replace('_', ' ');
    if (reason.signal().startsWith(AGAINST_ROW)) {
      return get("signal.against-row", said);
    }
    return reason.signal().startsWith(OF_ROW) ? get("signal.of-row", said) : said;
  }

  private static String base(Reason reason) {
    for (String front : List.of(AGAINST_ROW, OF_ROW)) {
      if (reason.signal().startsWith(front)) {
        return reason.signal().substring(front.length());
      }
    }
    return reason.signal();
  }

  /** What in the photo speaks for a finding, in plain words; empty if its signals were not kept. */
  public List<String> because(GradedJoint joint, Finding finding) {
    for (Evidence evidence : joint.joint().evidence()) {
      boolean same =
          evidence.neighbourPin() == 0 || finding.pins().contains(evidence.neighbourPin());
      if (evidence.kind() == finding.kind() && same && !evidence.reasons().isEmpty()) {
        return plain(evidence.reasons());
      }
    }
    return List.of();
  }

  /** The reasons that speak for a finding, in plain words, without saying a thing twice. */
  public List<String> plain(List<Reason> reasons) {
    Map<String, String> said = new LinkedHashMap<>();
    for (Reason reason : reasons) {
      if (reason.points() > 0) {
        said.putIfAbsent(base(reason), plain(reason));
      }
    }
    return said.values().stream().distinct().toList();
  }
}
