package leadlight.quality;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days as people write them; which of 3/4 is the month cannot be told, so slashes are refused. */
public final class Days {

  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern DOTS = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

  private Days() {}

  /** 2026-11-25, 2026-1-5 or 25.11.2026; empty if it is none of these. */
  public static Optional<LocalDate> of(String text) {
    Matcher iso = ISO.matcher(text);
    Matcher dots = DOTS.matcher(text);
    try {
      if (iso.matches()) {
        return Optional.of(LocalDate.of(number(iso, 1), number(iso, 2), number(iso, 3)));
      }
      if (dots.matches()) {
        return Optional.of(LocalDate.of(number(dots, 3), number(dots, 2), number(dots, 1)));
      }
    } catch (DateTimeException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static int number(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  /** Dates by time, numbers by size, stages as the work goes, all else as text. */
  public static Comparator<String> order(List<String> names) {
    if (names.stream().allMatch(name -> of(name).isPresent())) {
      Map<String, LocalDate> days = new HashMap<>();
      return Comparator.comparing(name -> days.computeIfAbsent(name, it -> of(it).orElseThrow()));
    }
    if (names.stream().allMatch(name -> name.matches("\\d{1,9}"))) {
      return Comparator.comparing(Integer::valueOf);
    }
    if (names.stream().allMatch(name -> Stages.place(name).isPresent())) {
      return Comparator.comparing(name -> Stages.place(name).orElseThrow());
    }
    return Comparator.naturalOrder();
  }
}
