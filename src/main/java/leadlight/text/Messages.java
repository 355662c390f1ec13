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
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.model.remark.Reason;

/**
 * The words of one language. A message may hold {0}, {1} ... for what is put in. Words of data
 * files ({@code models/}) stay in the language that their file is written in; for another language
 * they are kept here under a key made of the file's own ids, never of its words.
 */
public final class Messages {

  /** Languages that Leadlight speaks, the first by default. */
  static final List<String> LANGUAGES = List.of("en", "de");

  private static final String DATA = "data.";

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
    Map<String, String> named = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      named.put("" + i, String.valueOf(values[i]));
    }
    return named(key, named);
  }

  /** A message with places that have names: {@code {chance}}; each is filled once. */
  String named(String key, Map<String, String> values) {
    String text = words.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("no message " + key + " in " + language);
    }
    StringBuilder said = new StringBuilder();
    int done = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', done)) {
      int close = text.indexOf('}', open);
      String value = close < 0 ? null : values.get(text.substring(open + 1, close));
      said.append(text, done, open).append(value == null ? "{" : value);
      done = value == null ? open + 1 : close + 1;
    }
    return said.append(text, done, text.length()).toString();
  }

  /** One of two messages: {@code key.one} for 1, {@code key.many} for every other count. */
  public String counted(String key, int count, Object... more) {
    Object[] values = new Object[more.length + 1];
    values[0] = count;
    System.arraycopy(more, 0, values, 1, more.length);
    return get(key + (count == 1 ? ".one" : ".many"), values);
  }

  /**
   * Words of a data file in this language.
   *
   * @param key made of ids of the file, as "symptom.no-picture"
   * @param own the file's own words: they are said where this language has no others
   */
  public String data(String key, String own) {
    return words.getProperty(DATA + key, own);
  }

  /**
   * Words of a connector's file in this language. Connectors of one family share their words:
   * "video-a-19-slots" finds those of "video-a-19", "video-a" and "video", the nearest first.
   *
   * @param id the connector's
   * @param key what of it, made of ids of the file, as "signal.ground.open"
   * @param own the file's own words
   */
  public String ofConnector(String id, String key, String own) {
    for (String family = id; !family.isEmpty(); ) {
      String said = words.getProperty(DATA + "connector." + family + "." + key);
      if (said != null) {
        return said;
      }
      family = family.substring(0, Math.max(0, family.lastIndexOf('-')));
    }
    return own;
  }

  /** A number with the language's decimal sign, rounded half up. */
  public String number(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_UP)
        .toPlainString()
        .replace(".", get("number.decimal"))
        .replace("-", "\u2212");
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
  String plain(Reason reason) {
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

  /** The reasons that speak for a finding, in plain words, without saying a thing twice. */
  List<String> plain(List<Reason> reasons) {
    return speaking(reasons).stream().map(this::plain).distinct().toList();
  }

  /** The reasons that speak for a finding, the loudest of each signal. */
  static List<Reason> speaking(List<Reason> reasons) {
    Map<String, Reason> said = new LinkedHashMap<>();
    for (Reason reason : reasons) {
      if (reason.points() > 0) {
        said.putIfAbsent(base(reason), reason);
      }
    }
    return List.copyOf(said.values());
  }
}
